package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.Congruent;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.MarksSaid;
import headcourse.testing.Tape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** At full size: outlines as seen from outside, strips measured from end to end. */
final class FullSizeGuard {
  private static final Pattern STRIP =
      Pattern.compile("(\\S+) strip, part (\\d+) of (\\d+)(: right half, turn over for the left)?");

  /** Before the head's end the strip goes on by this much, and parts overlap by this much, mm. */
  private static final double BEYOND = 12;

  private static final double OVERLAP = 10;

  private static final Pattern OVER = Pattern.compile("turn over for (\\S+-(?:K|[LR]\\d+).*)");

  private final Printed p;

  private FullSizeGuard(Printed p) {
    this.p = p;
  }

  static void hold(Printed p) {
    FullSizeGuard g = new FullSizeGuard(p);
    Map<String, TreeMap<Integer, Part>> strips = new TreeMap<>();
    Map<Integer, List<Run>> texts = new HashMap<>();
    for (Part sheet : p.sheets(Bundle.FULL_SIZE)) {
      sheet
          .all()
          .forEach(x -> texts.computeIfAbsent(x.page(), k -> new ArrayList<>()).addAll(x.runs()));
      sheet
          .all()
          .filter(x -> x.type().equals("Figure"))
          .forEach(
              f -> {
                Matcher m = STRIP.matcher(f.alt());
                if (m.matches()) {
                  strips
                      .computeIfAbsent(m.group(1), k -> new TreeMap<>())
                      .put(Integer.parseInt(m.group(2)), f);
                } else {
                  g.outline(f, sheet);
                }
              });
    }
    for (Json o : p.openings()) {
      TreeMap<Integer, Part> parts = strips.get(o.text("mark"));
      p.that(parts != null, "no strip of " + o.text("mark"));
      if (parts != null) {
        g.strip(o, new ArrayList<>(parts.values()), texts);
      }
    }
  }

  // A whole outline on one tile, turned or not, never mirrored.
  private void outline(Part figure, Part sheet) {
    Matcher m = Pattern.compile("^(\\S+-(?:K|[LR]\\d+))").matcher(figure.alt());
    if (!m.find()) {
      return;
    }
    Stone s = p.stone(m.group(1));
    for (Path2D path : figure.paths()) {
      List<double[]> c = Shape.corners(path);
      if (s.plain() && c.size() == 4) {
        boolean whole = Shape.round(Shape.edges(c), Shape.edges(s.corners()), 0.05);
        p.that(
            whole || c.size() == 4 && Shape.across(c) < Shape.across(s.corners()) - 0.5,
            "full size, " + s.mark() + ": another outline, or its mirror image");
        if (whole) {
          over(path, c, sheet, figure);
        }
      }
    }
  }

  // It is the outline of every stone that it names; turned over, of those that it says.
  private void over(Path2D path, List<double[]> drawn, Part sheet, Part figure) {
    Set<String> turned = new TreeSet<>();
    for (Run r : sheet.texts()) {
      Matcher m = OVER.matcher(r.text());
      if (Shape.box(path).contains(r.middleX(), r.y()) && m.matches()) {
        turned.addAll(MarksSaid.all(m.group(1)));
      }
    }
    for (String mark : MarksSaid.all(figure.alt())) {
      Stone s = p.stone(mark);
      if (!s.plain()) {
        continue;
      }
      List<double[]> own = turned.contains(mark) ? Congruent.mirrored(s.corners()) : s.corners();
      p.that(
          Shape.round(Shape.edges(drawn), Shape.edges(own), 0.05),
          "full size, page "
              + figure.page()
              + (turned.contains(mark) ? ": turned over" : ":")
              + " it is not "
              + mark);
    }
  }

  private void strip(Json o, List<Part> parts, Map<Integer, List<Run>> texts) {
    String name = "strip of " + o.text("mark");
    List<Stone> stones = p.stones(o.text("mark"));
    boolean half = parts.get(0).alt().contains("right half");
    double from =
        half
            ? -BEYOND
            : stones.stream()
                    .flatMap(s -> s.corners().stream())
                    .mapToDouble(c -> c[0])
                    .min()
                    .orElseThrow()
                - BEYOND;
    List<Double> whole = new ArrayList<>();
    List<Double> onSoffit = new ArrayList<>();
    List<Double> onTop = new ArrayList<>();
    Set<String> said = new TreeSet<>();
    double step = 0;
    for (Part part : parts) {
      List<Path2D> level =
          part.paths().stream().filter(x -> Shape.box(x).getHeight() < 0.01).toList();
      Rectangle2D low =
          Shape.box(level.get(0)).getY() < Shape.box(level.get(1)).getY()
              ? Shape.box(level.get(0))
              : Shape.box(level.get(1));
      double band = Math.abs(Shape.box(level.get(0)).getY() - Shape.box(level.get(1)).getY());
      double start = from + step;
      for (Path2D line : part.paths()) {
        Rectangle2D b = Shape.box(line);
        if (b.getWidth() < 0.01 && Math.abs(b.getHeight() - band) < 0.01) {
          whole.add(start + b.getX() - low.getX());
        }
      }
      for (Run r : texts.get(part.page())) {
        double up = r.y() - low.getY();
        if (Tape.isLength(r.text(), p.inch)
            && up > 0.5
            && up < band - 3
            && r.degrees() == 0
            && r.x() > low.getX()
            && r.x() < low.getMaxX()) {
          double at = start - low.getX() + beside(r, start - low.getX());
          p.length(name + ", mark at " + Math.round(at), r.text(), Math.abs(at), p.half() + 0.4);
          level(name, o, stones, at, up < band / 2);
          (up < band / 2 ? onSoffit : onTop).add(at);
        } else if (up > 0 && up < band && r.x() > low.getX() && r.x() < low.getMaxX()) {
          named(name, o, stones, r, start + r.middleX() - low.getX());
          said.add(r.text());
        }
      }
      step += low.getWidth() - OVERLAP;
    }
    complete(name, o, stones, half, onSoffit, onTop);
    for (Stone s : stones) {
      boolean here = !half || !s.side().equals("left");
      String mark = s.mark().substring(s.mark().indexOf('-') + 1);
      p.that(
          !here || said.contains(mark) || !s.plain() || s.distance(0, 1) < 12,
          name + ": nowhere is " + mark);
    }
    p.that(
        said.stream().anyMatch(t -> t.startsWith("jamb ")), name + ": the jamb's value is missing");
    p.that(
        !half || Math.abs(o.number("jambLeftMm") - o.number("jambRightMm")) < 0.05,
        name + ": half a strip, but the jambs differ");
    double left = half ? 0 : -o.number("jambLeftMm");
    for (double x : new double[] {0, left, o.number("jambRightMm")}) {
      p.that(
          whole.stream().anyMatch(w -> Math.abs(w - x) < 0.05),
          name + ": no line at " + x + ": " + whole);
    }
    for (double w : whole) {
      p.that(
          Math.abs(w) < 0.05
              || Math.abs(w + o.number("jambLeftMm")) < 0.05
              || Math.abs(w - o.number("jambRightMm")) < 0.05,
          name + ": a jamb at " + w);
    }
  }

  // Every joint has its figure on both lines.
  private void complete(
      String name,
      Json o,
      List<Stone> stones,
      boolean half,
      List<Double> onSoffit,
      List<Double> onTop) {
    if (!stones.stream().allMatch(Stone::plain)) {
      return;
    }
    double high = o.get("head").number("heightMm");
    for (Stone s : stones) {
      boolean right = !s.side().equals("left");
      if (half && !right) {
        continue;
      }
      double low = s.foot(!right, 0);
      double top = s.foot(!right, high);
      p.that(
          onSoffit.stream().anyMatch(x -> Math.abs(x - low) < 0.6),
          name + ": no figure on the soffit line for " + s.mark());
      p.that(
          onTop.stream().anyMatch(x -> Math.abs(x - top) < 0.6),
          name + ": no figure on the top line for " + s.mark());
    }
  }

  // A mark lies on its stone; a jamb's value beside its line.
  private void named(String name, Json o, List<Stone> stones, Run r, double at) {
    for (Stone s : stones) {
      if (s.mark().endsWith("-" + r.text()) && s.plain()) {
        p.that(
            at > s.foot(true, 0) - 0.6 && at < s.foot(false, 0) + 0.6,
            name + ": " + r.text() + " lies elsewhere");
      }
    }
    if (r.text().startsWith("jamb ")) {
      String side = at < 0 ? "jambLeftMm" : "jambRightMm";
      p.length(name + ", jamb", r.text().substring(5), o.number(side));
      double line = at < 0 ? -o.number(side) : o.number(side);
      p.that(Math.abs(at - line) < r.width() / 2 + 2, name + ": the jamb's value lies elsewhere");
    }
  }

  // A figure stands under its tick or, where there is no room, just beside it.
  private double beside(Run r, double start) {
    double best = r.middleX();
    for (double x : new double[] {r.x() - 0.8, r.x() + r.width() + 0.8}) {
      double mm = Tape.mm(r.text());
      if (Math.abs(Math.abs(start + x) - mm) < Math.abs(Math.abs(start + best) - mm)) {
        best = x;
      }
    }
    return best;
  }

  private void level(String name, Json o, List<Stone> stones, double at, boolean soffit) {
    if (!stones.stream().allMatch(Stone::plain)) {
      return;
    }
    double level = soffit ? 0 : o.get("head").number("heightMm");
    p.that(
        stones.stream()
            .anyMatch(
                s ->
                    Math.abs(s.foot(true, level) - at) < 0.6
                        || Math.abs(s.foot(false, level) - at) < 0.6),
        name + ": no joint at " + at + " on the " + (soffit ? "soffit" : "top") + " line");
  }
}
