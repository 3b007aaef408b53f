package headcourse.sheet;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.rules.AsMadeRule;
import headcourse.rules.Finding;

/** Says on a sheet what of a head is made otherwise than the job asks. */
public final class AsMadeNotes {
  private AsMadeNotes() {}

  /** A paragraph for each; none where all is as asked. */
  public static void write(
      SheetFlow flow, SheetContext context, HeadWork head, Lettering lettering) {
    String opening = head.layout().opening().mark();
    for (Finding f : context.work().findings()) {
      if (f.rule().equals(AsMadeRule.NAME) && opening.equals(f.opening())) {
        flow.paragraph(f.message(), lettering);
      }
    }
  }
}
