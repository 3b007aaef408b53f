package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.Tape;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Where ends may land. For m cuts of ±τ and n dry joints that open by f, inwards m·τ at most,
 * outwards m·τ + n·f, as a rule √m·τ about n·f/2: addition of tolerances, and of variances for
 * errors that do not know of each other (any text on statistics; from memory).
 */
final class StackGuard {
  private static final Pattern LANDS =
      Pattern.compile(
          "Tried ([0-9,]+) times .*? lands in ([0-9,]+) builds with the check above, in ([0-9,]+) without");

  private final Printed p;
  private final Json opening;
  private final String name;

  private StackGuard(Printed p, Json opening) {
    this.p = p;
    this.opening = opening;
    this.name = "setting sheet " + opening.text("mark") + ", ends";
  }

  static void hold(Printed p) {
    p.openings().forEach(o -> new StackGuard(p, o).all());
  }

  private void all() {
    List<Part> sheets =
        p.sheets(Bundle.WALL).stream()
            .filter(s -> s.alt().equals("Setting sheet"))
            .filter(s -> s.kids().get(0).texts().get(0).text().equals(opening.text("mark")))
            .toList();
    for (Part sheet : sheets) {
      for (Part table : sheet.kids()) {
        if (table.type().equals("Table")) {
          List<List<String>> rows = table.rows();
          List<String> head = rows.get(0);
          for (List<String> row : rows.subList(1, rows.size())) {
            if (head.contains("end") && head.contains("likely")) {
              end(head, row);
            } else if (head.get(0).equals("after stone")) {
              drift(row);
            }
          }
        }
      }
    }
    String text = sheets.stream().map(Part::text).collect(Collectors.joining(" "));
    Matcher m = LANDS.matcher(text);
    if (opening.has("lands")) {
      Json lands = opening.get("lands");
      p.that(m.find(), name + ": how often it lands is not said");
      double builds = number(m.group(1));
      p.near(name + ", tried", builds, lands.number("builds"), 0);
      p.near(
          name + ", landed with the check",
          number(m.group(2)),
          builds * lands.number("checked"),
          0.6);
      p.near(
          name + ", landed without", number(m.group(3)), builds * lands.number("unchecked"), 0.6);
    }
  }

  private static double number(String grouped) {
    return Double.parseDouble(grouped.replace(",", ""));
  }

  private double cut() {
    return p.job.setting().cutTolerance().mm();
  }

  private double opens() {
    return p.job.setting().opens().mm();
  }

  private boolean dry() {
    return !p.job.setting().joint().isPositive();
  }

  private double one(String cell) {
    return Tape.all(cell, p.inch).get(0);
  }

  private void end(List<String> head, List<String> row) {
    boolean left = row.get(0).equals("left");
    String what = name + ", " + row.get(0);
    double in = one(row.get(head.indexOf("in at most")));
    double out = one(row.get(head.indexOf("out at most")));
    double tick = p.layout.number("gridMm") + 0.03;
    long cuts =
        p.stones(opening.text("mark")).stream()
            .filter(s -> s.side().equals("centre") || s.side().equals("left") == left)
            .filter(s -> !fitted(s))
            .count();
    long joints =
        p.stones(opening.text("mark")).stream()
            .filter(s -> s.side().equals("left") == left && !s.side().equals("centre"))
            .count();
    double most = dry() ? cuts * cut() : cuts * cut() + joints * opens();
    double far = cuts * cut() + joints * opens();
    likely(what, row.get(head.indexOf("likely")), cuts, joints);
    int drawn = head.indexOf("as drawn");
    p.near(what + ", in", in, most + tick / 2, tick / 2 + 0.03);
    if (drawn < 0) {
      p.near(what + ", out", out, far + tick / 2, tick);
      return;
    }
    double bearing = opening.number(left ? "bearingLeftMm" : "bearingRightMm");
    double said = one(row.get(drawn));
    p.near(what + ", as drawn", said, bearing, tick);
    p.near(what + ", out", out, far + tick / 2, tick);
    List<Double> between = Tape.all(row.get(head.indexOf("on the wall between")), p.inch);
    p.near(what + ", least", between.get(0), said - in, 0.01);
    p.near(what + ", greatest", between.get(1), said + out, 0.01);
  }

  private boolean fitted(Stone s) {
    return p.job.report().fitted().stream()
        .anyMatch(f -> f.opening().equals(s.opening()) && f.stone().equals(s.own()));
  }

  private void likely(String what, String cell, long cuts, long joints) {
    double quarter = p.layout.number("gridMm") / 8 + 0.03;
    double about = one(cell.substring(cell.indexOf('±')));
    double mean = cell.startsWith("+") ? one(cell) : 0;
    double spread =
        dry()
            ? Math.sqrt(cuts) * cut()
            : Math.sqrt(cuts * cut() * cut() + joints * opens() * opens());
    p.near(what + ", likely about", about, spread, quarter);
    p.near(what + ", likely mean", mean, dry() ? joints * opens() / 2 : 0, quarter);
  }

  private void drift(List<String> row) {
    String first = row.get(0).split(", ")[0];
    Stone s = p.stone(opening.text("mark") + "-" + first);
    String what = name + ", after " + first;
    boolean left = s.side().equals("left");
    long index = s.json().whole("index");
    if (s.plain()) {
      p.length(what + ", stands at", row.get(1), Math.abs(s.foot(left, 0)));
    }
    long cuts =
        p.stones(opening.text("mark")).stream()
            .filter(
                o ->
                    o.side().equals("centre")
                        || o.side().equals(s.side()) && o.json().whole("index") <= index)
            .filter(o -> !fitted(o))
            .count();
    double tick = p.layout.number("gridMm");
    double in = dry() ? cuts * cut() : cuts * cut() + index * opens();
    double out = cuts * cut() + index * opens();
    p.near(what + ", in", one(row.get(2)), in + tick / 2, tick / 2 + 0.02);
    p.near(what + ", out", one(row.get(3)), out + tick / 2, tick / 2 + 0.02);
    likely(what, row.get(4), cuts, index);
    String next = row.get(5);
    if (!next.isEmpty()) {
      Stone trimmed =
          p.stone(opening.text("mark") + "-" + next.substring(0, next.indexOf(':')).split(", ")[0]);
      double wide = trimmed.json().number("bottomMm") - one(row.get(3));
      p.near(what + ", next cut to", one(next.substring(next.indexOf(':'))), wide, p.half());
    }
  }
}
