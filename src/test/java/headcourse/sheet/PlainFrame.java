package headcourse.sheet;

import headcourse.drawing.Mark;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import java.util.List;
import java.util.Map;

/** A border with room for a title block under the drawing. */
public final class PlainFrame implements SheetFrame {
  @Override
  public List<Mark> place(double w, double h, Map<String, String> fields) {
    return List.of(new Mark.Stroke(Path.rect(7, 7, w - 14, h - 14), Pen.OUTLINE));
  }

  @Override
  public Box area(double w, double h) {
    return new Box(11, 11, w - 11, h - 28);
  }
}
