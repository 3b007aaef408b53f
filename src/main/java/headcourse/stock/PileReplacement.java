package headcourse.stock;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.flat.Choice;
import headcourse.layout.flat.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.stock.ChangeModel.Site;
import headcourse.stock.StockPlan.Moved;
import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The choice from the pile as it was ticketed, then without each spoiled piece, then around the
 * stones that are cut; each time with the fewest changes to what was ticketed before.
 */
final class PileReplacement {
  /** Where keys are left open, each of their widths may take at least so many steps. */
  private static final long LEAST = 20_000;

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;
  private final List<Fitted> fitted;
  private final long limit;
  private final List<Moved> changes = new ArrayList<>();
  private int changed;
  private int least;
  private boolean ruledOut = true;

  /**
   * @param openings those that are set from the pile
   * @param fitted the stones that are cut
   * @param limit how many steps each search may take
   */
  PileReplacement(
      Job job,
      List<Opening> openings,
      Function<Opening, FlatReading> read,
      List<Fitted> fitted,
      long limit) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = new PileReader(job);
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
   */
  record Outcome(PilePlan plan, boolean ruledOut, List<Moved> changes, int changed, int least) {}

  /**
   * Goes through what happened.
   *
   * @param first the choice as it was first ticketed, or null
   */
  Outcome run(PilePlan first) {
    Set<String> gone = elsewhere();
    PilePlan plan = first;
    for (String id : job.spoiled()) {
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
    return new Outcome(plan, ruledOut, changes, changed, least);
  }

  /** Pieces of stones cut for heads that are not set from the pile. */
  private Set<String> elsewhere() {
    Set<String> gone = new LinkedHashSet<>();
    for (Fitted f : job.fitted()) {
      if (openings.stream().noneMatch(o -> o.mark().equals(f.opening()))) {
        gone.add(f.piece());
      }
    }
    return gone;
  }

  private ChangeSites sites(List<Fitted> cut) {
    return new ChangeSites(job, openings, read, yard, cut);
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
    if (plan.heads().stream().anyMatch(h -> h.made().head().fanned())) {
      PilePlan alike = new SameSize(openings, yard).of(plan, gone);
      if (alike != null) {
        int before = changed;
        PilePlan next = counted(plan, alike);
        // Only those whose pieces are gone.
        least += changed - before;
        return next;
      }
    }
    ChangeWays ways = sites(List.of()).of(plan, gone);
    if (ways.ways().isEmpty()) {
      return counted(plan, anew(gone));
    }
    ChangeWays left = ways.without(s -> s.other() && pinned.contains(keyOf(s)));
    PilePlan next = fewest(plan, left, gone, pinned, List.of());
    return next != null || ruledOut ? next : counted(plan, anew(gone));
  }

  /** A plan that nobody knows to be the one with the fewest changes. */
  private PilePlan counted(PilePlan before, PilePlan after) {
    if (after == null) {
      return null;
    }
    changed += PileDiffs.count(before.taken(), after.taken(), PileDiffs.cut(after));
    ruledOut = false;
    return new PilePlan(
        after.heads(), after.taken(), after.cost(), Pile.Cost.NONE, false, after.steps());
  }

  private PilePlan anew(Set<String> gone) {
    if (limit < job.steps()) {
      // Only tried, to see whether a stone cut otherwise would help.
      ruledOut = false;
      return null;
    }
    KeySearch search = new KeySearch(job, openings, read);
    Optional<KeyedPile> anew = search.best(gone);
    ruledOut = search.ruledOut();
    return anew.map(PilePlan::of).orElse(null);
  }

  private static String keyOf(Site site) {
    return site.made().head().terms().opening().mark() + "-K";
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

  private PilePlan fewest(
      PilePlan plan,
      ChangeWays ways,
      Set<String> gone,
      Set<String> pinned,
      List<FromStock.Taken> there) {
    List<ChangeModel> models = new ArrayList<>();
    for (List<Site> way : ways.ways()) {
      models.add(new ChangeModel(yard, plan, way, gone, pinned));
    }
    FewestChanges.Result r =
        new FewestChanges(models.stream().map(ChangeModel::problem).toList(), ways.beyond(), limit)
            .solve();
    least += plan == null ? 0 : r.least();
    ruledOut = r.proved();
    if (r.found() == null) {
      return null;
    }
    changed += r.found().changes();
    return models.get(r.way()).plan(r.found(), there, r.proved(), r.steps());
  }

  /** Goes on around stones that are cut. */
  private PilePlan around(PilePlan plan, Set<String> gone) {
    ChangeWays ways = sites(fitted).of(plan, gone);
    if (ways.ways().isEmpty()) {
      return struck(plan, gone);
    }
    List<Site> base = ways.ways().get(0);
    List<FromStock.Taken> there = new FittedPieces(job, yard, plan, fitted, gone).find(base);
    Set<String> less = new LinkedHashSet<>(gone);
    there.forEach(t -> less.add(t.piece()));
    PilePlan same = asPlanned(plan, base, there, less);
    if (same != null) {
      return same;
    }
    // Keys may need another piece when theirs went into a stone that is cut.
    ChangeWays again = sites(fitted).of(plan, less);
    PilePlan next = fewest(plan, again, less, Set.of(), there);
    if (next != null || ruledOut) {
      return next;
    }
    PilePlan rest = counted(plan, anew(again, w -> there, gone));
    return rest != null ? rest : struck(plan, gone);
  }

  /** Around stones that are cut with the joints of fans struck from wherever they may be. */
  private PilePlan struck(PilePlan plan, Set<String> gone) {
    return ChangeSites.struckFromEnd(plan)
        ? counted(
            plan,
            anew(
                sites(fitted).struck(plan, gone),
                way -> new FittedPieces(job, yard, plan, fitted, gone).find(way),
                gone))
        : null;
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
    return new PilePlan(heads, taken, plan.cost(), plan.bound(), plan.proved(), plan.steps());
  }

  /** Around stones that are cut where nothing could be planned without them. */
  private PilePlan fresh(Set<String> gone) {
    return anew(
        sites(fitted).fresh(gone),
        way -> new FittedPieces(job, yard, null, fitted, gone).find(way),
        gone);
  }

  /** The cheapest of all ways, whatever was planned. */
  private PilePlan anew(
      ChangeWays ways, Function<List<Site>, List<FromStock.Taken>> there, Set<String> gone) {
    PilePlan best = null;
    boolean all = ways.complete();
    long steps = 0;
    for (List<Site> way : ways.ways()) {
      List<FromStock.Taken> found = there.apply(way);
      Set<String> less = new LinkedHashSet<>(gone);
      found.forEach(t -> less.add(t.piece()));
      ChangeModel model = new ChangeModel(yard, null, way, less, Set.of());
      if (steps > limit) {
        all = false;
        break;
      }
      long may = Math.max(LEAST, (limit - steps) / 2);
      FewestChanges.Result r = new FreshRest(model.problem(), may).solve();
      steps += r.steps();
      all &= r.proved();
      if (r.found() != null
          && (best == null || r.found().price().cost().compareTo(best.cost()) < 0)) {
        best = model.plan(r.found(), found, false, steps);
      }
    }
    ruledOut = best == null && all;
    return best == null || !all ? best : best.best(steps);
  }
}
