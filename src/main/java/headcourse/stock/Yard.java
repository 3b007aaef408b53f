package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.CuttingProblem.Bin;
import headcourse.stock.OrderList.Ordered;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.Unfit;
import headcourse.units.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The numbered blanks of a job, and the parts that they are to give. */
final class Yard {
  private final Job job;
  private final List<Part> parts;
  private final List<Integer> typeOf = new ArrayList<>();
  private final List<Part> types = new ArrayList<>();
  private final Nesting nesting;

  Yard(Job job, List<Part> parts) {
    this.job = job;
    this.parts = parts;
    Map<List<Object>, Integer> alike = new LinkedHashMap<>();
    for (Part p : parts) {
      int t = alike.computeIfAbsent(sameness(p), k -> alike.size());
      if (t == types.size()) {
        types.add(p);
      }
      typeOf.add(t);
    }
    nesting =
        Nesting.of(
            types.stream().map(Part::profile).toList(),
            types.stream().map(Part::turnable).toList(),
            job.tools().saw().kerf().mm());
  }

  private static List<Object> sameness(Part p) {
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

  /** The best plan without the pieces that are gone. */
  Assignment solve(Set<String> gone) {
    int[] demand = new int[types.size()];
    typeOf.forEach(t -> demand[t]++);
    CuttingProblem problem = new CuttingProblem(demand, nesting, bins(gone, demand));
    CuttingSolver.Result r = new CuttingSolver(job.steps()).solve(problem);
    return assign(problem, r, gone);
  }

  /** The plan after one more piece has gone, with as few stones moved as can be. */
  Assignment without(Assignment plan, String id, Set<String> gone) {
    return plan.home().contains(id) ? solve(gone) : plan;
  }

  private List<Bin> bins(Set<String> gone, int[] demand) {
    int all = parts.size();
    List<Bin> bins = new ArrayList<>();
    List<Stock.Item> items = job.stock().items();
    boolean priced = priced();
    for (int i = 0; i < items.size(); i++) {
      Stock.Item item = items.get(i);
      long lost =
          java.util.stream.IntStream.rangeClosed(1, item.count())
              .filter(n -> gone.contains(item.mark() + "#" + n))
              .count();
      boolean[] takes = new boolean[types.size()];
      for (int t = 0; t < takes.length; t++) {
        takes[t] = takes(item, types.get(t));
      }
      long length = item.length().picometres() / 1000;
      long area = Math.round(item.length().mm() * item.face().mm() / 100);
      long price = Math.round(item.price() * 100);
      long clean = job.tools().saw().cleanCut().picometres() / 1000;
      bins.add(
          new Bin(
              i,
              length - 2 * clean + Nesting.SLACK / 2,
              item.toOrder() ? all : (int) Math.max(0, item.count() - lost),
              priced ? new Cost(0, price, CuttingProblem.BLANK + area) : new Cost(0, 1, area),
              takes));
    }
    return bins;
  }

  /** Whether prices lead, rather than the number of blanks. */
  boolean priced() {
    return job.stock().items().stream().anyMatch(i -> i.price() > 0);
  }

  /** A part without a return comes from a flat, or from a corner where no flat does for it. */
  private boolean takes(Stock.Item item, Part part) {
    if (item.kind() == part.kind()) {
      return StockPlanner.takes(item, part);
    }
    return item.kind() == Stock.Kind.CORNER
        && item.face().compareTo(part.face()) >= 0
        && item.thickness().equals(part.thickness())
        && job.stock().items().stream()
            .noneMatch(
                i -> StockPlanner.takes(i, part) && i.length().compareTo(part.extent()) >= 0);
  }

  private Assignment assign(CuttingProblem problem, CuttingSolver.Result r, Set<String> gone) {
    List<Deque<Integer>> waiting = new ArrayList<>();
    types.forEach(t -> waiting.add(new ArrayDeque<>()));
    for (int i = 0; i < parts.size(); i++) {
      waiting.get(typeOf.get(i)).add(i);
    }
    List<String> home = new ArrayList<>();
    parts.forEach(p -> home.add(""));
    Sequencer sequencer = new Sequencer(nesting);
    List<CutBlank> blanks = new ArrayList<>();
    Map<String, Integer> numbers = new LinkedHashMap<>();
    List<Packing.Load> loads = new ArrayList<>(r.packing().loads());
    loads.sort(
        Comparator.comparingInt((Packing.Load l) -> problem.bins().get(l.bin()).index())
            .thenComparing(l -> l.counts(), (a, b) -> java.util.Arrays.compare(b, a)));
    for (Packing.Load load : loads) {
      Stock.Item item = job.stock().items().get(problem.bins().get(load.bin()).index());
      String id;
      do {
        id = item.mark() + "#" + numbers.merge(item.mark(), 1, Integer::sum);
      } while (gone.contains(id));
      List<Integer> order = sequencer.best(load.counts());
      long[] starts = sequencer.starts(order);
      List<Cut> cuts = new ArrayList<>();
      double used = 0;
      for (int i = 0; i < starts.length; i++) {
        int node = order.get(i);
        int part = waiting.get(nesting.typeOf[node]).remove();
        home.set(part, id);
        Part p = parts.get(part);
        Length at = new Length(starts[i] * 1000).plus(job.tools().saw().cleanCut());
        cuts.add(new Cut(p.stone(), p.of(), at, p.extent(), nesting.turned[node]));
        used += p.profile().meanWidth();
      }
      blanks.add(
          new CutBlank(id, item.mark(), item.length(), cuts, item.length().minus(Length.mm(used))));
    }
    return new Assignment(blanks, home, r.packing().cost(), r.bound(), r.proved());
  }

  /**
   * No plan that places as many parts at the same price uses fewer blanks, as far as that is known.
   */
  int leastBlanks(Assignment plan) {
    if (plan.proved()) {
      return plan.blanks().size();
    }
    Cost least = plan.bound();
    return (int) (priced() ? least.second() / CuttingProblem.BLANK : least.lead());
  }

  /** What the plan takes of items made to order. */
  List<Ordered> toOrder(Assignment plan) {
    List<Ordered> out = new ArrayList<>();
    for (Stock.Item item : job.stock().items()) {
      int n = (int) plan.blanks().stream().filter(b -> b.stock().equals(item.mark())).count();
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
