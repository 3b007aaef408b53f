package headcourse.sheet.elevation;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.PlacedStone;
import headcourse.sheet.elevation.StoneLabels.Setting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws the stones of a head in their places, with marks, setting order and screws. */
public final class ElevationDrawer {
  private final HeadFigures figures;

  /** Draws a head. */
  public ElevationDrawer(HeadFigures figures) {
    this.figures = figures;
  }

  /**
   * What is shown of the stones besides their outlines.
   *
   * @param order whether their numbers in the setting order
   * @param screws whether their screws
   * @param largest greatest height of capitals, mm
   * @param leaders whether a mark that finds no room on its stone stands outside, on a leader
   */
  public record Detail(boolean order, boolean screws, double largest, boolean leaders) {}

  /** A stone as it lies on paper. */
  private record Shown(PlacedStone stone, Piece piece, StoneFace face, List<Mark> screws) {
    boolean key() {
      return stone.role() == headcourse.layout.Role.KEY;
    }
  }

  private List<Shown> shown(Similarity view, List<PlacedStone> stones, Detail detail) {
    List<Shown> shown = new ArrayList<>();
    for (PlacedStone s : stones) {
      Piece piece = figures.work().piece(s.mark());
      StoneFace face = new StoneFace(s.outline().transformed(view));
      List<Mark> screws = detail.screws ? screws(view, piece, s.outline()) : List.of();
      shown.add(new Shown(s, piece, face, screws));
    }
    return shown;
  }

  /**
   * The marks that stand outside their stones, each empty or with its leader, in the stones' order;
   * like {@link #settings} they depend on the scale alone.
   */
  List<List<Mark>> outside(
      Similarity view, List<PlacedStone> stones, Detail detail, List<Setting> settings) {
    return outside(view, shown(view, stones, detail), settings);
  }

  private List<List<Mark>> outside(Similarity view, List<Shown> stones, List<Setting> settings) {
    OuterMarks outer = new OuterMarks(figures, view);
    for (int i = 0; i < stones.size(); i++) {
      Shown s = stones.get(i);
      outer.taken(s.face.outline(), settings.get(i).marks(s.face));
    }
    List<List<Mark>> all = new ArrayList<>();
    for (int i = 0; i < stones.size(); i++) {
      boolean none = settings.get(i).label() == null;
      all.add(none ? outer.mark(stones.get(i).stone) : List.of());
    }
    return all;
  }

  /** Draws stones as labelled before, at the same scale, by {@link #settings}. */
  void stones(
      Board board,
      Similarity view,
      List<PlacedStone> stones,
      Detail detail,
      List<Setting> settings) {
    List<Shown> shown = shown(view, stones, detail);
    draw(board, shown, settings, detail.leaders ? outside(view, shown, settings) : List.of());
  }

  private static void draw(
      Board board, List<Shown> stones, List<Setting> settings, List<List<Mark>> outside) {
    for (int pass = 0; pass < 2; pass++) {
      // The key last: its heavier outline lies over its neighbours'.
      for (int i = 0; i < stones.size(); i++) {
        if (stones.get(i).key() == (pass == 1)) {
          List<Mark> outer = outside.isEmpty() ? List.of() : outside.get(i);
          stone(board, stones.get(i), settings.get(i), outer);
        }
      }
    }
    for (Shown s : stones) {
      board.group(Role.SCREWS, "", s.piece.mark(), b -> b.addAll(s.screws));
    }
  }

  private static void stone(Board board, Shown s, Setting setting, List<Mark> outer) {
    String mark = s.piece.mark();
    board.group(
        Role.STONE,
        mark,
        mark,
        b -> {
          Shade shade = s.key() ? Shade.KEY : Shade.STONE;
          b.outline(s.face.outline(), shade, s.key() ? Pen.OUTLINE : Pen.CUT);
          b.addAll(setting.marks(s.face));
          b.addAll(outer);
        });
  }

  /** How each stone is labelled; that depends on the scale, not on where the head is drawn. */
  List<Setting> settings(Similarity view, List<PlacedStone> stones, Detail detail) {
    return settings(shown(view, stones, detail), detail);
  }

  private static List<Setting> settings(List<Shown> stones, Detail detail) {
    Board trial = new Board();
    List<StoneLabels.Text> texts = new ArrayList<>();
    List<StoneLabels.Text> ordinary = new ArrayList<>();
    for (Shown s : stones) {
      trial.stroke(s.face.outline(), Pen.OUTLINE);
      trial.addAll(s.screws);
      String order = detail.order ? Integer.toString(s.piece.setOrder()) : "";
      StoneLabels.Text text = new StoneLabels.Text(s.face, s.stone.mark(), order);
      texts.add(text);
      if (!s.key()) {
        ordinary.add(text);
      }
    }
    StoneLabels setter = new StoneLabels(trial.ink(), detail.largest, detail.order);
    List<Setting> alike = setter.alike(ordinary);
    List<Setting> settings = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < stones.size(); i++) {
      settings.add(stones.get(i).key() ? setter.one(texts.get(i)) : alike.get(next++));
    }
    return settings;
  }

  // Level; in an arch square to the joint that the screw goes in at.
  private Vec inward(Path outline, Point at) {
    Vec in = outline.bounds().centre().minus(at);
    if (!figures.curved()) {
      return new Vec(in.x() >= 0 ? 1 : -1, 0);
    }
    Edge edge =
        outline.edges().stream().min(Comparator.comparingDouble(e -> off(e, at))).orElseThrow();
    Vec square = edge.to().minus(edge.from()).normal().unit();
    return square.dot(in) >= 0 ? square : square.times(-1);
  }

  // How much farther the way over a place is than an edge's own length.
  private static double off(Edge edge, Point at) {
    Point a = edge.from();
    Point b = edge.to();
    return a.distance(at) + at.distance(b) - a.distance(b);
  }

  private static double across(Path outline, Vec way) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Edge e : outline.edges()) {
      double d = e.from().minus(Point.ORIGIN).dot(way);
      least = Math.min(least, d);
      most = Math.max(most, d);
    }
    return most - least;
  }

  // Head of the screw on the edge, and how far it runs behind the stone, as one would see it.
  private List<Mark> screws(Similarity view, Piece piece, Path outline) {
    List<Mark> marks = new ArrayList<>();
    for (Notch n : piece.notches()) {
      Point at = view.apply(n.at());
      double run = n.screw() == null ? 0 : n.screw().mm() * Math.cos(n.slant().radians());
      Vec way = inward(outline, n.at());
      double width = across(outline, way) * view.scale();
      // On a narrow stone the line gives way to the mark.
      double room = figures.curved() ? (width - 6.5) / 2 : width - 6.5;
      double most = Math.min(0.42 * width, Math.max(1.2, room));
      double length = Math.min(run * view.scale(), most);
      double r = Math.max(0.5, Math.min(1.1, 5 * view.scale()));
      if (length > 1e-6) {
        marks.add(
            new Mark.Stroke(
                Path.through(at, at.plus(view.apply(way).unit().times(length))), Pen.EDGE));
      }
      Path head = Path.circle(at, r);
      marks.add(new Mark.Fill(head, Shade.BLACK));
      marks.add(new Mark.Stroke(head, Pen.EDGE));
    }
    return marks;
  }
}
