package headcourse.stock;

import headcourse.job.Opening;
import headcourse.layout.flat.Choice;
import headcourse.layout.flat.FittedHead;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatTerms;
import headcourse.layout.flat.SideCase;
import headcourse.stock.ChangeProblem.Found;
import headcourse.stock.ChangeProblem.Row;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts heads of a job as a problem of fewest changes, and the answer back as heads. */
final class ChangeModel {
  private final PileReader yard;
  private final PilePlan before;
  private final List<Site> sites;
  private final Set<String> pinned;
  private final List<Lying> lying;
  private final Map<String, Integer> places = new LinkedHashMap<>();

  /**
   * A head that is to be settled.
   *
   * @param made the head with the stones that are cut
   * @param left what is left of its left side
   * @param right what is left of its right side
   * @param key width of its key where that comes from the pile, else −1
   * @param other whether that is not the width planned
   */
  record Site(
      FittedHead made, FittedHead.Left left, FittedHead.Left right, long key, boolean other) {
    FittedHead.Left on(int s) {
      return s == 0 ? left : right;
    }
  }

  /**
   * @param before what was planned, or null
   * @param gone pieces that are not there any more
   * @param pinned stones that are cut as planned and stay, by full mark
   */
  ChangeModel(
      PileReader yard, PilePlan before, List<Site> sites, Set<String> gone, Set<String> pinned) {
    this.yard = yard;
    this.before = before;
    this.sites = List.copyOf(sites);
    this.pinned = pinned;
    this.lying = yard.pieces(gone);
    for (int i = 0; i < lying.size(); i++) {
      places.put(lying.get(i).id(), i);
    }
  }

  private Opening opening(int k) {
    return sites.get(k).made().head().terms().opening();
  }

  ChangeProblem problem() {
    List<ChangeProblem.Piece> pieces = new ArrayList<>();
    for (Lying p : lying) {
      boolean[] fits = new boolean[sites.size()];
      boolean[] key = new boolean[sites.size()];
      for (int k = 0; k < fits.length; k++) {
        fits[k] =
            yard.fits(p.item(), opening(k), false) && p.item().face().compareTo(height(k)) >= 0;
        key[k] = opening(k).head().key() != null && yard.fits(p.item(), opening(k), true);
      }
      pieces.add(new ChangeProblem.Piece(p.id(), p.usable(), fits, key));
    }
    List<Rows> heads = new ArrayList<>();
    for (int k = 0; k < sites.size(); k++) {
      Site site = sites.get(k);
      FlatTerms t = site.made().head().terms();
      int copies = t.opening().count();
      String mark = t.opening().mark() + "-";
      Stone key = null;
      if (site.key() >= 0) {
        int[] from = site.other() ? none(copies) : pieces(mark + "K", copies);
        key = new Stone(site.key(), from, 0, pinned.contains(mark + "K"));
      }
      heads.add(
          new Rows(
              copies, t.stones().mirror(), t.min(), t.max(), t.jump(), key, row(k, 0), row(k, 1)));
    }
    return new ChangeProblem(pieces, heads, before == null);
  }

  /** How high a blank must be; see {@link FanSettled}. */
  private Length height(int k) {
    FlatHead head = sites.get(k).made().head();
    Length more = Length.ZERO;
    for (int s = 0; s < 2 && head.fanned(); s++) {
      SideCase rest = sites.get(k).on(s).rest();
      if (rest != null) {
        more = more.max(head.moreHeight(rest.ends().get(rest.ends().size() - 1)));
      }
    }
    return opening(k).head().height().plus(more);
  }

  private static int[] none(int copies) {
    int[] of = new int[copies];
    java.util.Arrays.fill(of, -1);
    return of;
  }

  private int[] pieces(String stone, int copies) {
    int[] of = none(copies);
    for (FromStock.Taken t : before == null ? List.<FromStock.Taken>of() : before.of(stone)) {
      of[t.copy() - 1] = places.getOrDefault(t.piece(), -1);
    }
    return of;
  }

  private Row row(int k, int s) {
    FittedHead.Left left = sites.get(k).on(s);
    PileSide side = left.rest() == null ? null : side(left);
    List<Long> there = new ArrayList<>();
    for (int i = 1; i <= left.there(); i++) {
      there.add(left.width(i));
    }
    Integer each = left.terms().stones().eachSide();
    return new Row(side, left.whole(), each == null ? 0 : each, there, planned(k, s, left.there()));
  }

  private List<Stone> planned(int k, int s, int there) {
    List<Stone> planned = new ArrayList<>();
    if (before == null) {
      return planned;
    }
    PilePlan.Head head = before.heads().get(k);
    boolean moved = head.made().head().fanned() && !sites.get(k).on(s).flush();
    long foot = (s == 0 ? head.left() : head.right()).lines().start();
    for (int i = 0; i < head.widths().get(s).size(); i++) {
      long width = head.widths().get(s).get(i);
      foot += sites.get(k).made().head().terms().joint() + width;
      String mark = mark(k, s, i + 1);
      if (i >= there) {
        int[] pieces = pieces(mark, opening(k).count());
        // In a fan the first beside an edge that is not as drawn is another stone in any case.
        long stood = moved && i == there ? Long.MIN_VALUE : foot;
        planned.add(new Stone(width, pieces, stood, pinned.contains(mark)));
      }
    }
    return planned;
  }

  static FlatSide side(FittedHead.Left left) {
    FlatTerms terms = left.terms();
    return new FlatSide(
        left.rest(), left.check(), left.lengths(), terms.joint(), terms.bearing().target());
  }

  private String mark(int k, int s, int index) {
    return opening(k).mark() + (s == 0 ? "-L" : "-R") + index;
  }

  /**
   * The heads as found.
   *
   * @param there which piece is which stone that is there already
   */
  PilePlan plan(Found found, List<FromStock.Taken> there, boolean proved, long steps) {
    List<PilePlan.Head> heads = new ArrayList<>();
    List<FromStock.Taken> taken = new ArrayList<>(there);
    for (int k = 0; k < sites.size(); k++) {
      Site site = sites.get(k);
      int[] key = found.keys().get(k);
      for (int c = 0; key != null && c < key.length; c++) {
        String id = lying.get(key[c]).id();
        taken.add(new FromStock.Taken(opening(k).mark() + "-K", c + 1, id, site.key()));
      }
      List<Choice> choices = new ArrayList<>();
      List<List<Long>> widths = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Pile.Picked> row = found.sides().get(k).get(s);
        FittedHead.Left left = site.on(s);
        FlatSide side = row.isEmpty() ? null : side(left);
        choices.add(left.with(side == null ? null : side.choice(row)));
        widths.add(PilePlan.widths(row));
        long foot = side == null ? 0 : side.start();
        for (int i = 0; i < row.size(); i++) {
          long outer = foot + side.joint() + row.get(i).width();
          long extent = side.extent(i + 1, foot, outer, i + 1 == row.size());
          foot = outer;
          for (int c = 0; c < row.get(i).pieces().size(); c++) {
            String id = lying.get(row.get(i).pieces().get(c)).id();
            taken.add(new FromStock.Taken(mark(k, s, left.there() + i + 1), c + 1, id, extent));
          }
        }
      }
      heads.add(new PilePlan.Head(site.made(), choices.get(0), choices.get(1), widths));
    }
    Pile.Cost bound = proved ? found.price().cost() : Pile.Cost.NONE;
    return new PilePlan(heads, taken, found.price().cost(), bound, proved, steps);
  }
}
