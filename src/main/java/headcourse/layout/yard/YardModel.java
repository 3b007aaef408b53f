package headcourse.layout.yard;

import headcourse.job.Job;
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
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Puts the heads of a job as rows to be set from a pile, and the answer back as heads. */
final class YardModel {
  private final Job job;
  private final PilePlan before;
  private final List<List<Site>> sites;
  private final Set<String> pinned;
  private final YardPieces yard;
  private final List<Lying> lying;
  private final List<String> ids;

  /**
   * @param before what was ticketed, or null
   * @param sites by head: its keys and striking points; the one that was ticketed first
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
    this.ids = lying.stream().map(Lying::id).toList();
  }

  /** The best choice, as far as the job's steps show. */
  Answer solve() {
    return RowSolver.solve(pile(), job.steps());
  }

  private FlatTerms terms(int k) {
    return sites.get(k).get(0).made().head().terms();
  }

  Pile pile() {
    List<Length> heights = new ArrayList<>();
    List<Pile.Head> heads = new ArrayList<>();
    long give = 0;
    for (int k = 0; k < sites.size(); k++) {
      Length more = sites.get(k).stream().map(Site::moreHeight).reduce(Length.ZERO, Length::max);
      heights.add(terms(k).head().height().plus(more));
      heads.add(head(k));
      give += terms(k).opening().count() * job.grid().floor(terms(k).stones().give());
    }
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : lying) {
      List<Boolean> fits = new ArrayList<>();
      List<Boolean> key = new ArrayList<>();
      for (int k = 0; k < sites.size(); k++) {
        boolean high = p.item().face().compareTo(heights.get(k)) >= 0;
        fits.add(high && yard.fits(p.item(), terms(k).opening(), false));
        key.add(yard.fits(p.item(), terms(k).opening(), true));
      }
      pieces.add(new Pile.Piece(p.usable(), fits, key));
    }
    return new Pile(pieces, heads, give, before != null);
  }

  private Pile.Head head(int k) {
    FlatTerms t = terms(k);
    FlatTerms.Widths w = t.widths();
    String mark = t.opening().mark() + "-K";
    int left = Sites.swapped(t) ? 1 : 0;
    List<Pile.Way> ways = new ArrayList<>();
    for (Site site : sites.get(k)) {
      boolean first = site == sites.get(k).get(0);
      boolean ticketed = site.key() >= 0 && before != null && first;
      Pile.Ticket key = ticketed ? ticket(site.key(), mark, k, 0) : null;
      if (first || !pinned.contains(mark)) {
        ways.add(new Pile.Way(row(k, site, left), row(k, site, 1 - left), site.key(), key));
      }
    }
    return new Pile.Head(
        t.opening().count(), t.stones().mirror(), w.min(), w.max(), w.jump(), ways);
  }

  private Pile.Ticket ticket(long width, String mark, int k, long foot) {
    List<Integer> of = new ArrayList<>(Collections.nCopies(terms(k).opening().count(), -1));
    before.of(mark).forEach(t -> of.set(t.copy() - 1, ids.indexOf(t.piece())));
    return new Pile.Ticket(width, of, foot, pinned.contains(mark));
  }

  private Pile.Row row(int k, Site site, int s) {
    FittedHead.Left left = site.on(s);
    List<Long> there = IntStream.rangeClosed(1, left.there()).mapToObj(left::width).toList();
    Integer each = left.terms().stones().eachSide();
    List<Pile.Ticket> tickets = before == null ? List.of() : tickets(k, site, s);
    FlatSide side = left.rest() == null ? null : new FlatSide(left);
    return new Pile.Row(side, left.whole(), each == null ? 0 : each, there, tickets);
  }

  private List<Pile.Ticket> tickets(int k, Site site, int s) {
    List<Pile.Ticket> out = new ArrayList<>();
    PilePlan.Head head = before.heads().get(k);
    List<Long> widths = head.widths().get(s);
    int there = site.on(s).there();
    boolean moved = head.made().head().fanned() && !site.on(s).flush();
    long foot = (s == 0 ? head.left() : head.right()).lines().start();
    for (int i = 0; i < widths.size(); i++) {
      foot += terms(k).joint() + widths.get(i);
      if (i >= there) {
        // In a fan the first beside an edge that is not as drawn is another stone in any case.
        long stood = moved && i == there ? Long.MIN_VALUE : foot;
        out.add(ticket(widths.get(i), site.mark(s, i + 1), k, stood));
      }
    }
    return out;
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
      take(site.keyMark(), c.key(), site.key(), taken);
      List<Choice> choices = new ArrayList<>();
      List<List<Long>> widths = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Answer.Picked> row = c.side(Sites.swapped(terms(k)) ? 1 - s : s);
        choices.add(site.on(s).with(row.isEmpty() ? null : choice(site, s, row, taken)));
        widths.add(row.stream().map(Answer.Picked::width).toList());
      }
      heads.add(new PilePlan.Head(site.made(), choices.get(0), choices.get(1), widths));
    }
    return new PilePlan(heads, taken, found.cost(), found.least(), found.proved(), found.steps());
  }

  private Choice choice(Site site, int s, List<Answer.Picked> row, List<FromStock.Taken> taken) {
    FlatSide side = new FlatSide(site.on(s));
    long[] feet = side.feet(row);
    for (int i = 1; i <= feet.length; i++) {
      long inner = i == 1 ? side.start() : feet[i - 2];
      long extent = side.extent(i, inner, feet[i - 1], i == feet.length);
      take(site.mark(s, site.on(s).there() + i), row.get(i - 1).pieces(), extent, taken);
    }
    return side.choice(feet);
  }

  private void take(String mark, List<Integer> of, long extent, List<FromStock.Taken> taken) {
    for (int c = 0; c < of.size(); c++) {
      taken.add(new FromStock.Taken(mark, c + 1, ids.get(of.get(c)), extent));
    }
  }
}
