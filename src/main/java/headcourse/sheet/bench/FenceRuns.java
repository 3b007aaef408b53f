package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SawSettings;
import headcourse.drawing.Mark.Align;
import headcourse.sheet.MarkRuns;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The runs of stones that one setting of the fence cuts, each with a line for its first stone. */
final class FenceRuns {
  /** A line to write on, with room for the pencil above it, and a box to tick. */
  private static final String BLANK = "\n__________";

  private static final String BOX = "\n☐";

  private final SheetContext c;

  FenceRuns(SheetContext c) {
    this.c = c;
  }

  /** Whether they stand on the cutting plan: where the index would take a page more for them. */
  static boolean onPlan(SheetContext context) {
    // Index and plan must answer alike, whichever of them begins on a page with something on it.
    SheetContext c = context.beginning(0);
    if (new FenceRuns(c).rows().isEmpty()
        || IndexSheet.pages(c, true).size() == IndexSheet.pages(c, false).size()) {
      return false;
    }
    int plan = CuttingPlanSheet.pages(c, false).size();
    return plan > 0 && CuttingPlanSheet.pages(c, true).size() == plan;
  }

  List<Column> columns() {
    return List.of(
        new Column(c.say("plan.fence-stones"), 5, Align.START, true),
        new Column(c.say("plan.fence-count"), 1.2, Align.END, false),
        new Column(c.say("plan.fence-wide"), 2, Align.END, true),
        new Column(c.say("plan.fence-measured"), 2.4, Align.MIDDLE, false),
        new Column(c.say("plan.fence-right"), 2, Align.MIDDLE, false));
  }

  /** Runs of two stones and more; a stone that is cut by itself has nothing to correct for. */
  List<List<String>> rows() {
    SawSettings settings = new SawSettings();
    Map<Integer, List<Piece>> runs = new TreeMap<>();
    Map<Integer, Integer> counts = new TreeMap<>();
    for (HeadWork head : c.work().heads()) {
      for (Piece p : head.inSettingOrder()) {
        int setting = settings.of(p.stone());
        if (setting >= 0) {
          runs.computeIfAbsent(setting, k -> new ArrayList<>()).add(p);
          counts.merge(setting, head.layout().opening().count(), Integer::sum);
        }
      }
    }
    List<List<String>> rows = new ArrayList<>();
    runs.forEach(
        (setting, pieces) -> {
          if (counts.get(setting) > 1) {
            rows.add(
                List.of(
                    MarkRuns.full(pieces),
                    Integer.toString(counts.get(setting)),
                    c.format().tape(pieces.get(0).stone().bottom()),
                    BLANK,
                    BOX));
          }
        });
    return rows;
  }
}
