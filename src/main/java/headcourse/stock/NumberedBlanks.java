package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.cutting.CuttingProblem;
import headcourse.stock.cutting.CuttingSolver;
import headcourse.stock.cutting.Packing;
import headcourse.stock.cutting.Sequencer;
import headcourse.units.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns a packing by types into crosscuts on numbered blanks. */
final class NumberedBlanks {
  private final Job job;
  private final Yard yard;
  private final CuttingProblem problem;
  private final List<String> home;
  private final Map<String, CutBlank> blanks;
  private final Set<String> unavailable;
  private final Map<Integer, Deque<Integer>> waiting = new HashMap<>();

  /**
   * @param home by crosscut: its blank; those without one get theirs here
   * @param blanks the blanks so far; new ones are added
   * @param unavailable pieces that must not be taken
   */
  NumberedBlanks(
      Job job,
      Yard yard,
      CuttingProblem problem,
      List<String> home,
      Map<String, CutBlank> blanks,
      Set<String> unavailable) {
    this.job = job;
    this.yard = yard;
    this.problem = problem;
    this.home = home;
    this.blanks = blanks;
    this.unavailable = unavailable;
    for (int i = 0; i < home.size(); i++) {
      if (home.get(i).isEmpty()) {
        waiting.computeIfAbsent(yard.type(i), t -> new ArrayDeque<>()).add(i);
      }
    }
  }

  /**
   * Adds what was packed.
   *
   * @param solved the packing, and how the parts lie
   * @param rooms off-cuts and leftovers, which come after the yard's items in the problem
   */
  void add(CuttingSolver.Result solved, List<Room> rooms) {
    Sequencer sequencer = solved.sequencer();
    List<Packing.Pattern> sorted = new ArrayList<>(solved.packing().patterns());
    sorted.sort(
        Comparator.comparingInt((Packing.Pattern p) -> problem.bins().get(p.bin()).index())
            .thenComparing(Packing.Pattern::counts, (a, b) -> Arrays.compare(b, a)));
    int[] numbers = new int[job.stock().items().size()];
    for (Packing.Pattern pattern : sorted) {
      int index = problem.bins().get(pattern.bin()).index();
      CutBlank on;
      Length from = job.tools().saw().cleanCut();
      if (index >= numbers.length) {
        Room room = rooms.get(index - numbers.length);
        on = blanks.getOrDefault(room.blank().id(), room.blank());
        from = room.at();
      } else {
        Stock.Item item = job.stock().items().get(index);
        do {
          on = yard.blank(item, item.mark() + "#" + ++numbers[index]);
        } while (unavailable.contains(on.id()));
      }
      List<Cut> cuts = new ArrayList<>(on.cuts());
      double used = cut(on.id(), pattern, sequencer, from, cuts);
      cuts.sort(Comparator.comparing(Cut::at));
      blanks.put(on.id(), on.with(cuts, on.waste().minus(Length.mm(used))));
    }
  }

  /** Lays parts side by side from a place on; gives the length that ends up in stones, mm. */
  private double cut(
      String id, Packing.Pattern pattern, Sequencer sequencer, Length from, List<Cut> cuts) {
    int[] order = sequencer.best(pattern.counts());
    long[] starts = problem.nesting().starts(order);
    double used = 0;
    for (int i = 0; i < starts.length; i++) {
      int node = order[i];
      int n = waiting.get(problem.nesting().typeOf[node]).remove();
      home.set(n, id);
      Crosscut crosscut = yard.crosscuts().get(n);
      Length at = from.plus(new Length(starts[i] * 1000));
      boolean turned = problem.nesting().turned[node];
      for (int k = 0; k < crosscut.parts().size(); k++) {
        Part p = crosscut.parts().get(k);
        cuts.add(new Cut(p.stone(), p.of(), at, crosscut.up(k), p.face(), p.extent(), turned));
      }
      used += crosscut.profile().meanWidth();
    }
    return used;
  }
}
