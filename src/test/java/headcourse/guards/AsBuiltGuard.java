package headcourse.guards;

import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Report;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.Tape;
import headcourse.work.WorkUp;
import java.util.EnumMap;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stones that were fitted change in a head, held against the same job drawn as if none had
 * been.
 */
final class AsBuiltGuard {
  private static final Pattern STAND = Pattern.compile("(.*) farther (out|in)");

  private AsBuiltGuard() {}

  static void hold(Printed p) {
    if (p.job.report().fitted().isEmpty()) {
      return;
    }
    Job drawn = p.job.withReport(new Report(List.of(), p.job.report().cut(), List.of()));
    String layout = LayoutJson.write(WorkUp.of(drawn).value().orElseThrow());
    Printed before = new Printed(drawn, layout, new EnumMap<>(Bundle.class));
    for (Part sheet : p.sheets(Bundle.WALL)) {
      if (!sheet.alt().equals("Setting sheet")) {
        continue;
      }
      String opening = sheet.kids().get(0).texts().get(0).text();
      for (Part table : sheet.kids()) {
        if (table.type().equals("Table") && table.rows().get(0).contains("stand")) {
          for (List<String> row : table.rows().subList(1, table.rows().size())) {
            for (String own : row.get(0).split(", ")) {
              row(p, before, opening + "-" + own, row);
            }
          }
        }
      }
    }
  }

  private static void row(Printed p, Printed before, String mark, List<String> row) {
    Matcher m = STAND.matcher(row.get(3));
    if (!m.matches()) {
      return;
    }
    Stone now = p.stone(mark);
    Stone was = before.stone(mark);
    if (!now.plain() || !was.plain()) {
      return;
    }
    boolean left = now.side().equals("left");
    double out = Math.abs(now.foot(left, 0)) - Math.abs(was.foot(left, 0));
    double said = Tape.mm(m.group(1)) * (m.group(2).equals("out") ? 1 : -1);
    p.near("setting sheet, " + mark + " stands farther out", said, out, 2 * p.half());
    if (!row.get(2).isEmpty()) {
      p.near(
          "setting sheet, " + mark + " before",
          Tape.all(row.get(2), p.inch).get(0),
          was.json().number("bottomMm"),
          p.half());
    }
  }
}
