package headcourse.audit;

import headcourse.drawing.PageSet;
import headcourse.work.ShopWork;
import java.util.List;

/** Pages that are wrong, so that they must not be printed: a fault of the program. */
public final class PrintFault extends IllegalStateException {
  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 12;

  private PrintFault(List<String> faults) {
    super(String.join("\n", faults.subList(0, Math.min(SHOWN, faults.size()))));
  }

  /**
   * The same pages.
   *
   * @throws PrintFault where they do not hold what the job worked out holds
   */
  public static PageSet unless(ShopWork work, PageSet set) {
    List<String> faults = Audit.faults(work, set);
    if (!faults.isEmpty()) {
      throw new PrintFault(faults);
    }
    return set;
  }
}
