package headcourse.layout.yard;

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
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Puts the heads of a job as rows to be set from a pile, and the answer back as heads. */
final class YardModel {
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

  /** The best choice, as far as the job's steps show. */
  Answer solve() {
    return RowSolver.solve(pile(), job.steps());
  }

  private Opening opening(int k) {
    return sites.get(k).get(0).opening();
  }

  private FlatTerms terms(int k) {
    return sites.get(k).get(0).made().head().terms();
  }

  Pile pile() {
    List<Pile.Head> heads = each(this::head);
    List<Pile.Piece> pieces = new ArrayList<>();
    List<Length> heights = each(this::height);
    for (Lying p : lying) {
      Length face = p.item().face();
      pieces.add(
          new Pile.Piece(
              p.usable(),
              each(k -> face.compareTo(heights.get(k)) >= 0 && fits(p, k, false)),
              each(k -> opening(k).head().key() != null && fits(p, k, true))));
    }
    long give =
        each(this::opening).stream()
            .mapToLong(o -> o.count() * job.grid().floor(o.head().stones().give()))
            .sum();
    return new Pile(pieces, heads, give, before != null);
  }

  private <T> List<T> each(IntFunction<T> of) {
    return IntStream.range(0, sites.size()).mapToObj(of).toList();
  }

  private Length height(int k) {
    Length more = sites.get(k).stream().map(Site::moreHeight).reduce(Length.ZERO, Length::max);
    return opening(k).head().height().plus(more);
  }

  private boolean fits(Lying p, int k, boolean key) {
    return yard.fits(p.item(), opening(k), key);
  }

  private Pile.Head head(int k) {
    FlatTerms t = terms(k);
    List<Pile.Way> ways = new ArrayList<>();
    for (Site site : sites.get(k)) {
      String mark = site.keyMark();
      boolean pinned = this.pinned.contains(mark);
      Pile.Ticket key =
          site.key() < 0 || before == null || site.other()
              ? null
              : new Pile.Ticket(site.key(), pieces(mark, k), 0, pinned);
      if (!site.other() || !pinned) {
        int left = Sites.swapped(t) ? 1 : 0;
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
    List<Long> there = IntStream.rangeClosed(1, left.there()).mapToObj(i -> left.width(i)).toList();
    Integer each = left.terms().stones().eachSide();
    List<Pile.Ticket> tickets = before == null ? List.of() : tickets(k, site, s);
    return new Pile.Row(side(site, s), left.whole(), each == null ? 0 : each, there, tickets);
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
        String mark = site.mark(s, i + 1);
        out.add(new Pile.Ticket(widths.get(i), pieces(mark, k), stood, pinned.contains(mark)));
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
    FlatSide side = side(site, s);
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
      taken.add(new FromStock.Taken(mark, c + 1, lying.get(of.get(c)).id(), extent));
    }
  }
}
