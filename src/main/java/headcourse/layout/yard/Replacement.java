package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.side.Choice;
import headcourse.layout.yard.FromStock.Moved;
import headcourse.layout.yard.FromStock.Taken;
import headcourse.layout.yard.rows.Answer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;

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
  private final List<Moved> changes = new ArrayList<>();
  private int changed;
  private int least;
  private boolean ruledOut;
  private long steps;

  /**
   * @param openings those that are set from the pile
   * @param held pieces that heads set before have taken
   */
  Replacement(
      Job job, List<Opening> openings, Function<Opening, FlatReading> read, Set<String> held) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.fitted = job.report().fitted().stream().filter(this::own).toList();
    this.held = held;
  }

  private boolean own(Fitted f) {
    return openings.stream().anyMatch(o -> o.mark().equals(f.opening()));
  }

  /**
   * What it came to.
   *
   * @param first the choice as it was first ticketed, or null
   * @param fitted the stones of these heads that are cut
   * @param plan the choice, or null
   * @param ruledOut where there is none, whether none was missed
   * @param changes what moved to another piece
   * @param changed how many stones, copies counted, are not as they were ticketed
   * @param least how many must change at least
   * @param steps how many steps the last search took
   */
  record Outcome(
      PilePlan first,
      List<Fitted> fitted,
      PilePlan plan,
      boolean ruledOut,
      List<Moved> changes,
      int changed,
      int least,
      long steps) {}

  /** Chooses, and goes through what happened. */
  Outcome run() {
    PilePlan first = best(null, List.of(), held);
    PilePlan plan = first;
    // Gone too is what stones were cut from for heads that are not set from the pile.
    Set<String> gone = new LinkedHashSet<>(held);
    job.report().fitted().stream().filter(f -> !own(f)).forEach(f -> gone.add(f.piece()));
    for (String id : job.report().spoiled()) {
      gone.add(id);
      if (plan != null && plan.takes(id)) {
        plan = moved(plan, without(plan, gone));
      }
    }
    if (!fitted.isEmpty()) {
      plan = plan == null ? best(null, fitted, gone) : moved(plan, around(plan, gone));
    }
    return new Outcome(first, fitted, plan, ruledOut, changes, changed, least, steps);
  }

  private PilePlan moved(PilePlan before, PilePlan after) {
    changes.addAll(after == null ? List.of() : before.moved(after));
    return after;
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
    return next != null || sites != null && ruledOut
        ? next
        : counted(plan, best(null, List.of(), gone));
  }

  private PilePlan fewest(
      PilePlan plan,
      List<List<Site>> sites,
      Set<String> gone,
      Set<String> pinned,
      List<Taken> there) {
    YardModel model = new YardModel(job, plan, sites, gone, pinned);
    Answer a = model.solve();
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
    changed += before.differing(after);
    ruledOut = false;
    return after.unproved();
  }

  /** Stones that are cut just as they were planned; what is cut does not change any more. */
  private Set<String> pinned(PilePlan plan, Set<String> gone) {
    Set<String> out = new TreeSet<>();
    for (PilePlan.Head h : plan.heads()) {
      String opening = h.made().head().terms().opening().mark();
      List<PlacedStone> stones = h.layout().stones();
      fitted.stream()
          .filter(f -> f.opening().equals(opening))
          .filter(f -> plan.of(f.mark()).stream().noneMatch(t -> gone.contains(t.piece())))
          .filter(f -> stones.stream().anyMatch(s -> asPlanned(f, s)))
          .forEach(f -> out.add(f.mark()));
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
      ruledOut = true;
      return struck(plan, gone);
    }
    List<Site> base = sites.stream().map(s -> s.get(0)).toList();
    List<Taken> there = new FittedPieces(job, plan, gone).find(base);
    Set<String> less = with(gone, there);
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
    return plan.struckFromEnd() ? counted(plan, best(plan, fitted, gone)) : null;
  }

  /**
   * The best around stones that are cut, whatever was planned for the others.
   *
   * @param plan what was planned, or null
   */
  private PilePlan best(PilePlan plan, List<Fitted> cut, Set<String> gone) {
    List<List<Site>> sites = sites(cut).anew(plan, gone);
    ruledOut = sites.stream().anyMatch(List::isEmpty);
    if (ruledOut) {
      return null;
    }
    List<Site> base = sites.stream().map(s -> s.get(0)).toList();
    Set<String> less = with(gone, new FittedPieces(job, plan, gone).find(base));
    YardModel model = new YardModel(job, null, sites, less, Set.of());
    Answer a = model.solve();
    steps = a.steps();
    ruledOut = a.proved();
    if (!a.found()) {
      return null;
    }
    Set<String> busy = with(gone, model.plan(a, List.of()).taken());
    List<Site> chosen =
        IntStream.range(0, sites.size())
            .mapToObj(k -> sites.get(k).get(a.heads().get(k).way()))
            .toList();
    return model.plan(a, new FittedPieces(job, plan, busy).find(chosen));
  }

  private static Set<String> with(Set<String> gone, List<Taken> more) {
    Set<String> all = new LinkedHashSet<>(gone);
    more.forEach(t -> all.add(t.piece()));
    return all;
  }

  /** The plan as it was, where all that is cut is as planned; else null. */
  private static PilePlan asPlanned(
      PilePlan plan, List<Site> sites, List<Taken> there, Set<String> gone) {
    Set<String> cut = new TreeSet<>();
    sites.forEach(s -> cut.addAll(s.cut()));
    List<Taken> rest = plan.taken().stream().filter(t -> !cut.contains(t.stone())).toList();
    if (rest.stream().anyMatch(t -> gone.contains(t.piece()))) {
      return null;
    }
    List<PilePlan.Head> heads = new ArrayList<>();
    for (int k = 0; k < sites.size(); k++) {
      FittedHead made = sites.get(k).made();
      List<List<Long>> widths = new ArrayList<>();
      List<Choice> choices = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        FittedHead.Left left = sites.get(k).on(s);
        List<Long> row = plan.heads().get(k).widths().get(s);
        if (!left.asDrawn() || left.there() > row.size()) {
          return null;
        }
        widths.add(row.subList(left.there(), row.size()));
        choices.add(made.asDrawn(s == 0 ? Side.LEFT : Side.RIGHT));
      }
      heads.add(new PilePlan.Head(made, choices.get(0), choices.get(1), widths));
    }
    List<Taken> taken = new ArrayList<>(there);
    taken.addAll(rest);
    return new PilePlan(heads, taken, plan.cost(), plan.least(), plan.proved(), plan.steps());
  }
}
