package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.side.Choice;
import headcourse.layout.yard.FromStock.Moved;
import headcourse.layout.yard.rows.Answer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The choice from the pile as it was ticketed, then without each spoiled piece, then around the
 * stones that are cut; each time with the fewest changes to what was ticketed before.
 */
final class Replacement {
  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final List<Fitted> fitted;
  private final Set<String> held;
  private final long limit;
  private final List<Moved> changes = new ArrayList<>();
  private int changed;
  private int least;
  private boolean ruledOut = true;
  private long steps;

  /**
   * @param openings those that are set from the pile
   * @param fitted the stones that are cut
   * @param held pieces that heads set before have taken
   * @param limit how many steps each search may take
   */
  Replacement(
      Job job,
      List<Opening> openings,
      Function<Opening, FlatReading> read,
      List<Fitted> fitted,
      Set<String> held,
      long limit) {
    this.held = held;
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.fitted =
        fitted.stream()
            .filter(f -> openings.stream().anyMatch(o -> o.mark().equals(f.opening())))
            .toList();
    this.limit = limit;
  }

  /**
   * What it came to.
   *
   * @param plan the choice, or null
   * @param ruledOut where there is none, whether none was missed
   * @param changes what moved to another piece
   * @param changed how many stones, copies counted, are not as they were ticketed
   * @param least how many must change at least
   * @param steps how many steps the last search took
   */
  record Outcome(
      PilePlan plan, boolean ruledOut, List<Moved> changes, int changed, int least, long steps) {
    /** This, or where nothing was searched since, what it came to before. */
    Outcome told(Outcome start) {
      return start.plan() == null && steps == 0 ? start : this;
    }
  }

  /** The best choice from the whole pile, or none. */
  Outcome first() {
    PilePlan plan = anew(held);
    return new Outcome(plan, ruledOut, List.of(), 0, 0, steps);
  }

  /**
   * Goes through what happened.
   *
   * @param first the choice as it was first ticketed, or null
   */
  Outcome run(PilePlan first) {
    Set<String> gone = elsewhere();
    PilePlan plan = first;
    for (String id : job.report().spoiled()) {
      gone.add(id);
      if (plan != null && plan.takes(id)) {
        PilePlan before = plan;
        plan = without(before, gone);
        if (plan != null) {
          changes.addAll(PileDiffs.moved(before.taken(), plan.taken(), Set.of()));
        }
      }
    }
    if (!fitted.isEmpty()) {
      PilePlan before = plan;
      plan = before == null ? fresh(gone) : around(before, gone);
      if (plan != null && before != null) {
        changes.addAll(PileDiffs.moved(before.taken(), plan.taken(), PileDiffs.cut(plan)));
      }
    }
    return new Outcome(plan, ruledOut, changes, changed, least, steps);
  }

  /** Pieces of stones cut for heads that are not set from the pile. */
  private Set<String> elsewhere() {
    Set<String> gone = new LinkedHashSet<>(held);
    for (Fitted f : job.report().fitted()) {
      if (openings.stream().noneMatch(o -> o.mark().equals(f.opening()))) {
        gone.add(f.piece());
      }
    }
    return gone;
  }

  private Sites sites(List<Fitted> cut) {
    return new Sites(job, openings, read, cut);
  }

  /** Without pieces that are gone; what is cut as planned stays in any case. */
  private PilePlan without(PilePlan plan, Set<String> gone) {
    Set<String> pinned = pinned(plan, gone);
    int before = changed;
    int atLeast = least;
    PilePlan next = without(plan, gone, Set.of());
    if (next == null || pinned(next, Set.of()).containsAll(pinned)) {
      return next;
    }
    changed = before;
    least = atLeast;
    return without(plan, gone, pinned);
  }

  private PilePlan without(PilePlan plan, Set<String> gone, Set<String> pinned) {
    List<List<Site>> sites = sites(List.of()).after(plan, gone);
    PilePlan next = sites == null ? null : fewest(plan, sites, gone, pinned, List.of());
    return next != null || sites != null && ruledOut ? next : counted(plan, anew(gone));
  }

  private PilePlan fewest(
      PilePlan plan,
      List<List<Site>> sites,
      Set<String> gone,
      Set<String> pinned,
      List<FromStock.Taken> there) {
    YardModel model = new YardModel(job, plan, sites, gone, pinned);
    Answer a = model.solve(limit);
    steps = a.steps();
    least += a.changes();
    // Struck from elsewhere at least one stone of a fan would lean otherwise; not tried here.
    boolean all = !plan.struckFromEnd() || a.found() && a.cost().changes() == 0;
    ruledOut = a.proved() && all;
    if (!a.found()) {
      return null;
    }
    changed += a.cost().changes();
    PilePlan next = model.plan(a, there);
    return all ? next : next.unproved();
  }

  /** A plan that nobody knows to be the one with the fewest changes. */
  private PilePlan counted(PilePlan before, PilePlan after) {
    if (after == null) {
      return null;
    }
    changed += PileDiffs.count(before.taken(), after.taken(), PileDiffs.cut(after));
    ruledOut = false;
    return after.unproved();
  }

  private PilePlan anew(Set<String> gone) {
    YardModel model = new YardModel(job, null, sites(List.of()).fresh(gone), gone, Set.of());
    Answer a = model.solve(limit);
    steps = a.steps();
    ruledOut = a.proved();
    return a.found() ? model.plan(a, List.of()) : null;
  }

  /** Stones that are cut just as they were planned; what is cut does not change any more. */
  private Set<String> pinned(PilePlan plan, Set<String> gone) {
    Set<String> out = new TreeSet<>();
    for (PilePlan.Head h : plan.heads()) {
      HeadLayout layout = h.layout();
      for (Fitted f : fitted) {
        String stone = f.opening() + "-" + f.stone();
        if (f.opening().equals(h.mark())
            && plan.of(stone).stream().noneMatch(t -> gone.contains(t.piece()))
            && layout.stones().stream().anyMatch(s -> asPlanned(f, s))) {
          out.add(stone);
        }
      }
    }
    return out;
  }

  private static boolean asPlanned(Fitted f, PlacedStone s) {
    return s.mark().equals(f.stone())
        && f.bottom().equals(s.bottom())
        && (f.top() == null || f.top().equals(s.top()));
  }

  /** Goes on around stones that are cut. */
  private PilePlan around(PilePlan plan, Set<String> gone) {
    List<List<Site>> sites = sites(fitted).after(plan, gone);
    if (sites == null) {
      return struck(plan, gone);
    }
    List<Site> base = sites.stream().map(s -> s.get(0)).toList();
    List<FromStock.Taken> there = new FittedPieces(job, plan, fitted, gone).find(base);
    Set<String> less = new LinkedHashSet<>(gone);
    there.forEach(t -> less.add(t.piece()));
    PilePlan same = asPlanned(plan, base, there, less);
    if (same != null) {
      return same;
    }
    // Keys may need another piece when theirs went into a stone that is cut.
    PilePlan next = fewest(plan, sites(fitted).after(plan, less), less, Set.of(), there);
    return next != null || ruledOut ? next : struck(plan, gone);
  }

  /** Around stones that are cut with the joints of fans struck from wherever they may be. */
  private PilePlan struck(PilePlan plan, Set<String> gone) {
    return plan.struckFromEnd()
        ? counted(plan, around(plan, sites(fitted).struck(plan, gone), gone))
        : null;
  }

  /** Around stones that are cut where nothing could be planned without them. */
  private PilePlan fresh(Set<String> gone) {
    return around(null, sites(fitted).fresh(gone), gone);
  }

  /** The best around stones that are cut, whatever was planned for the others. */
  private PilePlan around(PilePlan plan, List<List<Site>> sites, Set<String> gone) {
    if (sites.stream().anyMatch(List::isEmpty)) {
      ruledOut = true;
      return null;
    }
    Set<String> less = new LinkedHashSet<>(gone);
    List<Site> base = sites.stream().map(s -> s.get(0)).toList();
    new FittedPieces(job, plan, fitted, gone).find(base).forEach(t -> less.add(t.piece()));
    YardModel model = new YardModel(job, null, sites, less, Set.of());
    Answer a = model.solve(limit);
    steps = a.steps();
    ruledOut = a.proved();
    if (!a.found()) {
      return null;
    }
    Set<String> busy = new LinkedHashSet<>(gone);
    model.plan(a, List.of()).taken().forEach(t -> busy.add(t.piece()));
    List<Site> chosen = new ArrayList<>();
    for (int k = 0; k < sites.size(); k++) {
      chosen.add(sites.get(k).get(a.heads().get(k).way()));
    }
    return model.plan(a, new FittedPieces(job, plan, fitted, busy).find(chosen));
  }

  /** The plan as it was, where all that is cut is as planned; else null. */
  private static PilePlan asPlanned(
      PilePlan plan, List<Site> sites, List<FromStock.Taken> there, Set<String> gone) {
    List<PilePlan.Head> heads = new ArrayList<>();
    Set<String> cut = PileDiffs.cut(sites);
    for (FromStock.Taken t : plan.taken()) {
      if (!cut.contains(t.stone()) && gone.contains(t.piece())) {
        return null;
      }
    }
    for (int k = 0; k < sites.size(); k++) {
      Site site = sites.get(k);
      PilePlan.Head h = plan.heads().get(k);
      List<List<Long>> widths = new ArrayList<>();
      List<Choice> choices = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        FittedHead.Left left = site.on(s);
        if (!left.asDrawn() || left.there() > h.widths().get(s).size()) {
          return null;
        }
        List<Long> row = h.widths().get(s);
        widths.add(row.subList(left.there(), row.size()));
        choices.add(site.made().asDrawn(s == 0 ? Side.LEFT : Side.RIGHT));
      }
      heads.add(new PilePlan.Head(site.made(), choices.get(0), choices.get(1), widths));
    }
    List<FromStock.Taken> taken = new ArrayList<>(there);
    plan.taken().stream().filter(t -> !cut.contains(t.stone())).forEach(taken::add);
    return new PilePlan(heads, taken, plan.cost(), plan.least(), plan.proved(), plan.steps());
  }
}
