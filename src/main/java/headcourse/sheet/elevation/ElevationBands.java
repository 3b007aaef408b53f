package headcourse.sheet.elevation;

import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.Scale;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A head, or a part of one, at a scale on paper of a width, with what goes above and below it: what
 * an elevation is of, whatever its lettering.
 *
 * @param room width of paper, mm
 * @param flat from model space to paper, the springing line at the upper edge
 * @param below running marks along the soffit of a flat head
 * @param arc running marks around the soffit of an arch; null for a flat head
 * @param above running marks along the top
 * @param chain the dimensions under the running marks
 */
record ElevationBands(
    HeadFigures figures,
    HeadPart part,
    Scale scale,
    Words words,
    double room,
    Similarity flat,
    MarkBand below,
    ArcMarks arc,
    MarkBand above,
    OpeningChain chain) {
  /** Paper beside a head, at the least, mm. */
  static final double SIDE = 3;

  /** How far a leader steps aside near a springing, mm. */
  private static final double ASIDE = 1.6;

  /** Nearer than this a leader runs along a stone, mm. */
  private static final double NEAR = 0.9;

  /** What is lower over a joint's foot counts as the foot, mm. */
  private static final double ABOVE = 1.2;

  /** A part of a head at a scale; none where it is wider than the paper. */
  static Optional<ElevationBands> of(
      HeadFigures figures, HeadPart part, Scale scale, Words words, double room) {
    double beside = (room - part.box().width() * scale.factor()) / 2;
    boolean ends = figures.endJoints().stream().anyMatch(part::holds);
    if (beside < SIDE || ends && beside < EndHeights.beside(figures, beside).depth()) {
      return Optional.empty();
    }
    double x0 = room / 2 - part.box().centre().x() * scale.factor();
    Similarity flat = Similarity.toPaper(scale.factor(), new Point(x0, 0));
    return Optional.of(
        new ElevationBands(
            figures,
            part,
            scale,
            words,
            room,
            flat,
            figures.curved()
                ? new MarkBand(List.of(), List.of(), 0, room)
                : new MarkBand(soffit(figures, part, flat), walls(figures, part, flat), 0, room),
            figures.curved() ? new ArcMarks(figures, part, flat, room) : null,
            new MarkBand(top(figures, part, flat), List.of(), 0, room),
            new OpeningChain(figures, part, words, room)));
  }

  private static List<MarkBand.Item> soffit(HeadFigures figures, HeadPart part, Similarity flat) {
    List<MarkBand.Item> items = new ArrayList<>();
    for (RunMark m : figures.soffitMarks()) {
      if (part.holds(m)) {
        Point foot = flat.apply(new Point(m.x(), m.y()));
        items.add(new MarkBand.Item(foot, foot.x(), m.text()));
      }
    }
    return items;
  }

  private static List<MarkBand.Item> top(HeadFigures figures, HeadPart part, Similarity flat) {
    List<MarkBand.Item> items = new ArrayList<>();
    for (RunMark m : figures.topMarks()) {
      if (part.holds(m)) {
        Point foot = flat.apply(new Point(m.x(), m.y()));
        // Beside a key that leans outwards the leader leaves clear of the key's corner.
        double exit = m.besideKey() ? clearOfKey(figures, flat, m.x()) : foot.x();
        boolean aside = figures.curved() && hugs(part, flat, foot, Math.signum(m.x()));
        exit = aside ? foot.x() + Math.signum(m.x()) * ASIDE : exit;
        items.add(new MarkBand.Item(foot, exit, m.text(), aside));
      }
    }
    return items;
  }

  // Near a springing the back rises so steeply that a leader would run along it.
  private static boolean hugs(HeadPart part, Similarity flat, Point foot, double side) {
    double nearest = Double.NEGATIVE_INFINITY;
    for (PlacedStone s : part.stones()) {
      for (Point p : s.outline().transformed(flat).vertices(0.05)) {
        if (p.y() < foot.y() - ABOVE) {
          nearest = Math.max(nearest, side * (p.x() - foot.x()));
        }
      }
    }
    return Math.abs(nearest) < NEAR;
  }

  private static double clearOfKey(HeadFigures figures, Similarity flat, double x) {
    double foot = flat.apply(new Point(x, 0)).x();
    if (figures.curved()) {
      return foot;
    }
    Box key =
        figures.layout().stones().stream()
            .filter(s -> s.role() == headcourse.layout.Role.KEY)
            .findFirst()
            .map(s -> s.outline().bounds())
            .orElseThrow();
    if (key.maxY() <= figures.layout().opening().head().height().mm()) {
      return foot;
    }
    double edge = flat.apply(new Point(x < 0 ? key.minX() : key.maxX(), 0)).x();
    return x < 0 ? Math.min(foot, edge - 1) : Math.max(foot, edge + 1);
  }

  private static List<MarkBand.Wall> walls(HeadFigures figures, HeadPart part, Similarity flat) {
    List<MarkBand.Wall> walls = new ArrayList<>();
    wall(walls, part, flat, -figures.jamb(Side.LEFT), true, false);
    wall(walls, part, flat, 0, true, true);
    wall(walls, part, flat, figures.jamb(Side.RIGHT), false, false);
    return walls;
  }

  private static void wall(
      List<MarkBand.Wall> walls,
      HeadPart part,
      Similarity flat,
      double x,
      boolean left,
      boolean nought) {
    if (part.holds(x)) {
      walls.add(new MarkBand.Wall(flat.apply(new Point(x, 0)).x(), left, nought));
    }
  }
}
