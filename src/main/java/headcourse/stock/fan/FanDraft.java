package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileDraft.Slot;
import java.util.List;

/**
 * A choice for heads of which some are fans.
 *
 * @param fans by head: place of its striking point
 * @param heads by head and side, outwards: the stones
 * @param cost what it costs
 */
public record FanDraft(List<Integer> fans, List<List<List<Slot>>> heads, Pile.Cost cost) {
  /** Copies the list. */
  public FanDraft {
    fans = List.copyOf(fans);
  }

  boolean betterThan(FanDraft other) {
    return other == null || cost.compareTo(other.cost) < 0;
  }
}
