package headcourse.sheet.frame;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;

/** One thing of a frame, in millimetres of its reference page. */
sealed interface Item {
  /** A line; where {@code anchor} is not null it moves as a whole, with that place. */
  record Line(Path path, Pen pen, int rgb, Point anchor) implements Item {}

  /** An area; {@code anchor} as with a line. */
  record Area(Path path, int rgb, Point anchor) implements Item {}

  /**
   * Words, or the place of a named field.
   *
   * @param field the field's name, or null
   * @param width what a field may take, mm; infinite where the file does not say
   * @param lines how many lines a field may take
   * @param last height of the last base line where there are more than one, mm; they grow upwards
   *     from it, over the field's caption where it has to be; or NaN for lines that grow downwards
   * @param text what to print where it is no field, or a caption that nobody filled
   */
  record Text(
      Point at,
      Lettering lettering,
      Mark.Align align,
      double degrees,
      int rgb,
      String field,
      double width,
      int lines,
      double last,
      String text,
      Point anchor)
      implements Item {}

  /** A picture; it moves with the middle of its box. */
  record Image(Box box, String type, byte[] data) implements Item {}
}
