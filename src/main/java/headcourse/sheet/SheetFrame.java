package headcourse.sheet;

import headcourse.drawing.Mark;
import headcourse.geom.Box;
import java.util.List;
import java.util.Map;

/** The border, title block and notes around a sheet's drawing. */
public interface SheetFrame {
  /**
   * The frame on a page.
   *
   * @param pageWidth mm
   * @param pageHeight mm
   * @param fields what the named fields say
   */
  List<Mark> place(double pageWidth, double pageHeight, Map<String, String> fields);

  /** Where the drawing may lie on such a page. */
  Box area(double pageWidth, double pageHeight);
}
