package headcourse.stock;

import headcourse.geom.Point;
import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.job.Tools;
import headcourse.layout.yard.FromStock;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
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
import java.util.stream.IntStream;

/** The numbered blanks of a job, and the crosscuts that they are to give. */
final class Yard {
  private final Job job;
  private final List<Crosscut> crosscuts;
  private final List<FromStock.Taken> taken;
  private final Used start;
  private final List<Integer> typeOf = new ArrayList<>();
  private final List<Crosscut> types = new ArrayList<>();
  private final Nesting nesting;

  /** By the pieces that are gone: the plan, so that none is solved twice. */
  private final Map<Set<String>, Assignment> solved = new HashMap<>();

  Yard(Job job, List<Crosscut> crosscuts, List<FromStock.Taken> taken) {
    this.taken = List.copyOf(taken);
    this.job = job;
    this.crosscuts = List.copyOf(crosscuts);
    Map<List<Object>, Integer> alike = new LinkedHashMap<>();
    for (Crosscut p : crosscuts) {
      int t = alike.computeIfAbsent(sameness(p), k -> alike.size());
      if (t == types.size()) {
        types.add(p);
      }
      typeOf.add(t);
    }
    Used cut = Used.NOTHING;
    for (FromStock.Taken t : taken) {
      // A stone that is cut already is no part any more; what is left of its piece lies there.
      if (crosscut(t) < 0) {
        Length clean = job.tools().saw().cleanCut();
        cut = cut.and(t.piece(), clean, job.grid().ticks(t.extent()));
      }
    }
    start = cut;
    nesting =
        new Nesting(
            types.stream().map(Crosscut::profile).toList(),
            types.stream().map(c -> c.first().turnable()).toList(),
            job.tools().saw().kerf().mm());
  }

  /** What parts that may stand in for each other have in common. */
  static List<Object> sameness(Crosscut p) {
    List<Object> key = new ArrayList<>();
    Collections.addAll(
        key, p.first().kind(), p.face(), p.first().returnLeg(), p.first().thickness());
    for (Point v : p.profile().vertices()) {
      Collections.addAll(key, Math.round(v.x() * 1e6), Math.round(v.y() * 1e6));
    }
    return key;
  }

  /** The best plan without the pieces that are gone; pieces chosen before keep their stones. */
  Assignment solve(Set<String> gone) {
    return solved.computeIfAbsent(Set.copyOf(gone), this::solveAnew);
  }

  private Assignment solveAnew(Set<String> gone) {
    List<String> home = new ArrayList<>(Collections.nCopies(crosscuts.size(), ""));
    Map<String, CutBlank> kept = new LinkedHashMap<>();
    for (FromStock.Taken t : taken) {
      int part = crosscut(t);
      if (part >= 0 && !gone.contains(t.piece())) {
        home.set(part, t.piece());
        kept.put(t.piece(), single(t.piece(), crosscuts.get(part).first()));
      }
    }
    return fill(home, kept, start, gone, false);
  }

  /** The best plan for what is not cut yet, wherever it was planned before. */
  Assignment fresh(Assignment plan, Set<String> gone) {
    Set<String> open = new HashSet<>();
    plan.blanks().forEach(b -> open.add(b.id()));
    taken.forEach(t -> open.remove(t.piece()));
    return fill(plan, gone, open, false);
  }

  /** A plan whose parts without a blank get one; all others stay where they are. */
  Assignment filled(Assignment plan, Set<String> gone) {
    return repaired(plan, gone, Set.of());
  }

  /** The plan with some of its blanks opened again; all others stay as they are. */
  Assignment repaired(Assignment plan, Set<String> gone, Set<String> opened) {
    return fill(plan, gone, opened, true);
  }

  private Assignment fill(
      Assignment plan, Set<String> gone, Set<String> opened, boolean leftovers) {
    List<String> home =
        new ArrayList<>(plan.home().stream().map(h -> opened.contains(h) ? "" : h).toList());
    Map<String, CutBlank> kept = new LinkedHashMap<>();
    plan.blanks().stream().filter(b -> !opened.contains(b.id())).forEach(b -> kept.put(b.id(), b));
    return fill(home, kept, plan.used(), gone, leftovers);
  }

  private int crosscut(FromStock.Taken t) {
    return IntStream.range(0, crosscuts.size())
        .filter(i -> crosscuts.get(i).first().stone().equals(t.stone()))
        .filter(i -> !crosscuts.get(i).first().strip())
        .skip(t.copy() - 1)
        .findFirst()
        .orElse(-1);
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

  /** Finds blanks for the crosscuts without one. */
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
    new NumberedBlanks(job, this, problem, home, kept, unavailable).add(r, rooms);
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
      boolean needed = item.toOrder() && item.count() == 0;
      long count =
          IntStream.rangeClosed(1, item.count())
              .filter(n -> !unavailable.contains(item.mark() + "#" + n))
              .count();
      bins.add(
          new Bin(
              i,
              usable(item.length()),
              needed ? crosscuts.size() : (int) count,
              cost(item),
              takes(item)));
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

  /** All crosscuts. */
  List<Crosscut> crosscuts() {
    return crosscuts;
  }

  /** Type of the crosscut with a number. */
  int type(int i) {
    return typeOf.get(i);
  }

  /** Whether prices lead, rather than the number of blanks. */
  boolean priced() {
    return job.stock().items().stream().anyMatch(i -> i.price() > 0);
  }

  /** A part without a return comes from a flat, or from a corner where no flat does for it. */
  private boolean takes(Stock.Item item, Crosscut part) {
    if (item.kind() == part.first().kind()) {
      return part.goesOn(item);
    }
    return item.kind() == Stock.Kind.CORNER
        && item.face().compareTo(part.face().plus(item.trim())) >= 0
        && item.thickness().equals(part.first().thickness())
        && job.stock().items().stream()
            .noneMatch(i -> part.goesOn(i) && i.length().compareTo(part.first().extent()) >= 0);
  }

  /** Those of a plan's blanks from which nothing was cut yet. */
  static List<CutBlank> fresh(Assignment plan) {
    return plan.blanks().stream().filter(b -> !plan.used().opened(b.id())).toList();
  }

  /**
   * No plan that places as many parts at the same price uses fewer blanks, as far as that is known.
   */
  int leastBlanks(Assignment plan) {
    long least = priced() ? plan.bound().second() / CuttingProblem.BLANK : plan.bound().lead();
    return plan.proved() ? fresh(plan).size() : (int) least;
  }
}
