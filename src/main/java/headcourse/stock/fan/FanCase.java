package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileDraft;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;

/** Heads of which some are fans, with their keys settled, and what is known of their cost. */
public final class FanCase {
  private final Supplier<FanPile> made;
  private final List<FanWays> ways;
  private final List<FanStore> stores;
  private final int[] heads;
  private final List<FanCase> alone;
  private FanPile pile;
  private PileTypes types;
  private FanFloor floors;
  private Pile.Cost floor;
  private long off;
  private boolean stuck;
  private boolean exact;

  /**
   * @param made the pile without the keys' pieces
   * @param ways by head: the ways to set it
   * @param stores by head: what is worked out for it whatever its key
   * @param alone by head, where there are several: the head with the pile to itself
   * @param floor no choice costs less
   */
  public FanCase(
      Supplier<FanPile> made,
      List<FanWays> ways,
      List<FanStore> stores,
      List<FanCase> alone,
      Pile.Cost floor) {
    this.alone = alone;
    this.made = made;
    this.ways = ways;
    this.stores = stores;
    this.floor = floor;
    this.off = floor.bearing();
    this.heads = new int[ways.size()];
    for (int h = 0; h < heads.length; h++) {
      heads[h] = h;
    }
  }

  /** The pile and the heads with these keys. */
  public FanPile pile() {
    if (pile == null) {
      pile = made.get();
      types = new PileTypes(new Pile(pile.pieces(), List.of()));
      floors = new FanFloor(pile, types, all(), ways);
      Pile.Cost known = types.size() == 0 ? null : floors.cost();
      off = known == null ? off : Math.max(off, known.bearing());
      raise(known == null ? Pile.Cost.ANY : known);
    }
    return pile;
  }

  private List<List<FanWay>> all() {
    return ways.stream().map(FanWays::all).toList();
  }

  /** What no choice costs less than. */
  public Pile.Cost floor() {
    Pile.Cost sum = alone(null);
    return sum.compareTo(floor) > 0 ? sum : floor;
  }

  /** By head, where there are several: the head with the pile to itself. */
  List<FanCase> alone() {
    return alone;
  }

  /** What all heads but one can't cost less than by themselves. */
  Pile.Cost alone(FanCase but) {
    Pile.Cost sum = Pile.Cost.NONE;
    for (FanCase c : alone) {
      if (c != but) {
        sum = sum.plus(c.floor.sawn(), c.floor.imbalance(), c.floor.bearing());
      }
    }
    return sum.compareTo(Pile.Cost.ANY) > 0 ? Pile.Cost.ANY : sum;
  }

  /** Takes note that no choice costs less. */
  void raise(Pile.Cost known) {
    // Bearings are never less off than they must be.
    Pile.Cost sure = known.bearing() >= off ? known : known.plus(0, 0, off - known.bearing());
    floor = sure.compareTo(floor) > 0 ? sure : floor;
  }

  /** Whether a search was cut off before all was looked at. */
  boolean stuck() {
    return stuck;
  }

  void stuck(boolean now) {
    stuck = now;
  }

  /** Whether some choice costs just as much as the floor. */
  boolean exact() {
    return exact;
  }

  void exact(boolean now) {
    exact = now;
  }

  /** Whether all striking points are looked at. */
  boolean complete() {
    return ways.stream().allMatch(FanWays::complete);
  }

  FanSearch search(Pile.Cost cap, long limit) {
    FanPile of = pile();
    FanSearch search = new FanSearch(of, types, heads, all(), types.count, cap, 0, limit);
    return alone.isEmpty() ? search : search.over(alone.stream().map(c -> c.floor).toList());
  }

  /** What a quick choice took. */
  public record Quick(FanDraft draft, long steps) {}

  /**
   * A choice soon found: a hand's, or one for the ends that are nearest the target.
   *
   * @param limit how many steps it may take
   * @param fans how many striking points of each head are looked at
   */
  public Quick quick(long limit, int fans) {
    FanPile of = pile();
    if (floor().compareTo(Pile.Cost.ANY) >= 0) {
      return new Quick(null, 0);
    }
    List<FanWays> few = new ArrayList<>();
    for (int h = 0; h < heads.length; h++) {
      few.add(new FanWays(of.heads().get(h), stores.get(h), h, fans));
    }
    FanDraft best = new FanHand(of, types, few).find();
    FanQuick quick = new FanQuick(of, types, few, floors, limit);
    List<Integer> order = new ArrayList<>();
    for (int h : heads) {
      order.add(h);
    }
    // Heads as they come, and the other way round.
    for (int back = 0; back < Math.min(2, heads.length); back++) {
      if (best == null || best.cost().compareTo(floor()) > 0) {
        FanDraft other = quick.find(order);
        best = other != null && other.betterThan(best) ? other : best;
      }
      Collections.reverse(order);
    }
    return new Quick(best, quick.steps());
  }

  /** Some choice, the best or not, or null where none is soon found. */
  public FanDraft any(long limit) {
    FanPile of = pile();
    if (floor().compareTo(Pile.Cost.ANY) >= 0) {
      return null;
    }
    FanDraft hand = new FanHand(of, types, ways).find();
    FanSearch search = hand != null ? null : search(Pile.Cost.ANY, limit).untilFirst();
    return search == null || search.run() && search.best() == null ? hand : search.best();
  }

  /** The choice with pieces handed out. */
  public FanPile.Answer answer(FanDraft best, Pile.Cost bound, boolean proved, long steps) {
    List<Pile.Chosen> chosen = new PileDraft(best.heads(), best.cost()).chosen(types);
    Pile.Answer stones = new Pile.Answer(chosen, best.cost(), bound, proved, steps);
    return new FanPile.Answer(best.fans(), stones, floor());
  }
}
