package headcourse.stock.pile;

import java.util.HashMap;
import java.util.Map;

/** The places that a search was at, with the least that it cost to come there. */
public final class SeenPlaces {
  private static final int MEMORY = 120_000;

  private final Map<SearchState, Pile.Cost> seen = new HashMap<>();

  /** Whether it was there before, no dearer; else that is noted. */
  public boolean again(SearchState place, Pile.Cost cost) {
    Pile.Cost before = seen.get(place);
    if (before != null && before.compareTo(cost) <= 0) {
      return true;
    }
    if (before != null || seen.size() < MEMORY) {
      seen.put(place, cost);
    }
    return false;
  }
}
