package headcourse.stock;

import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.Moved;
import headcourse.stock.cutting.Cost;
import java.util.ArrayList;
import java.util.List;

/**
 * Lots on numbered blanks.
 *
 * @param blanks the blanks used
 * @param home by lot: id of its blank, or empty where it has none
 * @param cost what it costs
 * @param bound no assignment costs less
 * @param proved whether none is better
 */
record Assignment(List<CutBlank> blanks, List<String> home, Cost cost, Cost bound, boolean proved) {
  /** Copies the lists. */
  Assignment {
    blanks = List.copyOf(blanks);
    home = List.copyOf(home);
  }

  /** Numbers of the lots without a blank. */
  List<Integer> missing() {
    List<Integer> out = new ArrayList<>();
    for (int i = 0; i < home.size(); i++) {
      if (home.get(i).isEmpty()) {
        out.add(i);
      }
    }
    return out;
  }

  /** Parts that lie on another blank than before. */
  static List<Moved> changes(List<Lot> lots, Assignment before, Assignment after) {
    List<Moved> out = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      if (!before.home.get(i).equals(after.home.get(i))) {
        for (Part p : lots.get(i).parts()) {
          out.add(new Moved(p.stone(), p.of(), before.home.get(i), after.home.get(i)));
        }
      }
    }
    return out;
  }
}
