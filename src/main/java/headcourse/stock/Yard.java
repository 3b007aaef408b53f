package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.job.Tools;
import headcourse.layout.yard.FromStock;
import headcourse.stock.OrderList.Ordered;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.Unfit;
import headcourse.stock.cutting.Cost;
import headcourse.stock.cutting.CuttingProblem;
import headcourse.stock.cutting.CuttingProblem.Bin;
import headcourse.stock.cutting.CuttingSolver;
import headcourse.stock.cutting.Nesting;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The numbered blanks of a job, and the lots that they are to give. */
final class Yard {
  private final Job job;
  private final List<Lot> lots;
  private final List<FromStock.Taken> taken;
  private final Used start;
  private final List<Integer> typeOf = new ArrayList<>();
  private final List<Lot> types = new ArrayList<>();
  private final Nesting nesting;

  /** By the pieces that are gone: the plan, so that none is solved twice. */
  private final Map<Set<String>, Assignment> solved = new HashMap<>();

  Yard(Job job, List<Lot> lots, List<FromStock.Taken> taken) {
    this.taken = List.copyOf(taken);
    this.job = job;
    this.lots = List.copyOf(lots);
    Map<List<Object>, Integer> alike = new LinkedHashMap<>();
    for (Lot p : lots) {
      int t = alike.computeIfAbsent(sameness(p), k -> alike.size());
      if (t == types.size()) {
        types.add(p);
      }
      typeOf.add(t);
    }
    Used cut = Used.NOTHING;
    for (FromStock.Taken t : taken) {
      // A stone that is cut already is no part any more; what is left of its piece lies there.
      if (lot(t) < 0) {
        Length clean = job.tools().saw().cleanCut();
        cut = cut.and(t.piece(), clean, job.grid().ticks(t.extent()));
      }
    }
    start = cut;
    nesting =
        Nesting.of(
            types.stream().map(Lot::profile).toList(),
            types.stream().map(Lot::turnable).toList(),
            job.tools().saw().kerf().mm());
  }

  /** What parts that may stand in for each other have in common. */
  static List<Object> sameness(Lot p) {
    List<Object> key = new ArrayList<>();
    key.add(p.kind());
    key.add(p.face());
    key.add(p.returnLeg());
    key.add(p.thickness());
    p.profile()
        .vertices()
        .forEach(
            v -> {
              key.add(Math.round(v.x() * 1e6));
              key.add(Math.round(v.y() * 1e6));
            });
    return key;
  }

  /** The best plan without the pieces that are gone; pieces chosen before keep their stones. */
  Assignment solve(Set<String> gone) {
    return solved.computeIfAbsent(Set.copyOf(gone), this::solveAnew);
  }

  private Assignment solveAnew(Set<String> gone) {
    List<String> home = new ArrayList<>(Collections.nCopies(lots.size(), ""));
    Map<String, CutBlank> kept = new LinkedHashMap<>();
    for (FromStock.Taken t : taken) {
      int part = lot(t);
      if (part >= 0 && !gone.contains(t.piece())) {
        home.set(part, t.piece());
        kept.put(t.piece(), single(t.piece(), lots.get(part).first()));
      }
    }
    return fill(home, kept, start, gone, false);
  }

  /** The best plan for what is not cut yet, wherever it was planned before. */
  Assignment fresh(Assignment plan, Set<String> gone) {
    Set<String> held = new HashSet<>();
    taken.forEach(t -> held.add(t.piece()));
    Set<String> open = new HashSet<>();
    plan.blanks().stream().map(CutBlank::id).filter(b -> !held.contains(b)).forEach(open::add);
    return fill(homes(plan, open), kept(plan, open), plan.used(), gone, false);
  }

  /** A plan whose parts without a blank get one; all others stay where they are. */
  Assignment filled(Assignment plan, Set<String> gone) {
    return repaired(plan, gone, Set.of());
  }

  /** The plan with some of its blanks opened again; all others stay as they are. */
  Assignment repaired(Assignment plan, Set<String> gone, Set<String> opened) {
    return fill(homes(plan, opened), kept(plan, opened), plan.used(), gone, true);
  }

  private static List<String> homes(Assignment plan, Set<String> opened) {
    List<String> home = new ArrayList<>();
    plan.home().forEach(h -> home.add(opened.contains(h) ? "" : h));
    return home;
  }

  private static Map<String, CutBlank> kept(Assignment plan, Set<String> opened) {
    Map<String, CutBlank> kept = new LinkedHashMap<>();
    for (CutBlank b : plan.blanks()) {
      if (!opened.contains(b.id())) {
        kept.put(b.id(), b);
      }
    }
    return kept;
  }

  private int lot(FromStock.Taken t) {
    int copy = 0;
    for (int i = 0; i < lots.size(); i++) {
      Part p = lots.get(i).first();
      if (p.stone().equals(t.stone()) && !p.strip() && ++copy == t.copy()) {
        return i;
      }
    }
    return -1;
  }

  /** The kind of a numbered blank. */
  Stock.Item item(String id) {
    String mark = id.substring(0, id.lastIndexOf('#'));
    return job.stock().items().stream()
        .filter(i -> i.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private CutBlank single(String id, Part p) {
    Stock.Item item = item(id);
    Length clean = job.tools().saw().cleanCut();
    Cut cut = new Cut(p.stone(), p.of(), clean, Length.ZERO, p.face(), p.extent(), false);
    Length waste = item.length().minus(Length.mm(p.profile().meanWidth()));
    return blank(item, id).with(List.of(cut), waste);
  }

  /** A blank of which nothing is cut yet. */
  CutBlank blank(Stock.Item item, String id) {
    return new CutBlank(
        id, item.mark(), item.kind(), item.length(), item.face(), List.of(), item.length());
  }

  /** Finds blanks for the lots without one. */
  private Assignment fill(
      List<String> home,
      Map<String, CutBlank> kept,
      Used used,
      Set<String> gone,
      boolean leftovers) {
    int[] demand = new int[types.size()];
    for (int i = 0; i < home.size(); i++) {
      demand[typeOf.get(i)] += home.get(i).isEmpty() ? 1 : 0;
    }
    Set<String> unavailable = new HashSet<>(gone);
    unavailable.addAll(kept.keySet());
    unavailable.addAll(used.spans().keySet());
    List<Bin> bins = bins(unavailable);
    List<Room> rooms = rooms(kept, used, gone, leftovers);
    for (int i = 0; i < rooms.size(); i++) {
      Room r = rooms.get(i);
      long usable = r.usable().picometres() / 1000 + Nesting.SLACK / 2;
      bins.add(new Bin(job.stock().items().size() + i, usable, 1, Cost.NONE, takes(r.item())));
    }
    CuttingProblem problem = new CuttingProblem(demand, nesting, bins);
    CuttingSolver.Result r = new CuttingSolver(job.steps()).solve(problem);
    Cost before = Cost.NONE;
    for (String id : kept.keySet()) {
      // An off-cut is paid for.
      before = used.opened(id) ? before : before.plus(cost(item(id)));
    }
    new Filling(job, this, problem, home, kept, unavailable).add(r, rooms);
    return new Assignment(
        List.copyOf(kept.values()),
        home,
        used,
        before.plus(r.packing().cost()),
        before.plus(r.bound()),
        r.proved());
  }

  /** Off-cuts, and where leftovers count, what is left on the blanks that are to be cut. */
  private List<Room> rooms(
      Map<String, CutBlank> kept, Used used, Set<String> gone, boolean leftovers) {
    Set<String> ids = new LinkedHashSet<>(leftovers ? kept.keySet() : Set.of());
    ids.addAll(used.spans().keySet());
    List<Room> rooms = new ArrayList<>();
    for (String id : ids) {
      if (!gone.contains(id)) {
        Stock.Item item = item(id);
        CutBlank on = kept.containsKey(id) ? kept.get(id) : blank(item, id);
        rooms.addAll(Room.of(on, item, used.of(id), job.tools().saw()));
      }
    }
    return rooms;
  }

  private List<Bin> bins(Set<String> unavailable) {
    List<Bin> bins = new ArrayList<>();
    List<Stock.Item> items = job.stock().items();
    for (int i = 0; i < items.size(); i++) {
      Stock.Item item = items.get(i);
      int lost = 0;
      for (int n = 1; n <= item.count(); n++) {
        lost += unavailable.contains(item.mark() + "#" + n) ? 1 : 0;
      }
      boolean needed = item.toOrder() && item.count() == 0;
      int count = needed ? lots.size() : item.count() - lost;
      bins.add(new Bin(i, usable(item.length()), count, cost(item), takes(item)));
    }
    return bins;
  }

  private long usable(Length length) {
    Length clean = job.tools().saw().cleanCut().times(2);
    return length.minus(clean).picometres() / 1000 + Nesting.SLACK / 2;
  }

  private Cost cost(Stock.Item item) {
    long area = Math.round(item.length().mm() * item.face().mm() / 100);
    return priced()
        ? new Cost(0, Math.round(item.price() * 100), CuttingProblem.BLANK + area)
        : new Cost(0, 1, area);
  }

  private boolean[] takes(Stock.Item item) {
    boolean[] takes = new boolean[types.size()];
    for (int t = 0; t < takes.length; t++) {
      takes[t] = takes(item, types.get(t));
    }
    return takes;
  }

  /** The saw that cuts them. */
  Tools.Saw saw() {
    return job.tools().saw();
  }

  /** The lot with a number. */
  Lot lot(int i) {
    return lots.get(i);
  }

  /** All lots. */
  List<Lot> lots() {
    return lots;
  }

  /** Type of the lot with a number. */
  int type(int i) {
    return typeOf.get(i);
  }

  /** Whether prices lead, rather than the number of blanks. */
  boolean priced() {
    return job.stock().items().stream().anyMatch(i -> i.price() > 0);
  }

  /** A part without a return comes from a flat, or from a corner where no flat does for it. */
  private boolean takes(Stock.Item item, Lot part) {
    if (item.kind() == part.kind()) {
      return StockPlanner.takes(item, part);
    }
    return item.kind() == Stock.Kind.CORNER
        && item.face().compareTo(part.face().plus(item.trim())) >= 0
        && item.thickness().equals(part.thickness())
        && job.stock().items().stream()
            .noneMatch(
                i -> StockPlanner.takes(i, part) && i.length().compareTo(part.extent()) >= 0);
  }

  /**
   * No plan that places as many parts at the same price uses fewer blanks, as far as that is known.
   */
  int leastBlanks(Assignment plan) {
    if (plan.proved()) {
      return (int) plan.blanks().stream().filter(b -> !plan.used().opened(b.id())).count();
    }
    Cost least = plan.bound();
    return (int) (priced() ? least.second() / CuttingProblem.BLANK : least.lead());
  }

  /** What the plan takes of items made to order. */
  List<Ordered> toOrder(Assignment plan) {
    List<Ordered> out = new ArrayList<>();
    for (Stock.Item item : job.stock().items()) {
      int n =
          (int)
              plan.blanks().stream()
                  .filter(b -> b.stock().equals(item.mark()) && !plan.used().opened(b.id()))
                  .count();
      if (item.toOrder() && n > 0) {
        out.add(new Ordered(item, n));
      }
    }
    return out;
  }

  /** Why a part has no blank, and what would do. */
  Unfit unfit(Part part) {
    return new UnfitReason(job).of(part);
  }
}
