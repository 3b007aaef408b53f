package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.sheet.SheetContext;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The rows of the striking-out tables. A curved head is alike on both sides, so a place and its
 * mirror image share a row.
 */
final class StrikingRows {
  private final SheetContext context;
  private final HeadLayout layout;
  private final boolean keyed;
  private final List<StrikingPoint> points;

  StrikingRows(SheetContext context, HeadWork head) {
    this.context = context;
    this.layout = head.layout();
    this.keyed = new HeadFigures(head, context.format()).keyed();
    this.points = StrikingFigure.points(layout);
  }

  /** Where the intrados begins, where its parts meet, where it ends. */
  List<StrikingPoint> points() {
    return points;
  }

  /** The foci of an ellipse, left to right or from below; none for arcs. */
  List<HeadLayout.Place> foci() {
    return layout.curve().places().stream()
        .filter(p -> p.name().equals("focus"))
        .sorted(
            Comparator.comparingDouble((HeadLayout.Place p) -> p.at().x())
                .thenComparingDouble(p -> p.at().y()))
        .toList();
  }

  /** Height of the soffit's crown above the springing line, mm. */
  double crown() {
    return points.stream().mapToDouble(p -> p.at().y()).max().orElse(0);
  }

  /** Length of an ellipse's string from nail to nail, mm: the sum of a point's focal distances. */
  double string() {
    Point springing = points.get(points.size() - 1).at();
    return foci().stream().mapToDouble(f -> f.at().distance(springing)).sum();
  }

  /** A length to the nearest step of the grid. */
  String exact(double mm) {
    return context.format().withUnit(context.format().grid().snapMm(mm));
  }

  private String out(double x) {
    return context.format().grid().snapMm(x).isZero() ? context.say("wall.on-it") : exact(x);
  }

  private String up(double y) {
    Length l = context.format().grid().snapMm(y);
    if (l.isZero()) {
      return context.say("wall.on-it");
    }
    return context.say(l.isPositive() ? "wall.up" : "wall.down", exact(Math.abs(y)));
  }

  // Off the centre line, on one side or on both.
  private String across(double x, boolean both) {
    if (context.format().grid().snapMm(x).isZero()) {
      return context.say("wall.on-it");
    }
    String key = both ? "wall.each-side" : x > 0 ? "wall.right-by" : "wall.left-by";
    return context.say(key, exact(Math.abs(x)));
  }

  /** Centres from the top down, what is struck from them. */
  List<List<String>> centres() {
    List<List<String>> rows = new ArrayList<>();
    for (HeadLayout.Centre c : layout.curve().centres()) {
      HeadLayout.Centre twin =
          layout.curve().centres().stream()
              .filter(o -> o != c && o.at().distance(c.at().mirrored()) < 1e-6)
              .filter(o -> Math.abs(c.at().x()) > 1e-6)
              .findFirst()
              .orElse(null);
      if (twin != null && c.at().x() > 0) {
        continue;
      }
      rows.add(
          List.of(
              twin == null ? c.name() : c.name() + ", " + twin.name(),
              across(c.at().x(), twin != null),
              up(c.at().y()),
              exact(c.trammel()),
              twin == null
                  ? arc(c)
                  : c.name() + ": " + arc(c) + ", " + twin.name() + ": " + arc(twin)));
    }
    return rows;
  }

  private String arc(HeadLayout.Centre c) {
    return nearest(tip(c, c.toAngle())) + "–" + nearest(tip(c, c.fromAngle()));
  }

  private static Point tip(HeadLayout.Centre c, double angle) {
    return c.at().plus(Vec.direction(angle).times(c.trammel()));
  }

  private String nearest(Point at) {
    return points.stream()
        .min(Comparator.comparingDouble(p -> p.at().distance(at)))
        .map(StrikingPoint::name)
        .orElseThrow();
  }

  /** The numbered points, from the springings to the crown. */
  List<List<String>> places() {
    List<List<String>> rows = new ArrayList<>();
    int last = points.size() - 1;
    for (int i = 0; 2 * i <= last; i++) {
      StrikingPoint p = points.get(i);
      boolean both = 2 * i < last;
      rows.add(
          List.of(
              both ? p.name() + ", " + points.get(last - i).name() : p.name(),
              across(p.at().x(), both),
              up(p.at().y())));
    }
    return rows;
  }

  /** The joints, from the crown outwards. */
  List<List<String>> joints() {
    List<List<String>> rows = new ArrayList<>();
    List<JointLine> right =
        layout.joints().stream()
            .filter(j -> j.side() == Side.RIGHT)
            .sorted(Comparator.comparingInt(JointLine::index))
            .toList();
    for (JointLine j : right) {
      rows.add(
          List.of(
              name(j),
              around(j),
              out(j.foot().x()),
              out(j.foot().y()),
              out(j.head().x()),
              out(j.head().y())));
    }
    return rows;
  }

  private String around(JointLine j) {
    return layout.curve().around().stream()
        .filter(a -> a.side() == j.side() && a.index() == j.index())
        .map(a -> out(a.distance().mm()))
        .findFirst()
        .orElse("");
  }

  // Numbers without letters, for they hold left and right.
  private String name(JointLine j) {
    if (!keyed && j.index() == 0) {
      return "1 | 1";
    }
    String inner = j.inner().startsWith("R") ? j.inner().substring(1) : j.inner();
    return inner + " | " + (j.outer().isEmpty() ? "" : j.outer().substring(1));
  }
}
