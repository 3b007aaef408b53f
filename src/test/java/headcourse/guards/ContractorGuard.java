package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.job.Wall;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The schedule, the sections, and the table of changes. */
final class ContractorGuard {
  private static final String L = "(\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?(?: mm)?)";
  private static final Pattern KEY =
      Pattern.compile(
          L
              + " wide at the foot, "
              + L
              + " at the top(?:; "
              + L
              + " up, "
              + L
              + " down, "
              + L
              + " proud)?");

  private final Printed p;

  private ContractorGuard(Printed p) {
    this.p = p;
  }

  static void hold(Printed p) {
    ContractorGuard g = new ContractorGuard(p);
    for (Part t : p.all(Bundle.CONTRACTOR, "Table")) {
      List<List<String>> rows = t.rows();
      for (List<String> row : rows.subList(1, rows.size())) {
        if (rows.get(0).get(0).equals("mark") && rows.get(0).contains("clear width")) {
          g.schedule(rows.get(0), row);
        } else if (rows.get(0).get(0).equals("no.") && rows.get(0).contains("stone")) {
          g.change(row);
        }
      }
    }
    for (Part f : p.all(Bundle.CONTRACTOR, "Figure")) {
      if (f.alt().startsWith("Section through the head: ")) {
        g.head(f);
      }
      if (f.alt().startsWith("Section through the head: ") || f.alt().startsWith("Plan section")) {
        g.named(f);
      }
    }
  }

  private void schedule(List<String> head, List<String> row) {
    Json o = p.opening(row.get(0));
    String name = "schedule, " + row.get(0);
    List<Stone> stones = p.stones(row.get(0));
    p.length(name + ", clear width", row.get(head.indexOf("clear width")), o.number("widthMm"));
    p.same(name + ", count", row.get(2), "" + o.whole("count"));
    bearings(name, o, Tape.all(row.get(head.indexOf("on the wall, left and right")), p.inch));
    double height = o.get("head").number("heightMm");
    p.near(
        name + ", head",
        Tape.all(row.get(head.indexOf("head")).replaceFirst("^.*, ", ""), p.inch).get(0),
        height,
        p.half());
    stones.stream()
        .filter(s -> s.json().text("role").equals("key"))
        .findFirst()
        .ifPresent(k -> key(name + ", key", k, row.get(head.indexOf("key")), height, p.curved(o)));
    List<Double> widths =
        stones.stream()
            .filter(s -> !s.json().text("role").equals("key"))
            .map(s -> s.json().number("bottomMm"))
            .sorted()
            .toList();
    String of = row.get(head.indexOf("stones"));
    p.same(name + ", stones", of.split("[ ,]")[0], "" + widths.size());
    List<Double> said = Tape.all(of.substring(of.indexOf(' ')), p.inch);
    p.near(name + ", least stone", said.get(0), widths.get(0), p.half());
    p.near(
        name + ", greatest stone",
        said.get(said.size() - 1),
        widths.get(widths.size() - 1),
        p.half());
  }

  // On the soffit line, left and right; of a head whose ends lean on the top line as well.
  private void bearings(String name, Json o, List<Double> said) {
    List<String> ends = List.of("Left", "Right", "TopLeft", "TopRight");
    for (int i = 0; i < said.size(); i++) {
      String end = ends.get(p.curved(o) && said.size() == 2 ? i + 2 : i);
      p.near(
          name + ", bearing " + end, said.get(i), o.number("bearing" + end + "Mm"), 2 * p.half());
    }
    p.that(said.size() >= 2, name + ": bears on " + said);
  }

  // A key stands above the top line by its rise and below the soffit line by its drop.
  private void key(String name, Stone k, String cell, double height, boolean curved) {
    Matcher m = KEY.matcher(cell);
    p.that(m.find(), name + ": " + cell);
    p.length(name + ", foot", m.group(1), k.json().number("bottomMm"));
    p.length(name + ", top", m.group(2), k.json().number("topMm"));
    if (m.group(3) != null && k.plain() && !curved) {
      double low = k.corners().stream().mapToDouble(c -> c[1]).min().orElseThrow();
      double high = k.corners().stream().mapToDouble(c -> c[1]).max().orElseThrow();
      p.length(name + ", up", m.group(3), high - height);
      p.length(name + ", down", m.group(4), -low);
      p.length(name + ", proud", m.group(5), k.json().number("proudMm"));
    }
  }

  private void change(List<String> row) {
    if (!p.layout.has("changes")) {
      return;
    }
    for (Json c : p.layout.list("changes")) {
      if (!row.get(0).equals("" + c.whole("number")) || !c.text("kind").equals("changed")) {
        continue;
      }
      String[] said = row.get(3).split("; ");
      List<Json> all = c.list("differences");
      p.same("changes, " + row.get(0), said.length, all.size());
      for (int i = 0; i < Math.min(said.length, all.size()); i++) {
        String[] sides = said[i].split(" → ");
        value(row.get(0) + " before", sides[0], all.get(i).list("before"));
        value(row.get(0) + " after", sides[1], all.get(i).list("after"));
      }
    }
  }

  private void value(String what, String said, List<Json> values) {
    if (values.size() == 1 && values.get(0).value() instanceof Number && !said.contains("°")) {
      List<Double> lengths = Tape.all(said, p.inch);
      if (!lengths.isEmpty() && (said.contains("\"") || said.contains(" mm"))) {
        p.near(
            "changes, " + what, lengths.get(lengths.size() - 1), values.get(0).number(), p.half());
      }
    }
  }

  private Map<String, Double> layers() {
    Wall w = p.job.wall();
    Map<String, Double> all = new TreeMap<>();
    all.put("Stone", p.job.stone().thickness().mm());
    all.put("Setting bed", w.bed().mm());
    all.put("Scratch coat on lath", w.scratch().mm());
    all.put("Sheathing", w.sheathing().thickness().mm());
    return all;
  }

  // Over the cut the thicknesses stand in the order of the layers, face first.
  private void head(Part figure) {
    Wall w = p.job.wall();
    List<Double> wanted =
        Stream.of(
                p.job.stone().thickness(),
                w.bed(),
                w.scratch(),
                w.sheathing().thickness(),
                w.framing())
            .map(l -> l.mm())
            .filter(l -> l > 0)
            .toList();
    List<Run> turned =
        figure.runs().stream()
            .filter(r -> Math.abs(r.degrees() - 90) < 1 && Tape.isLength(r.text(), p.inch))
            .toList();
    double high = turned.stream().mapToDouble(Run::y).max().orElseThrow();
    List<Run> over =
        turned.stream()
            .filter(r -> r.y() > high - 8)
            .sorted(Comparator.comparingDouble(Run::x))
            .toList();
    for (int i = 0; i < Math.min(over.size(), wanted.size()); i++) {
      p.length(figure.alt() + ", layer " + (i + 1), over.get(i).text(), wanted.get(i));
    }
    p.same(figure.alt() + ", layers", over.size(), wanted.size());
    p.length(figure.alt() + ", depth of the return", depth(figure), returned(figure));
  }

  private String depth(Part figure) {
    Matcher m = Pattern.compile("Return " + L + " deep").matcher(figure.text());
    return m.find() ? m.group(1) : p.inch ? "0\"" : "0 mm";
  }

  private double returned(Part figure) {
    String opening = figure.alt().substring("Section through the head: ".length()).split(", ")[0];
    List<Stone> stones = p.stones(opening);
    double deep =
        stones.stream()
            .filter(s -> !s.json().text("role").equals("key") || stones.size() == 1)
            .mapToDouble(s -> s.json().number("returnMm"))
            .max()
            .orElse(0);
    return deep > p.job.stone().thickness().mm() ? deep : 0;
  }

  // What a leader's foot lies in is what its words say: nearer the face the lower the layer.
  private void named(Part figure) {
    String text = figure.text();
    Map<String, Double> at = new TreeMap<>();
    layers()
        .forEach(
            (layer, mm) -> {
              Matcher m =
                  Pattern.compile("(?<![a-z] )" + layer + " " + L + "(?:[:,]|$| [A-Z])")
                      .matcher(text);
              if (m.find()) {
                p.near(
                    figure.alt() + ", " + layer, Tape.all(m.group(1), p.inch).get(0), mm, p.half());
              }
              figure.runs().stream()
                  // In a narrow column the thickness stands in the next line.
                  .filter(r -> r.text().matches(layer + "( .*)?"))
                  .filter(r -> !r.text().matches("Stone (turned|stops).*"))
                  .findFirst()
                  .ifPresent(r -> at.put(layer, r.y()));
            });
    List<String> down =
        at.keySet().stream().sorted(Comparator.comparingDouble(k -> -at.get(k))).toList();
    List<String> order = List.of("Sheathing", "Scratch coat on lath", "Setting bed", "Stone");
    p.same(
        figure.alt() + ", names from the wall to the face",
        down,
        order.stream().filter(at::containsKey).toList());
    p.same(
        figure.alt() + ", layers named",
        at.size(),
        (int) layers().values().stream().filter(mm -> mm > 0).count());
  }
}
