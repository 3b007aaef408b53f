package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.text.Face;
import java.util.List;

/** How much paper a label takes, from the font's own measures. */
public final class LabelShape {
  private LabelShape() {}

  private static final String BELOW = "gjpqy,;()[]{}_Q⁄/|ç¿¡";
  private static final String ABOVE = "bdfhkl()[]{}|'\"/ÁÉÍÓÚÑáéíóúñ⁄⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** Width of a label's text, mm. */
  public static double width(String text, Lettering lettering) {
    return Face.of(lettering.bold()).width(text, lettering.height());
  }

  /** How far the ink reaches below the base line, mm. */
  public static double below(String text, Lettering lettering) {
    double em = Face.em(lettering.height());
    if (anyOf(BELOW, text)) {
      return Face.DESCENT * em;
    }
    return anyOf("₀₁₂₃₄₅₆₇₈₉", text) ? 0.15 * em : 0.015 * em;
  }

  /** How far the ink reaches above the base line, mm. */
  public static double above(String text, Lettering lettering) {
    boolean tall = anyOf(ABOVE, text);
    return (tall ? Face.ASCENT : Face.CAP_HEIGHT + 0.015) * Face.em(lettering.height());
  }

  private static boolean anyOf(String set, String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      // Figures are what most labels are of; no set holds one.
      if ((c < '0' || c > '9') && set.indexOf(c) >= 0) {
        return true;
      }
    }
    return false;
  }

  /** The four corners of the ink's box on paper, in order around it. */
  public static List<Point> corners(Mark.Label label) {
    double w = width(label.text(), label.lettering());
    double x0 =
        switch (label.align()) {
          case START -> 0;
          case MIDDLE -> -w / 2;
          case END -> -w;
        };
    double up = -above(label.text(), label.lettering());
    double down = below(label.text(), label.lettering());
    double c = Math.cos(Math.toRadians(label.degrees()));
    double s = Math.sin(Math.toRadians(label.degrees()));
    return List.of(
        corner(label.at(), x0, down, c, s),
        corner(label.at(), x0 + w, down, c, s),
        corner(label.at(), x0 + w, up, c, s),
        corner(label.at(), x0, up, c, s));
  }

  // Paper's y runs down, and the label turns counter-clockwise as seen: (x, y) ↦ (xc + ys, yc −
  // xs).
  private static Point corner(Point at, double x, double y, double c, double s) {
    return new Point(at.x() + x * c + y * s, at.y() + y * c - x * s);
  }

  /** The box around the ink. */
  public static Box bounds(Mark.Label label) {
    return Box.around(corners(label));
  }
}
