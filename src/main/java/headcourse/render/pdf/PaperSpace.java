package headcourse.render.pdf;

import headcourse.drawing.Page;
import headcourse.geom.Box;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSNumber;

/**
 * From a page's millimetres, y down, to the units of its PDF page, y up. A unit is a point, or
 * several where the page would be longer than 14400 units, the most that a page may have (ISO
 * 32000-1, annex C, and ISO 19005-2, 6.1.13).
 *
 * @param unit points to a unit
 * @param height of the page, mm
 */
record PaperSpace(int unit, double height) {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double MOST = 14400;

  static PaperSpace of(Page page) {
    double longest = Math.max(page.width(), page.height()) * POINTS_PER_MM;
    return new PaperSpace(Math.max(1, (int) Math.ceil(longest / MOST - 1e-9)), page.height());
  }

  /** Units in a millimetre. */
  double scale() {
    return POINTS_PER_MM / unit;
  }

  COSNumber length(double mm) {
    return Cos.number(mm * scale());
  }

  COSNumber y(double mm) {
    return Cos.number((height - mm) * scale());
  }

  COSArray box(Box b) {
    return Cos.array(length(b.minX()), y(b.maxY()), length(b.maxX()), y(b.minY()));
  }
}
