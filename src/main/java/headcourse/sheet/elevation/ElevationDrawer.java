package headcourse.sheet.elevation;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.PlacedStone;
import headcourse.sheet.Board;
import headcourse.sheet.Ink;
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

  /**
   * Draws stones, each a group of its own whose id is its full mark.
   *
   * @param view from model space to paper
   */
  public void stones(Board board, Similarity view, List<PlacedStone> stones, Detail detail) {
    List<List<Mark>> labels = labels(view, stones, detail);
    for (int pass = 0; pass < 2; pass++) {
      // The key last: its heavier outline lies over its neighbours'.
      for (int i = 0; i < stones.size(); i++) {
        PlacedStone s = stones.get(i);
        if ((s.role() == headcourse.layout.Role.KEY) == (pass == 1)) {
          stone(board, view, s, labels.get(i));
        }
      }
    }
    if (detail.screws) {
      for (PlacedStone s : stones) {
        Piece piece = figures.work().piece(s.mark());
        board.group(Role.SCREWS, "", piece.mark(), b -> b.addAll(screws(view, piece, s)));
      }
    }
  }

  private void stone(Board board, Similarity view, PlacedStone s, List<Mark> labels) {
    boolean key = s.role() == headcourse.layout.Role.KEY;
    String mark = figures.work().piece(s.mark()).mark();
    Path face = s.outline().transformed(view);
    board.group(
        Role.STONE,
        mark,
        mark,
        b -> {
          b.outline(face, key ? Shade.KEY : Shade.STONE, key ? Pen.OUTLINE : Pen.CUT);
          b.addAll(labels);
        });
  }

  private List<List<Mark>> labels(Similarity view, List<PlacedStone> stones, Detail detail) {
    Ink ink = ink(view, stones, detail);
    StoneLabels setter = new StoneLabels(ink);
    List<StoneLabels.Text> ordinary = new ArrayList<>();
    for (PlacedStone s : stones) {
      if (s.role() != headcourse.layout.Role.KEY) {
        ordinary.add(text(view, s, detail));
      }
    }
    List<List<Mark>> alike = setter.alike(ordinary, detail.largest);
    List<List<Mark>> labels = new ArrayList<>();
    int next = 0;
    for (PlacedStone s : stones) {
      labels.add(
          s.role() == headcourse.layout.Role.KEY
              ? setter.one(text(view, s, detail), detail.largest)
              : alike.get(next++));
    }
    return labels;
  }

  /** Whether every stone has room for its mark and its setting number. */
  boolean labelled(Similarity view, List<PlacedStone> stones, Detail detail) {
    return labels(view, stones, detail).stream()
        .allMatch(l -> l.stream().filter(m -> m instanceof Mark.Label).count() == 2);
  }

  private StoneLabels.Text text(Similarity view, PlacedStone s, Detail detail) {
    String order = detail.order ? figures.work().piece(s.mark()).setOrder() + "" : "";
    return new StoneLabels.Text(s.outline().transformed(view), s.mark(), order);
  }

  private Ink ink(Similarity view, List<PlacedStone> stones, Detail detail) {
    Board trial = new Board();
    for (PlacedStone s : stones) {
      trial.stroke(s.outline().transformed(view), Pen.OUTLINE);
      if (detail.screws) {
        trial.addAll(screws(view, figures.work().piece(s.mark()), s));
      }
    }
    return trial.ink();
  }

  // Head of the screw on the edge, and how far it runs behind the stone, as one would see it.
  private static List<Mark> screws(Similarity view, Piece piece, PlacedStone stone) {
    List<Mark> marks = new ArrayList<>();
    Box face = stone.outline().bounds();
    for (Notch n : piece.notches()) {
      Point at = view.apply(n.at());
      double run = n.screw() == null ? 0 : n.screw().mm() * Math.cos(n.slant().radians());
      double width = face.width() * view.scale();
      // On a narrow stone the line gives way to the mark.
      double most = Math.min(0.42 * width, Math.max(1.2, width - 6.5));
      double length = Math.min(run * view.scale(), most);
      double way = face.centre().x() >= n.at().x() ? 1 : -1;
      double r = Math.max(0.5, Math.min(1.1, 5 * view.scale()));
      marks.add(
          new Mark.Stroke(Path.through(at, new Point(at.x() + way * length, at.y())), Pen.EDGE));
      marks.add(new Mark.Fill(Path.circle(at, r), Shade.BLACK));
      marks.add(new Mark.Stroke(Path.circle(at, r), Pen.EDGE));
    }
    List<Mark> seen = new ArrayList<>();
    for (Mark m : marks) {
      if (!(m instanceof Mark.Stroke s) || s.path().length() > 1e-6) {
        seen.add(m);
      }
    }
    return seen;
  }
}
