package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.yard.FromStock.Moved;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What differs between two plans of a pile. */
final class PileDiffs {
  private PileDiffs() {}

  /** Full marks of the stones that are there, those passed over too. */
  static Set<String> cut(List<Site> sites) {
    Set<String> cut = new TreeSet<>();
    for (Site site : sites) {
      measured(site.made(), cut);
      String mark = site.made().head().terms().opening().mark();
      for (int s = 0; s < 2; s++) {
        for (int i = 1; i <= site.on(s).there(); i++) {
          cut.add(mark + (s == 0 ? "-L" : "-R") + i);
        }
      }
    }
    return cut;
  }

  /** Full marks of the stones that were measured. */
  static Set<String> cut(PilePlan plan) {
    Set<String> cut = new TreeSet<>();
    plan.heads().forEach(h -> measured(h.made(), cut));
    return cut;
  }

  private static void measured(FittedHead head, Set<String> cut) {
    for (Fitted f : head.fitted()) {
      cut.add(f.opening() + "-" + f.stone());
    }
  }

  private static TreeMap<String, FromStock.Taken> byStone(List<FromStock.Taken> taken) {
    TreeMap<String, FromStock.Taken> of = new TreeMap<>();
    taken.forEach(t -> of.put(t.stone() + " " + t.copy(), t));
    return of;
  }

  /**
   * Stones that are cut from another piece.
   *
   * @param cut full marks of stones that are cut
   */
  static List<Moved> moved(
      List<FromStock.Taken> before, List<FromStock.Taken> after, Set<String> cut) {
    TreeMap<String, FromStock.Taken> now = byStone(after);
    List<Moved> out = new ArrayList<>();
    for (FromStock.Taken t : before) {
      FromStock.Taken n = now.get(t.stone() + " " + t.copy());
      // What is no stone any more stands among the stones that changed; a key may be ordered.
      boolean ordered = t.stone().endsWith("-K") && !cut.contains(t.stone());
      String to = n != null ? n.piece() : ordered ? "" : t.piece();
      if (!to.equals(t.piece())) {
        out.add(new Moved(t.stone(), t.piece(), to));
      }
    }
    return out;
  }

  /** How many stones, copies counted, have another size or piece, are new, or are gone. */
  static int count(List<FromStock.Taken> before, List<FromStock.Taken> after, Set<String> cut) {
    TreeMap<String, FromStock.Taken> was = byStone(before);
    TreeMap<String, FromStock.Taken> now = byStone(after);
    Set<String> all = new TreeSet<>(was.keySet());
    all.addAll(now.keySet());
    int n = 0;
    for (String key : all) {
      FromStock.Taken a = was.get(key);
      FromStock.Taken b = now.get(key);
      String stone = a == null ? b.stone() : a.stone();
      n += cut.contains(stone) || a != null && a.equals(b) ? 0 : 1;
    }
    return n;
  }
}
