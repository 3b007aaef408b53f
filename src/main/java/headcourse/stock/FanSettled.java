package headcourse.stock;

import headcourse.job.Opening;
import headcourse.layout.flat.FlatTerms;
import headcourse.stock.FanKeys.Keyed;
import headcourse.stock.FanKeys.Stand;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.fan.FanCase;
import headcourse.stock.fan.FanFloor;
import headcourse.stock.fan.FanPile;
import headcourse.stock.fan.FanStore;
import headcourse.stock.fan.FanWays;
import headcourse.stock.pile.Pile;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One head with its key settled: its striking points, and the ways to set it. */
final class FanSettled {
  private static final Comparator<Stand> INMOST =
      Comparator.comparingLong((Stand s) -> s.left().firstEnd())
          .thenComparingLong(s -> s.left().lastEnd())
          .thenComparingLong(s -> s.right().firstEnd())
          .thenComparingLong(s -> s.right().lastEnd());

  private final Opening opening;
  private final PileReader yard;
  private final Keyed key;
  private final FanPile.Head head;
  private final FanWays ways;
  private final Length height;
  private final Pile.Cost floor;
  private final FanCase alone;

  /**
   * @param h which head
   * @param store what is worked out for it whatever its key
   * @param lying all pieces that lie there
   */
  FanSettled(
      Opening opening, int h, Keyed key, FanStore store, PileReader yard, List<Lying> lying) {
    this(opening, h, key, store, yard, lying, Integer.MAX_VALUE);
  }

  /** The same with no more than so many of its striking points. */
  FanSettled(
      Opening opening,
      int h,
      Keyed key,
      FanStore store,
      PileReader yard,
      List<Lying> lying,
      int most) {
    this.opening = opening;
    this.yard = yard;
    this.key = key;
    this.head = head(opening, key);
    Length more = Length.ZERO;
    for (Stand s : key.stands()) {
      more = more.max(s.head().moreHeight(s.left().outmost()));
      more = more.max(s.head().moreHeight(s.right().outmost()));
    }
    this.height = opening.head().height().plus(more);
    boolean suffices = pile(lying).suffices();
    this.ways = suffices ? new FanWays(head, store, h, most) : null;
    this.floor = suffices ? FanFloor.cost(head, ways.all(), ways) : null;
    Pile.Cost known = floor == null ? Pile.Cost.ANY : floor;
    this.alone =
        suffices
            ? new FanCase(() -> pile(lying), List.of(ways), List.of(store), List.of(), known)
            : null;
  }

  private FanPile pile(List<Lying> lying) {
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : lying) {
      if (!key.pieces().contains(p)) {
        pieces.add(new Pile.Piece(p.id(), p.usable(), List.of(fits(p))));
      }
    }
    return new FanPile(pieces, List.of(head));
  }

  /** Whether a piece may be one of its ordinary stones. */
  boolean fits(Lying p) {
    return p.item().face().compareTo(height) >= 0 && yard.fits(p.item(), opening, false);
  }

  /** The head with the pile to itself. */
  FanCase alone() {
    return alone;
  }

  /**
   * Sides change places where the wall or the jamb on the right is the nearer, so that a mirrored
   * job is set out mirrored.
   */
  static boolean swapped(Keyed k) {
    FlatTerms terms = k.stands().get(0).head().terms();
    int wall = Long.compare(terms.right().wall(), terms.left().wall());
    return wall < 0 || wall == 0 && terms.right().jamb() < terms.left().jamb();
  }

  private static List<Stand> stands(Keyed k) {
    boolean swap = swapped(k);
    return k.stands().stream().map(s -> swap ? s.mirrored() : s).sorted(INMOST).toList();
  }

  static FanPile.Head head(Opening opening, Keyed k) {
    List<Stand> mine = stands(k);
    FlatTerms terms = mine.get(0).head().terms();
    Integer each = terms.stones().eachSide();
    return new FanPile.Head(
        opening.count(),
        terms.stones().mirror(),
        each == null ? 0 : each,
        terms.min(),
        terms.max(),
        terms.jump(),
        mine.stream().map(s -> new FanPile.Fan(s.left(), s.right(), k.sawn(s))).toList());
  }

  Keyed key() {
    return key;
  }

  FanPile.Head head() {
    return head;
  }

  /** The ways to set it, or null where it can't be set at all. */
  FanWays ways() {
    return ways;
  }

  /** What no choice for it costs less than, or null where it can't be set at all. */
  Pile.Cost floor() {
    return floor;
  }

  /** One of the striking points, as the head has them. */
  Stand stand(int fan) {
    return stands(key).get(fan);
  }
}
