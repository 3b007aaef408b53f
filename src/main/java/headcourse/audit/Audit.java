package headcourse.audit;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks over pages before they are written: measures what is drawn and reads what is lettered, and
 * holds both against the job worked out. It knows marks, not how they came about.
 */
public final class Audit {
  private Audit() {}

  /** What pages must hold; one file each. */
  interface Check {
    /** Looks at a page's figures and says what is wrong. */
    void look(Figures figures, ShopWork work, List<String> faults);
  }

  private static final List<Check> CHECKS =
      List.of(new StonesInPlace(), new FaceSizes(), new PartsOnBlanks(), new FullSize());

  /** What is wrong, each with its bundle, sheet and figure; empty where all holds. */
  public static List<String> faults(ShopWork work, PageSet set) {
    List<String> all = new ArrayList<>();
    for (Page page : set.pages()) {
      List<String> faults = new ArrayList<>();
      Figures figures = new Figures(set.bundle(), page);
      for (Check check : CHECKS) {
        check.look(figures, work, faults);
      }
      faults.forEach(f -> all.add(set.bundle().word() + ", sheet " + page.label() + ": " + f));
    }
    return all;
  }

  /** All marks under some, groups among them, in the order of painting. */
  static void flatten(List<Mark> marks, List<Mark> into) {
    for (Mark m : marks) {
      into.add(m);
      if (m instanceof Mark.Group g) {
        flatten(g.marks(), into);
      }
    }
  }
}
