package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.Tape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Tickets: every size by where it stands about the stone, every setting by its edge. */
final class TicketGuard {
  /** From the stone inwards. */
  private static final List<String> LAYERS = List.of("bed", "scratch", "sheathing");

  private static final String EDGE =
      "(both edges|key edge|crown edge|centre edge|outer edge|left edge|right edge|top|soffit)";
  private static final Pattern RAKE =
      Pattern.compile(
          EDGE
              + " (square(?!, butts)|([0-9.]+)°: (\\S+(?: \\S+)?) in (\\S+(?: \\S+)?),"
              + " long edge at the (top|foot))");
  private static final Pattern PASS =
      Pattern.compile(
          "(\\d) " + EDGE + " (to the template|square|fence ([0-9.]+)°|tilt ([0-9.]+)°)");
  private static final Pattern CUT =
      Pattern.compile(
          "([0-9.]+)° to the wall, plunge (\\S+(?: \\S+)?), cover (\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?)");
  private static final Pattern SCREW =
      Pattern.compile(
          "(\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?(?: mm)?): holds (\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?(?: mm)?) in the");
  private static final Pattern AT = Pattern.compile(EDGE + " ([^,]*?)(?:,| up)");

  private final Printed p;
  private final String mark;
  private final Stone stone;
  private final List<Part> parts;
  private final String text;

  private TicketGuard(Printed p, List<Part> parts) {
    this.p = p;
    this.parts = parts;
    List<Run> heading = parts.get(0).texts();
    this.mark = heading.get(1).text() + "-" + heading.get(2).text();
    this.stone = p.stone(mark);
    this.text =
        parts.stream().map(Part::text).filter(t -> !t.isEmpty()).collect(Collectors.joining(" "));
  }

  static void hold(Printed p) {
    List<List<Part>> tickets = new ArrayList<>();
    for (Part sheet : p.sheets(Bundle.BENCH)) {
      for (Part part : sheet.kids()) {
        if (part.type().equals("H2") && part.text().startsWith("OPENING ")) {
          tickets.add(new ArrayList<>());
        }
        if (!tickets.isEmpty() && sheet.alt().equals("Tickets")) {
          tickets.get(tickets.size() - 1).add(part);
        }
      }
    }
    p.that(!tickets.isEmpty(), "no tickets");
    tickets.forEach(t -> new TicketGuard(p, t).ticket());
  }

  private void ticket() {
    face(figure("Face of "));
    section(figure("Section through "));
    if (!stone.json().list("notches").isEmpty()) {
      notch();
    }
    rakes();
    saw();
    side();
  }

  private Part figure(String alt) {
    return parts.stream()
        .filter(x -> x.type().equals("Figure") && x.alt().startsWith(alt))
        .findFirst()
        .orElseThrow(() -> new AssertionError(mark + ": no " + alt));
  }

  private String name(String what) {
    return "ticket " + mark + ", " + what;
  }

  private void face(Part face) {
    Path2D outline = Shape.area(face);
    Rectangle2D box = Shape.box(outline);
    double scale = Shape.scale(text.substring(text.indexOf("FACE from outside,") + 18));
    List<double[]> drawn = Shape.corners(outline);
    double across = Shape.across(stone.corners()) * scale;
    p.near(name("scale of the face"), Shape.across(drawn), across, 0.15);
    if (stone.plain()) {
      p.that(Shape.same(drawn, stone.corners(), scale), name("its face is another, or mirrored"));
    }
    boolean v = stone.json().number("vDepthMm") > 0;
    for (Run r : face.runs()) {
      if (!Tape.isLength(r.text(), p.inch)) {
        continue;
      }
      double x = r.middleX() - Math.sin(Math.toRadians(r.degrees()));
      double y = r.middleY() + Math.cos(Math.toRadians(r.degrees()));
      boolean level = Math.abs(r.degrees()) < 1;
      // A size with a leader is level: that of an edge may then lie above or below, but beside it.
      boolean right = x > box.getMaxX();
      if (level && (right || x < box.getMinX())) {
        double edge = right ? stone.distance(1, 2) : stone.distance(0, 3);
        if (!stone.plain() || Math.abs(Tape.mm(r.text()) - edge) < 1) {
          continue;
        }
      }
      if (outline.contains(x, y) && !level && Math.abs(r.degrees()) < 89.9) {
        diagonal(face, r, scale);
      } else if (y > box.getMaxY() && level) {
        p.length(name("top"), r.text(), stone.json().number("topMm"));
      } else if (y < box.getMinY() && level && !v) {
        p.length(name("bottom"), r.text(), stone.json().number("bottomMm"));
      } else if (!level && !outline.contains(x, y) && stone.plain()) {
        boolean left = x < box.getCenterX();
        double edge = left ? stone.distance(0, 3) : stone.distance(1, 2);
        p.length(name(left ? "left edge" : "right edge"), r.text(), edge);
      }
    }
    slots(face, outline);
  }

  // A size is written along its diagonal; in a stone that leans far both may rise as they are read.
  private void diagonal(Part face, Run r, double scale) {
    if (!stone.plain()) {
      double along =
          face.paths().stream()
              .map(Shape::corners)
              .filter(c -> c.size() == 2 && parallel(c, r.degrees()))
              .mapToDouble(c -> Shape.across(c))
              .max()
              .orElse(0);
      p.length(name("diagonal"), r.text(), along / scale, p.half() + 0.1);
      return;
    }
    int way = off(r.degrees(), 0, 2) < off(r.degrees(), 1, 3) ? 0 : 1;
    String what = name(way == 0 ? "rising diagonal" : "falling diagonal");
    p.length(what, r.text(), stone.json().list("diagonalsMm").get(way).number());
  }

  private static boolean parallel(List<double[]> line, double degrees) {
    double[] a = line.get(0);
    double[] b = line.get(1);
    double off = degrees - Math.toDegrees(Math.atan2(b[1] - a[1], b[0] - a[0]));
    return Math.abs(Math.IEEEremainder(off, 180)) < 0.5;
  }

  private double off(double degrees, int from, int to) {
    double[] a = stone.corner(from);
    double[] b = stone.corner(to);
    double off = degrees - Math.toDegrees(Math.atan2(b[1] - a[1], b[0] - a[0]));
    return Math.abs(Math.IEEEremainder(off, 180));
  }

  // A slot is drawn as an open V on its edge, its point into the stone.
  private void slots(Part face, Path2D outline) {
    List<Boolean> wanted = new ArrayList<>();
    for (Json n : stone.json().list("notches")) {
      Boolean left = stone.left(n.text("edge"));
      if (left != null) {
        wanted.add(left);
      }
    }
    List<Boolean> drawn = new ArrayList<>();
    for (Path2D path : face.paths()) {
      List<double[]> c = Shape.corners(path);
      if (c.size() == 3
          && Math.abs(c.get(0)[0] - c.get(2)[0]) < 0.01
          && Math.abs(Math.abs(c.get(0)[1] - c.get(2)[1]) - 2.4) < 0.01) {
        boolean left = c.get(1)[0] > c.get(0)[0];
        drawn.add(left);
        p.that(
            outline.contains(c.get(0)[0] + (left ? 0.6 : -0.6), c.get(1)[1])
                && !outline.contains(c.get(0)[0] - (left ? 0.9 : -0.9), c.get(1)[1]),
            name("a slot is drawn away from its edge"));
      }
    }
    wanted.sort(Comparator.naturalOrder());
    drawn.sort(Comparator.naturalOrder());
    if (wanted.size() == stone.json().list("notches").size()) {
      p.same(name("slots on the left and right edge"), drawn, wanted);
    }
  }

  private void section(Part section) {
    Rectangle2D box = Shape.box(Shape.area(section));
    double back = stone.json().number("returnMm");
    for (Run r : section.runs()) {
      if (!Tape.isLength(r.text(), p.inch) || Math.abs(r.degrees()) > 1) {
        continue;
      }
      if (r.y() > box.getMaxY()) {
        p.length(name("thickness"), r.text(), stone.json().number("thicknessMm"));
      } else if (r.y() < box.getMinY() && back > 0) {
        p.length(name("return"), r.text(), back);
      }
    }
    Matcher m = Pattern.compile("cut the return away (\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?) ").matcher(text);
    double relief = stone.json().number("reliefMm");
    if (back > 0 && m.find()) {
      p.length(name("relief"), m.group(1), relief);
    } else if (back > 0) {
      p.that(relief == 0, name("its relief is not said"));
    }
  }

  private void notch() {
    Json n = stone.json().list("notches").get(0);
    slotPictures();
    Matcher cut = CUT.matcher(text);
    p.that(cut.find(), name("no words for its slot"));
    p.near(name("slant"), Double.parseDouble(cut.group(1)), n.number("slantDeg"), 0.051);
    p.length(name("plunge"), cut.group(2), n.number("plungeMm"));
    p.length(name("cover"), cut.group(3).replaceAll("[^\"⁄⁰-₉0-9 ¹²³]+$", ""), n.number("coverMm"));
    if (n.has("screwMm")) {
      Matcher screw = SCREW.matcher(text);
      p.that(screw.find(), name("no words for its screw"));
      p.length(name("screw"), screw.group(1), n.number("screwMm"));
      double deep = n.number("penetrationMm");
      double tick = p.layout.number("gridMm");
      p.length(name("hold"), screw.group(2), deep - tick / 2, tick / 2 + 0.02);
    }
    places();
  }

  // The picture of an edge is a picture of that edge: its sizes stand outside it.
  private void slotPictures() {
    List<Part> figures =
        parts.stream()
            .filter(x -> x.type().equals("Figure") && x.alt().startsWith("Notch"))
            .toList();
    Map<Boolean, Json> slots = new TreeMap<>();
    for (Json n : stone.json().list("notches")) {
      slots.putIfAbsent(stone.left(n.text("edge")), n);
    }
    TreeSet<Boolean> seen = new TreeSet<>();
    for (Part figure : figures) {
      boolean both = figure.alt().contains("both edges");
      List<Path2D> bodies =
          figure.paths().stream()
              .filter(x -> Shape.corners(x).size() > 3)
              .limit(both ? 2 : 1)
              .toList();
      double from = bodies.stream().mapToDouble(x -> Shape.box(x).getMinX()).min().orElseThrow();
      double to = bodies.stream().mapToDouble(x -> Shape.box(x).getMaxX()).max().orElseThrow();
      double low = bodies.stream().mapToDouble(x -> Shape.box(x).getMinY()).min().orElseThrow();
      for (int i = 0; i < figure.runs().size(); i++) {
        Run r = figure.runs().get(i);
        if (!Tape.isLength(r.text(), p.inch)
            || i > 0 && LAYERS.contains(figure.runs().get(i - 1).text())) {
          continue;
        }
        boolean left = r.middleX() < (from + to) / 2;
        seen.add(left);
        p.that(slots.containsKey(left), name("a slot is pictured at an edge without one"));
        Json n = slots.getOrDefault(left, slots.values().iterator().next());
        boolean mouth = r.y() > low;
        p.length(name(mouth ? "mouth" : "run"), r.text(), n.number(mouth ? "mouthMm" : "runMm"));
        p.that(!mouth || r.middleX() < from || r.middleX() > to, name("a mouth is inside"));
      }
      if (both) {
        seen.addAll(slots.keySet());
      }
      layers(figure);
    }
    p.same(name("edges with a slot pictured"), seen, new TreeSet<>(slots.keySet()));
    if (slots.size() == 1) {
      String side = slots.containsKey(true) ? "left" : "right";
      p.that(
          Pattern.compile("NOTCH 1:1, [a-z]+ edge, " + side).matcher(text).find(),
          name("its notch is not said to be on the " + side));
    }
  }

  // From the sheathing outwards; what is said of a layer is the job's.
  private void layers(Part figure) {
    double bed = p.job.wall().bed().mm() + Math.max(0, stone.json().number("proudMm"));
    Map<String, Double> wanted = new TreeMap<>();
    wanted.put("bed", bed);
    wanted.put("scratch", p.job.wall().scratch().mm());
    wanted.put("sheathing", p.job.wall().sheathing().thickness().mm());
    Map<String, Double> heights = new TreeMap<>();
    for (int i = 0; i < figure.runs().size(); i++) {
      Run r = figure.runs().get(i);
      String word = r.text().split(" ")[0];
      if (wanted.containsKey(word)) {
        // Where there is no room beside the word its thickness stands under it.
        String thick =
            r.text().equals(word)
                ? figure.runs().get(i + 1).text()
                : r.text().substring(word.length() + 1);
        p.length(name(word), thick, wanted.get(word));
        heights.put(word, r.y());
      }
    }
    List<String> outwards =
        heights.keySet().stream().sorted(Comparator.comparingDouble(heights::get)).toList();
    p.same(name("layers"), outwards, LAYERS.stream().filter(heights::containsKey).toList());
  }

  private List<String> edges(String said) {
    return switch (said) {
      case "key edge", "centre edge", "crown edge" -> List.of("inner");
      case "outer edge" -> List.of("outer");
      case "left edge", "right edge" -> {
        String side = said.split(" ")[0];
        boolean centre = stone.side().equals("centre");
        yield List.of(centre ? side : stone.side().equals(side) ? "outer" : "inner");
      }
      case "both edges" ->
          stone.side().equals("centre") ? List.of("left", "right") : List.of("inner", "outer");
      default -> List.of(said);
    };
  }

  private void places() {
    Map<String, TreeSet<Long>> wanted = new TreeMap<>();
    for (Json n : stone.json().list("notches")) {
      wanted
          .computeIfAbsent(n.text("edge"), k -> new TreeSet<>())
          .add(Math.round(n.number("heightMm") / p.layout.number("gridMm")));
    }
    Pattern up = Pattern.compile(EDGE + " [^,;]*? up\\b");
    String before =
        parts.stream()
            .filter(x -> !x.type().equals("Figure") && up.matcher(x.text()).find())
            .map(Part::text)
            .findFirst()
            .orElse("");
    int to = before.indexOf("° to the wall");
    before = to < 0 ? before : before.substring(0, to);
    Map<String, TreeSet<Long>> said = new TreeMap<>();
    Matcher m = AT.matcher(before);
    while (m.find()) {
      for (String edge : edges(m.group(1))) {
        Tape.all(m.group(2), p.inch)
            .forEach(
                mm ->
                    said.computeIfAbsent(edge, k -> new TreeSet<>())
                        .add(Math.round(mm / p.layout.number("gridMm"))));
      }
    }
    p.same(name("slots up the edges"), said, wanted);
  }

  private void rakes() {
    if (!stone.plain()) {
      return;
    }
    int saw = text.indexOf(" SAW ");
    Matcher m = RAKE.matcher(saw < 0 ? text : text.substring(0, saw));
    int found = 0;
    while (m.find()) {
      for (String edge : edges(m.group(1))) {
        Boolean left = stone.left(edge);
        if (left == null) {
          continue;
        }
        found++;
        double[] a = stone.corner(left ? 0 : 1);
        double[] b = stone.corner(left ? 3 : 2);
        double outwards = (b[0] - a[0]) * (left ? -1 : 1);
        double degrees = Math.toDegrees(Math.atan2(outwards, b[1] - a[1]));
        if (m.group(2).equals("square")) {
          p.near(name("square " + edge), 0, degrees, 0.051);
        } else {
          int sign = m.group(6).equals("top") ? 1 : -1;
          p.near(name("rake " + edge), sign * Double.parseDouble(m.group(3)), degrees, 0.051);
          p.length(name("offset " + edge), m.group(4), Math.abs(outwards));
          p.length(name("over, " + edge), m.group(5), b[1] - a[1]);
        }
      }
    }
    p.that(found >= 2, name("rakes of " + found + " edges"));
  }

  private void saw() {
    List<Json> passes = stone.json().list("saw");
    int from = text.indexOf(" SAW ");
    if (passes.isEmpty() || from < 0) {
      return;
    }
    String words = text.substring(from);
    Matcher m = PASS.matcher(words);
    int next = 0;
    while (m.find() && next < passes.size()) {
      Json pass = passes.get(next++);
      p.same(name("number of a pass"), Integer.parseInt(m.group(1)), pass.whole("pass"));
      p.same(name("edge of a pass"), edges(m.group(2)).contains(pass.text("edge")), true);
      double fence = m.group(4) == null ? 0 : Double.parseDouble(m.group(4));
      double tilt = m.group(5) == null ? 0 : Double.parseDouble(m.group(5));
      p.near(name("fence, pass " + next), fence, Math.abs(pass.number("mitreDeg")), 0.051);
      p.near(name("tilt, pass " + next), tilt, Math.abs(pass.number("tiltDeg")), 0.051);
      p.same(
          name("template, pass " + next), m.group(3).equals("to the template"), pass.has("curved"));
      String lie = pass.text("lay").replace('-', ' ');
      p.that(words.contains(lie), name("pass " + next + " is not said to lie so: " + lie));
      picture(pass);
    }
    p.same(name("saw passes"), next, passes.size());
  }

  // A side cut through the face: which way the piece lies, and how the fence is turned.
  private void picture(Json pass) {
    Boolean left = stone.left(pass.text("edge"));
    boolean down = pass.text("lay").equals("face-down");
    if (left == null || !stone.plain() || !down && !pass.text("lay").equals("face-up")) {
      return;
    }
    List<Part> pictures =
        parts.stream()
            .filter(x -> x.type().equals("Figure"))
            .filter(x -> x.alt().startsWith("Pass " + pass.whole("pass") + ":"))
            .toList();
    p.same(name("pictures of pass " + pass.whole("pass")), pictures.size(), 1);
    List<double[]> drawn = Shape.corners(Shape.area(pictures.get(0)));
    List<double[]> lines =
        pictures.get(0).paths().stream()
            .map(Shape::corners)
            .filter(c -> c.size() == 2)
            .map(c -> new double[] {c.get(0)[0], c.get(0)[1], c.get(1)[0], c.get(1)[1]})
            .toList();
    double blade =
        lines.stream()
            .filter(l -> Math.abs(l[0] - l[2]) < 0.02)
            .max(Comparator.comparingDouble(l -> Math.abs(l[1] - l[3])))
            .orElseThrow()[0];
    String what = "picture of pass " + pass.whole("pass");
    // A soffit piece is a rectangle of its own; its ends lean with the blade.
    if (Math.abs(pass.number("tiltDeg")) > 1e-6 || !ownShape(drawn, down)) {
      p.that(
          Math.abs(pass.number("tiltDeg")) > 1e-6 || soffitPiece(drawn),
          name(what + ": another piece, or it lies otherwise"));
      return;
    }
    double middle = drawn.stream().mapToDouble(c -> c[0]).average().orElseThrow();
    p.same(name(what + ": the piece left of the blade"), middle < blade, left == down);
    double[] foot = stone.corner(left ? 0 : 1);
    double[] top = stone.corner(left ? 3 : 2);
    double lean = (top[0] - foot[0]) / (top[1] - foot[1]) * (down ? -1 : 1);
    p.that(
        lines.stream()
            .filter(l -> Math.abs(l[0] - l[2]) > 1)
            .anyMatch(l -> Math.abs((l[3] - l[1]) / (l[2] - l[0]) - lean) < 0.004),
        name(what + ": the fence is turned otherwise"));
  }

  private boolean soffitPiece(List<double[]> drawn) {
    return drawn.size() == 4
        && drawn.stream().map(c -> Math.round(c[0] * 50)).distinct().count() == 2
        && stone.json().list("soffitPieces").size() > 0;
  }

  // Edges against the clock as parts of their sum; of a piece on its face the other way round.
  private boolean ownShape(List<double[]> drawn, boolean down) {
    List<double[]> own = stone.corners();
    if (down) {
      own = own.stream().map(c -> new double[] {-c[0], c[1]}).toList();
    }
    return Shape.round(parts(Shape.edges(drawn)), parts(Shape.edges(own)), 0.004);
  }

  private static List<Double> parts(List<Double> edges) {
    double sum = edges.stream().mapToDouble(e -> e).sum();
    return edges.stream().map(e -> e / sum).toList();
  }

  private void diagonals() {
    Matcher m =
        Pattern.compile("diagonals(?:: rising ([^,]+), falling)? (\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?)")
            .matcher(text);
    p.that(m.find(), name("no diagonals"));
    List<Json> wanted = stone.json().list("diagonalsMm");
    String rising = m.group(1) == null ? m.group(2) : m.group(1);
    p.length(name("rising diagonal in words"), rising, wanted.get(0).number());
    p.length(name("falling diagonal in words"), m.group(2), wanted.get(1).number());
  }

  private void side() {
    boolean left = stone.side().equals("left");
    boolean centre = stone.side().equals("centre");
    // Stones of both sides on one ticket have an arrow each, with their marks.
    List<Run> runs = parts.stream().flatMap(x -> x.runs().stream()).toList();
    List<Run> leftwards = runs.stream().filter(r -> r.text().matches("← [LR]\\d.*")).toList();
    List<Run> rightwards = runs.stream().filter(r -> r.text().matches("[LR]\\d.* →")).toList();
    if (!leftwards.isEmpty() || !rightwards.isEmpty()) {
      p.that(
          leftwards.size() == 1
              && rightwards.size() == 1
              && leftwards.get(0).text().startsWith("← R")
              && rightwards.get(0).text().startsWith("L")
              && leftwards.get(0).x() < rightwards.get(0).x(),
          name("arrows of left and right stones"));
    } else {
      p.same(
          name("key's side to the right"),
          Pattern.compile("(?:SIDE|CROWN) →").matcher(text).find(),
          left);
      p.same(name("key's side to the left"), text.contains("← "), !left && !centre);
    }
    diagonals();
    if (stone.json().text("role").equals("end")) {
      p.that(text.contains("end stone, " + stone.side()), name("its place"));
    } else if (!centre) {
      p.that(
          text.contains("number " + stone.json().whole("index") + " " + stone.side() + " of the"),
          name("its place"));
    }
    Matcher mass = Pattern.compile("(?:mass|weight) ([0-9.]+) (lb|kg)").matcher(text);
    p.that(mass.find(), name("no mass"));
    double kg = Double.parseDouble(mass.group(1)) * (p.inch ? 0.45359237 : 1);
    p.near(name("mass"), kg, stone.json().number("massKg"), p.inch ? 0.024 : 0.051);
    Matcher order = Pattern.compile("set as no\\. (\\d+)").matcher(text);
    p.that(order.find(), name("no place in the order"));
    p.same(name("order"), Integer.parseInt(order.group(1)), stone.json().whole("setOrder"));
    Matcher height =
        Pattern.compile(" height (\\S+?(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*?)?(?: mm)?);").matcher(text);
    p.that(height.find(), name("no height"));
    p.length(name("height"), height.group(1), stone.json().number("heightMm"));
    blank();
  }

  private void blank() {
    Matcher m =
        Pattern.compile("(?<!face |soffit )from blank (\\S+) at (\\S+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]\\S*)?)")
            .matcher(text);
    if (!m.find() || m.group(1).contains("–")) {
      return;
    }
    for (Json b : p.layout.list("blanks")) {
      if (b.text("id").equals(m.group(1))) {
        p.that(
            b.list("stones").stream()
                .filter(s -> alike(p.stone(s.text("mark"))))
                .anyMatch(
                    s ->
                        Math.abs(
                                BenchGuard.low(p.stone(s.text("mark")), s)
                                    - Tape.mm(m.group(2).replaceAll("[;,]$", "")))
                            < p.half()),
            name("it does not lie there on " + m.group(1)));
      }
    }
  }

  private boolean alike(Stone o) {
    return Math.abs(o.json().number("bottomMm") - stone.json().number("bottomMm")) < 0.01
        && Math.abs(o.json().number("topMm") - stone.json().number("topMm")) < 0.01;
  }
}
