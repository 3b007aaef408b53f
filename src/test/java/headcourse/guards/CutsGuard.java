package headcourse.guards;

import headcourse.job.Answers;
import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A section is on the sheet that its mark sends to, and says the sheet that the mark is on; and
 * what the questions say of loads and screws.
 */
final class CutsGuard {
  private static final Pattern CODE = Pattern.compile("Z\\.(\\d+)");
  private static final Pattern LETTER = Pattern.compile("[A-Z]{1,2}");
  private static final double KG_PER_LB = 0.45359237;

  /** Wet mortar, kg/m³: 130 lb/ft³, from memory. */
  private static final double MORTAR = 130 * KG_PER_LB / Math.pow(0.3048, 3);

  private final Printed p;
  private final List<Part> sheets;

  private CutsGuard(Printed p) {
    this.p = p;
    this.sheets = p.sheets(Bundle.CONTRACTOR);
  }

  static void hold(Printed p) {
    CutsGuard g = new CutsGuard(p);
    int marks = 0;
    for (Part sheet : g.sheets) {
      marks += g.marks(sheet);
    }
    p.that(marks >= p.job.openings().size(), "only " + marks + " marks of sections");
    for (Part t : p.all(Bundle.CONTRACTOR, "Table")) {
      List<List<String>> rows = t.rows();
      if (rows.get(0).contains("question")) {
        g.questions(rows);
      }
    }
  }

  // A letter with a code right under it, on an elevation.
  private int marks(Part sheet) {
    int found = 0;
    int here = sheets.indexOf(sheet);
    List<Run> all = new ArrayList<>(sheet.texts());
    for (Run letter : all) {
      if (!LETTER.matcher(letter.text()).matches()) {
        continue;
      }
      for (Run code : all) {
        Matcher m = CODE.matcher(code.text());
        if (m.matches()
            && Math.abs(code.middleX() - letter.middleX()) < 1
            && letter.y() > code.y()
            && letter.y() - code.y() < 6) {
          found++;
          int page = Integer.parseInt(m.group(1)) - 1;
          there(letter.text(), page, here);
        }
      }
    }
    return found;
  }

  private void there(String letter, int page, int from) {
    List<Run> texts = page < sheets.size() ? sheets.get(page).texts() : List.of();
    List<Run> titles = texts.stream().filter(r -> r.text().startsWith(letter + " · ")).toList();
    p.same("section " + letter + " on sheet " + (page + 1), titles.size(), 1);
    for (Run title : titles) {
      // Under its title it says where it is cut.
      String under =
          texts.stream()
              .filter(r -> r.y() < title.y() && title.y() - r.y() < 40)
              .filter(r -> Math.abs(r.x() - title.x()) < 1)
              .map(Run::text)
              .collect(Collectors.joining(" "));
      Matcher m = Pattern.compile("cut on ((?:Z\\.\\d+(?:, )?)+)").matcher(under);
      boolean said = m.find() && List.of(m.group(1).split(", ")).contains("Z." + (from + 1));
      p.that(said, "section " + letter + " is cut on Z." + (from + 1) + ", says: " + under);
    }
  }

  private void questions(List<List<String>> rows) {
    String number = "";
    for (List<String> row : rows.subList(1, rows.size())) {
      number = row.get(0).isEmpty() ? number : row.get(0);
      for (String mark : row.get(2).split(", ")) {
        Opening o =
            p.job.openings().stream().filter(x -> x.mark().equals(mark)).findFirst().orElseThrow();
        row(number, row.get(3), row.get(4), o);
      }
    }
  }

  private void row(String number, String answer, String until, Opening o) {
    Answers a = p.job.info().contract().of(o);
    String name = "question " + number + ", " + o.mark();
    long screws =
        p.stones(o.mark()).stream()
            .flatMap(s -> s.json().list("notches").stream())
            .filter(n -> n.number("screwMm") > 0)
            .count();
    switch (number) {
      case "1" -> p.same(name, answer.startsWith("OPEN"), a.lintel().name().isEmpty());
      case "2" -> {
        if (a.lintel().bearing() != null) {
          double said = Tape.all(answer, p.inch).get(0);
          p.near(name, said, a.lintel().bearing().mm(), p.half());
        }
      }
      case "6" -> {
        Answers.Flashing f = a.flashing();
        if (f != null) {
          List<Double> said = Tape.all(answer.replaceFirst(":.*", ""), p.inch);
          p.near(name + ", from", said.get(0), f.from().mm(), p.half());
          p.near(name + ", to", said.get(1), f.to().mm(), p.half());
          p.that(answer.contains(" of " + screws + " screws"), name + ": " + answer);
        } else {
          p.that(until.contains(" " + screws + " screws"), name + ": " + until);
        }
      }
      case "7" -> p.that((answer + until).contains("" + screws), name + ": " + answer + until);
      case "9" -> load(name, until.isEmpty() ? answer : until, o, a);
      default -> {}
    }
  }

  // All stone of the head and the mortar behind its faces, over its whole length.
  private void load(String name, String said, Opening o, Answers a) {
    Matcher m = Pattern.compile("([\\d.]+) (?:lb/ft|kg/m)").matcher(said);
    List<Double> figures = new ArrayList<>();
    while (m.find()) {
      figures.add(Double.parseDouble(m.group(1)));
    }
    boolean given = !Double.isNaN(a.lintel().allows());
    p.same(name + ", figures", figures.size(), given ? 2 : 1);
    double kg = 0;
    for (Stone s : p.stones(o.mark())) {
      Json j = s.json();
      double behind = p.job.wall().bed().mm() + p.job.wall().scratch().mm();
      double over = j.number("returnMm") * j.number("bottomMm") * p.job.wall().bed().mm();
      kg += j.number("massKg") + (j.number("areaM2") * behind / 1000 + over / 1e9) * MORTAR;
      if (j.number("returnMm") == 0) {
        kg += j.list("soffitPieces").stream().mapToDouble(x -> x.number("massKg")).sum();
      }
    }
    Json head = p.opening(o.mark());
    double over =
        head.number("widthMm") + head.number("bearingLeftMm") + head.number("bearingRightMm");
    double unit = p.inch ? KG_PER_LB / 0.3048 : 1;
    double each = kg / over * 1000 / unit;
    // The head's own load is the last figure; joints and a proud key's thicker bed are not in this
    // sum.
    double printed = figures.get(figures.size() - 1);
    p.near(name + ", load", printed, each, 0.12 * each);
    if (given) {
      p.near(name + ", allows", figures.get(0), a.lintel().allows() / unit, 0.06);
      p.same(name, said.contains("LESS"), a.lintel().allows() / unit < printed);
    }
  }
}
