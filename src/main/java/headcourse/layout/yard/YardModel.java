package headcourse.layout.yard;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.Choice;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.yard.YardPieces.Lying;
import headcourse.layout.yard.rows.Answer;
import headcourse.layout.yard.rows.Pile;
import headcourse.layout.yard.rows.RowSolver;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts the heads of a job as rows to be set from a pile, and the answer back as heads. */
final class YardModel {
  private static final Answer NONE = new Answer(List.of(), null, 0, true, 0, 0);

  private final Job job;
  private final PilePlan before;
  private final List<List<Site>> sites;
  private final Set<String> pinned;
  private final YardPieces yard;
  private final List<Lying> lying;
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Map<FittedHead.Left, FlatSide> sides = new IdentityHashMap<>();

  /**
   * @param before what was ticketed, or null
   * @param sites by head: its keys and striking points
   * @param gone pieces that are not there any more
   * @param pinned stones that are cut as planned and stay, by full mark
   */
  YardModel(
      Job job, PilePlan before, List<List<Site>> sites, Set<String> gone, Set<String> pinned) {
    this.job = job;
    this.before = before;
    this.sites = sites;
    this.pinned = pinned;
    this.yard = new YardPieces(job);
    this.lying = yard.but(gone);
    for (int i = 0; i < lying.size(); i++) {
      places.put(lying.get(i).id(), i);
    }
  }

  /** The best choice, as far as so many steps show. */
  Answer solve(long steps) {
    return none() ? NONE : RowSolver.solve(pile(), steps);
  }

  private boolean none() {
    return sites.stream().anyMatch(List::isEmpty);
  }

  private Opening opening(int k) {
    return sites.get(k).get(0).made().head().terms().opening();
  }

  Pile pile() {
    List<Length> heights = new ArrayList<>();
    List<Pile.Head> heads = new ArrayList<>();
    long give = 0;
    for (int k = 0; k < sites.size(); k++) {
      Length more = sites.get(k).stream().map(Site::moreHeight).reduce(Length.ZERO, Length::max);
      heights.add(opening(k).head().height().plus(more));
      heads.add(head(k));
      HeadSpec.Stones stones = opening(k).head().stones();
      give += opening(k).count() * job.grid().floor(stones.give());
    }
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : lying) {
      List<Boolean> fits = new ArrayList<>();
      List<Boolean> key = new ArrayList<>();
      for (int k = 0; k < sites.size(); k++) {
        boolean high = p.item().face().compareTo(heights.get(k)) >= 0;
        fits.add(high && yard.fits(p.item(), opening(k), false));
        key.add(opening(k).head().key() != null && yard.fits(p.item(), opening(k), true));
      }
      pieces.add(new Pile.Piece(p.usable(), fits, key));
    }
    return new Pile(pieces, heads, give, before != null);
  }

  private Pile.Head head(int k) {
    FlatTerms t = sites.get(k).get(0).made().head().terms();
    List<Pile.Way> ways = new ArrayList<>();
    for (Site site : sites.get(k)) {
      Pile.Ticket key = null;
      String mark = t.opening().mark() + "-K";
      if (site.key() >= 0 && before != null && !site.other()) {
        key = new Pile.Ticket(site.key(), pieces(mark, k), 0, pinned.contains(mark));
      }
      if (!site.other() || !pinned.contains(mark)) {
        int left = swapped(k) ? 1 : 0;
        Pile.Row first = row(k, site, left);
        ways.add(new Pile.Way(first, row(k, site, 1 - left), site.key(), key));
      }
    }
    return new Pile.Head(
        t.opening().count(),
        t.stones().mirror(),
        t.widths().min(),
        t.widths().max(),
        t.widths().jump(),
        ways);
  }

  private boolean swapped(int k) {
    return Sites.swapped(sites.get(k).get(0).made().head().terms());
  }

  private List<Integer> pieces(String stone, int k) {
    List<Integer> of = new ArrayList<>(Collections.nCopies(opening(k).count(), -1));
    for (FromStock.Taken t : before.of(stone)) {
      of.set(t.copy() - 1, places.getOrDefault(t.piece(), -1));
    }
    return of;
  }

  private FlatSide side(Site site, int s) {
    return site.on(s).rest() == null ? null : sides.computeIfAbsent(site.on(s), FlatSide::new);
  }

  private Pile.Row row(int k, Site site, int s) {
    FittedHead.Left left = site.on(s);
    List<Long> there = new ArrayList<>();
    for (int i = 1; i <= left.there(); i++) {
      there.add(left.width(i));
    }
    Integer each = left.terms().stones().eachSide();
    return new Pile.Row(
        side(site, s), left.whole(), each == null ? 0 : each, there, tickets(k, site, s));
  }

  private List<Pile.Ticket> tickets(int k, Site site, int s) {
    List<Pile.Ticket> out = new ArrayList<>();
    if (before == null) {
      return out;
    }
    PilePlan.Head head = before.heads().get(k);
    int there = site.on(s).there();
    boolean moved = head.made().head().fanned() && !site.on(s).flush();
    long foot = (s == 0 ? head.left() : head.right()).lines().start();
    for (int i = 0; i < head.widths().get(s).size(); i++) {
      long width = head.widths().get(s).get(i);
      foot += site.made().head().terms().joint() + width;
      String mark = mark(k, s, i + 1);
      if (i >= there) {
        // In a fan the first beside an edge that is not as drawn is another stone in any case.
        long stood = moved && i == there ? Long.MIN_VALUE : foot;
        out.add(new Pile.Ticket(width, pieces(mark, k), stood, pinned.contains(mark)));
      }
    }
    return out;
  }

  private String mark(int k, int s, int index) {
    return opening(k).mark() + (s == 0 ? "-L" : "-R") + index;
  }

  /**
   * The heads as found.
   *
   * @param there which piece is which stone that is there already
   */
  PilePlan plan(Answer found, List<FromStock.Taken> there) {
    List<PilePlan.Head> heads = new ArrayList<>();
    List<FromStock.Taken> taken = new ArrayList<>(there);
    for (int k = 0; k < sites.size(); k++) {
      Answer.Chosen c = found.heads().get(k);
      Site site = sites.get(k).get(c.way());
      take(opening(k).mark() + "-K", c.key(), site.key(), taken);
      List<Choice> choices = new ArrayList<>();
      List<List<Long>> widths = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Answer.Picked> row = c.side(swapped(k) ? 1 - s : s);
        FlatSide side = row.isEmpty() ? null : side(site, s);
        choices.add(site.on(s).with(side == null ? null : side.choice(row)));
        widths.add(FlatSide.widths(row));
        long foot = side == null ? 0 : side.start();
        for (int i = 1; i <= row.size(); i++) {
          long outer = foot + side.joint() + row.get(i - 1).width();
          long extent = side.extent(i, foot, outer, i == row.size());
          take(mark(k, s, site.on(s).there() + i), row.get(i - 1).pieces(), extent, taken);
          foot = outer;
        }
      }
      heads.add(new PilePlan.Head(site.made(), choices.get(0), choices.get(1), widths));
    }
    return new PilePlan(heads, taken, found.cost(), found.least(), found.proved(), found.steps());
  }

  private void take(String mark, List<Integer> of, long extent, List<FromStock.Taken> taken) {
    for (int c = 0; c < of.size(); c++) {
      taken.add(new FromStock.Taken(mark, c + 1, lying.get(of.get(c)).id(), extent));
    }
  }
}
