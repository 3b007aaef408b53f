package headcourse.stock;

import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.Moved;
import headcourse.stock.cutting.Cost;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Crosscuts on numbered blanks.
 *
 * @param blanks the blanks used
 * @param home by crosscut: id of its blank, empty where it has none, {@link #DONE} where it is cut
 * @param used what is cut or broken
 * @param cost what it costs
 * @param bound no assignment costs less
 * @param proved whether none is better
 */
record Assignment(
    List<CutBlank> blanks, List<String> home, Used used, Cost cost, Cost bound, boolean proved) {
  /** In place of a blank for what needs none any more. */
  static final String DONE = "cut";

  /** Copies the lists. */
  Assignment {
    blanks = List.copyOf(blanks);
    home = List.copyOf(home);
  }

  /** Numbers of the crosscuts without a blank. */
  List<Integer> missing() {
    return IntStream.range(0, home.size()).filter(i -> home.get(i).isEmpty()).boxed().toList();
  }

  /** The same parts, otherwise placed; cost and bound stay until it is filled again. */
  Assignment with(List<CutBlank> otherBlanks, List<String> otherHome, Used otherUsed) {
    return new Assignment(otherBlanks, otherHome, otherUsed, cost, bound, proved);
  }

  /** The same plan as far as another bounds it: of the same parts, without regard to tickets. */
  Assignment boundBy(Assignment fresh) {
    boolean best = fresh.proved && cost.compareTo(fresh.cost) <= 0;
    return new Assignment(blanks, home, used, cost, fresh.bound, best);
  }

  /**
   * Parts that lie on another blank than before.
   *
   * @param again crosscuts that are cut once more, wherever they lie
   */
  static List<Moved> changes(
      List<Crosscut> crosscuts, Assignment before, Assignment after, List<Integer> again) {
    List<Moved> out = new ArrayList<>();
    for (int i = 0; i < crosscuts.size(); i++) {
      if (!before.home.get(i).equals(after.home.get(i)) || again.contains(i)) {
        for (Part p : crosscuts.get(i).parts()) {
          out.add(new Moved(p.stone(), p.of(), before.home.get(i), after.home.get(i)));
        }
      }
    }
    return out;
  }
}
