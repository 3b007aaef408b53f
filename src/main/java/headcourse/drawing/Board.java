package headcourse.drawing;

import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.text.SecondLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A page, or a part of one, while it is being drawn: collects marks in painting order and knows
 * where ink lies, so that text can be put where there is none.
 */
public final class Board {
  private final List<Mark> marks = new ArrayList<>();
  private final Ink ink;

  /** An empty board. */
  public Board() {
    this(new Ink());
  }

  private Board(Ink ink) {
    this.ink = ink;
  }

  /** Where ink lies on this board and every group of it. */
  public Ink ink() {
    return ink;
  }

  /** Adds a mark as it is. */
  public void add(Mark mark) {
    marks.add(mark);
    ink.learn(mark);
  }

  /** Adds marks as they are. */
  public void addAll(List<Mark> more) {
    more.forEach(this::add);
  }

  /** Draws a line along a path. */
  public void stroke(Path path, Pen pen) {
    add(new Mark.Stroke(path, pen));
  }

  /** Draws a straight line. */
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    line(new Point(x1, y1), new Point(x2, y2), pen);
  }

  /** Draws a straight line; nothing where it has no length. */
  public void line(Point from, Point to, Pen pen) {
    if (from.distance(to) > 1e-9) {
      stroke(Path.through(from, to), pen);
    }
  }

  /** Draws a straight line that stops short of every text in its way and goes on behind it. */
  public void lineAround(Point from, Point to, Pen pen) {
    for (Point[] part : ink.clearOfText(from, to, 0.7)) {
      line(part[0], part[1], pen);
    }
  }

  /** Fills an area. */
  public void fill(Path path, Shade shade) {
    add(new Mark.Fill(path, shade));
  }

  /** Fills an area and draws its outline. */
  public void outline(Path path, Shade shade, Pen pen) {
    fill(path, shade);
    stroke(path, pen);
  }

  /** Writes a line of text. */
  public void text(double x, double y, String text, Lettering lettering, Align align) {
    text(new Point(x, y), text, lettering, align, 0);
  }

  /** Writes a line of text, turned counter-clockwise as seen; nothing where it is empty. */
  public void text(Point at, String text, Lettering lettering, Align align, double degrees) {
    if (!text.isEmpty()) {
      add(new Mark.Label(at, text, lettering, align, degrees));
    }
  }

  /**
   * Writes the first of some labels whose box, grown by a margin, is free of ink.
   *
   * @return whether one was written; if not, nothing was
   */
  public boolean firstFree(List<Mark.Label> candidates, double margin) {
    for (Mark.Label label : candidates) {
      if (ink.free(LabelShape.corners(label), margin)) {
        add(label);
        return true;
      }
    }
    return false;
  }

  /** Draws marks that belong together. */
  public void group(Role role, String id, String title, Consumer<Board> body) {
    Board inner = new Board(ink);
    body.accept(inner);
    if (!inner.marks.isEmpty()) {
      marks.add(new Mark.Group(role, id, SecondLanguage.plain(title), inner.marks));
    }
  }

  /** What was drawn, in painting order. */
  public List<Mark> marks() {
    return List.copyOf(marks);
  }
}
