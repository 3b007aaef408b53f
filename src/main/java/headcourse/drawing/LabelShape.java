package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.text.Face;
import java.util.List;

/** How much paper a label takes, from the font's own measures. */
public final class LabelShape {
  private LabelShape() {}

  /** Width of a label's text, mm. */
  public static double width(String text, Lettering lettering) {
    return Face.of(lettering.bold()).width(lettering.written(text), lettering.height());
  }

  /** How far the ink reaches below the base line, mm. */
  public static double below(String text, Lettering lettering) {
    double em = Face.em(lettering.height());
    boolean lowered = false;
    for (char c : lettering.written(text).toCharArray()) {
      if (sinks(c)) {
        return Face.DESCENT * em;
      }
      lowered = lowered || c >= '₀' && c <= '₉';
    }
    return lowered ? 0.15 * em : 0.015 * em;
  }

  /** How far the ink reaches above the base line, mm. */
  public static double above(String text, Lettering lettering) {
    double em = Face.em(lettering.height());
    for (char c : lettering.written(text).toCharArray()) {
      if (rises(c)) {
        return Face.ASCENT * em;
      }
    }
    return (Face.CAP_HEIGHT + 0.015) * em;
  }

  // Whether a character reaches as far below the base line as any.
  private static boolean sinks(char c) {
    return switch (c) {
      case 'g', 'j', 'p', 'q', 'y', 'ç', 'Q', '_', ',', ';', '¿', '¡' -> true;
      case '(', ')', '[', ']', '{', '}', '⁄', '/', '|' -> true;
      default -> false;
    };
  }

  // Whether a character is taller than a capital.
  private static boolean rises(char c) {
    return switch (c) {
      case 'b', 'd', 'f', 'h', 'k', 'l', '\'', '"' -> true;
      case '(', ')', '[', ']', '{', '}', '⁄', '/', '|' -> true;
      case 'Á', 'É', 'Í', 'Ó', 'Ú', 'Ñ', 'á', 'é', 'í', 'ó', 'ú', 'ñ' -> true;
      case '⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹' -> true;
      default -> false;
    };
  }

  /** The four corners of the ink's box on paper, in order around it. */
  public static List<Point> corners(Mark.Label label) {
    return LabelSize.of(label.text(), label.lettering())
        .corners(label.at(), label.align(), label.degrees());
  }

  /** The box around the ink. */
  public static Box bounds(Mark.Label label) {
    return Box.around(corners(label));
  }
}
