package headcourse.render.pdf;

import headcourse.drawing.Page;
import headcourse.geom.Box;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * From a page's millimetres, y down, to the units of its PDF page, y up. A unit is a point, or
 * several where the page would be longer than 14400 units, the most that a page may have (ISO
 * 32000-1, annex C, and ISO 19005-2, 6.1.13). Places are whole thousandths of a unit, so that what
 * is written does not hang on the last bit of a float.
 *
 * @param unit points to a unit
 * @param height of the page, mm
 */
record PaperSpace(int unit, double height) {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double MOST = 14400;
  private static final double FINEST = 1000;

  static PaperSpace of(Page page) {
    double longest = Math.max(page.width(), page.height()) * POINTS_PER_MM;
    return new PaperSpace(Math.max(1, (int) Math.ceil(longest / MOST - 1e-9)), page.height());
  }

  /** A length, or a place from the left. */
  float length(double mm) {
    return (float) (Math.rint(mm * POINTS_PER_MM / unit * FINEST) / FINEST);
  }

  /** A place from the top. */
  float y(double mm) {
    return length(height - mm);
  }

  PDRectangle box(Box b) {
    float x = length(b.minX());
    float low = y(b.maxY());
    return new PDRectangle(x, low, length(b.maxX()) - x, y(b.minY()) - low);
  }
}
