package headcourse.stock;

import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.Moved;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts on numbered blanks.
 *
 * @param blanks the blanks used
 * @param home by part: id of its blank, or empty where it has none
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

  /** Numbers of the parts without a blank. */
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
  static List<Moved> changes(List<Part> parts, Assignment before, Assignment after) {
    List<Moved> out = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (!before.home.get(i).equals(after.home.get(i))) {
        Part p = parts.get(i);
        out.add(new Moved(p.stone(), p.of(), before.home.get(i), after.home.get(i)));
      }
    }
    return out;
  }
}
