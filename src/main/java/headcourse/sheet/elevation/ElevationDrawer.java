package headcourse.sheet.elevation;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.PlacedStone;
import headcourse.sheet.elevation.StoneLabels.Setting;
import java.util.ArrayList;
import java.util.List;

/** Draws the stones of a head in their places, with marks, setting order and screws. */
public final class ElevationDrawer {
  private final HeadFigures figures;

  /** Draws a head. */
  public ElevationDrawer(HeadFigures figures) {
    this.figures = figures;
  }

  /** What is shown of the stones besides their outlines. */
  public record Detail(boolean order, boolean screws, double largest) {}

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
      List<Mark> screws = detail.screws ? screws(view, piece, s.outline().bounds()) : List.of();
      shown.add(new Shown(s, piece, face, screws));
    }
    return shown;
  }

  /**
   * Draws stones, each a group of its own whose id is its full mark.
   *
   * @param view from model space to paper
   */
  public void stones(Board board, Similarity view, List<PlacedStone> stones, Detail detail) {
    List<Shown> shown = shown(view, stones, detail);
    draw(board, shown, settings(shown, detail));
  }

  /** Draws stones as labelled before, at the same scale, by {@link #settings}. */
  void stones(
      Board board,
      Similarity view,
      List<PlacedStone> stones,
      Detail detail,
      List<Setting> settings) {
    draw(board, shown(view, stones, detail), settings);
  }

  private static void draw(Board board, List<Shown> stones, List<Setting> settings) {
    for (int pass = 0; pass < 2; pass++) {
      // The key last: its heavier outline lies over its neighbours'.
      for (int i = 0; i < stones.size(); i++) {
        if (stones.get(i).key() == (pass == 1)) {
          stone(board, stones.get(i), settings.get(i));
        }
      }
    }
    for (Shown s : stones) {
      board.group(Role.SCREWS, "", s.piece.mark(), b -> b.addAll(s.screws));
    }
  }

  private static void stone(Board board, Shown s, Setting setting) {
    String mark = s.piece.mark();
    board.group(
        Role.STONE,
        mark,
        mark,
        b -> {
          Shade shade = s.key() ? Shade.KEY : Shade.STONE;
          b.outline(s.face.outline(), shade, s.key() ? Pen.OUTLINE : Pen.CUT);
          b.addAll(setting.marks(s.face));
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

  // Head of the screw on the edge, and how far it runs behind the stone, as one would see it.
  private static List<Mark> screws(Similarity view, Piece piece, Box face) {
    List<Mark> marks = new ArrayList<>();
    double width = face.width() * view.scale();
    for (Notch n : piece.notches()) {
      Point at = view.apply(n.at());
      double run = n.screw() == null ? 0 : n.screw().mm() * Math.cos(n.slant().radians());
      // On a narrow stone the line gives way to the mark.
      double most = Math.min(0.42 * width, Math.max(1.2, width - 6.5));
      double length = Math.min(run * view.scale(), most);
      double way = face.centre().x() >= n.at().x() ? 1 : -1;
      double r = Math.max(0.5, Math.min(1.1, 5 * view.scale()));
      if (length > 1e-6) {
        marks.add(
            new Mark.Stroke(Path.through(at, new Point(at.x() + way * length, at.y())), Pen.EDGE));
      }
      Path head = Path.circle(at, r);
      marks.add(new Mark.Fill(head, Shade.BLACK));
      marks.add(new Mark.Stroke(head, Pen.EDGE));
    }
    return marks;
  }
}
