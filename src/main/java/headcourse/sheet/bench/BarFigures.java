package headcourse.sheet.bench;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.LabelSpacing;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Figures along an edge of a blank's bar, in one line or more.
 *
 * @param wanted where each would begin, on paper
 * @param texts what each says; what stands small under it, after a line break
 * @param lettering how
 * @param lines how many lines they take
 * @param x0 where the bar begins
 * @param right where the sheet ends
 */
record BarFigures(
    List<Double> wanted,
    List<String> texts,
    Lettering lettering,
    int lines,
    double x0,
    double right) {
  private static final Lettering FROM = new Lettering(3.5, true);
  private static final Lettering LEAST = new Lettering(Lettering.LEAST, true);

  /** Air between two figures, mm. */
  private static final double BETWEEN = 2.4;

  /** Air between a figure and what stands under it, mm, and as much for its descenders. */
  private static final double CLEAR = 0.8;

  private static final Lettering UNDER = new Lettering(Lettering.LEAST, false);

  /** As large as they fit in one line, else in as many lines as they take. */
  static BarFigures of(List<Double> wanted, List<String> texts, double x0, double right) {
    for (Lettering l : List.of(FROM, LEAST)) {
      if (sum(widths(texts, l)) <= right - x0) {
        return new BarFigures(wanted, texts, l, 1, x0, right);
      }
    }
    int lines = (int) Math.ceil(sum(widths(texts, LEAST)) / (right - x0));
    return new BarFigures(wanted, texts, LEAST, lines + 1, x0, right);
  }

  /** What they take beyond the edge, mm. */
  double height() {
    return lines * pitch() + 3.2;
  }

  private double pitch() {
    boolean under = texts.stream().anyMatch(t -> t.contains("\n"));
    return (lettering.height() + (under ? UNDER.height() : 0)) * 1.5 + (under ? CLEAR : 0);
  }

  /** Draws them below an edge, or above it; leaders go where a figure had to move. */
  void draw(Board g, double y, int way) {
    double pitch = pitch();
    for (int line = 0; line < lines; line++) {
      List<Integer> mine = new ArrayList<>();
      for (int i = line; i < texts.size(); i += lines) {
        mine.add(i);
      }
      double[] from = mine.stream().mapToDouble(wanted::get).toArray();
      List<String> said = mine.stream().map(texts::get).toList();
      double[] widths = widths(said, lettering);
      double last = widths.length == 0 ? 0 : widths[widths.length - 1] - BETWEEN;
      double[] at = LabelSpacing.along(from, widths, x0 - 1, right - last);
      for (int i = 0; i < at.length; i++) {
        double far = y + way * (2 + line * pitch);
        String[] text = said.get(i).split("\n");
        double base =
            way > 0
                ? far + 0.8 + LabelShape.above(text[0], lettering)
                : far - 0.8 - LabelShape.below(text[0], lettering);
        g.line(from[i], y + way * 0.6, at[i], y + way * 2, Pen.FINE);
        if (line > 0) {
          g.lineAround(new Point(at[i], y + way * 2), new Point(at[i], far), Pen.FINE);
        }
        g.text(at[i], base, text[0], lettering, Align.START);
        if (text.length > 1) {
          double low = base + LabelShape.below(text[0], lettering) + CLEAR / 2;
          g.text(at[i], low + LabelShape.above(text[1], UNDER), text[1], UNDER, Align.START);
        }
      }
    }
  }

  // Of each with the air after it.
  private static double[] widths(List<String> texts, Lettering lettering) {
    return texts.stream()
        .map(t -> t.split("\n"))
        .mapToDouble(t -> Math.max(LabelShape.width(t[0], lettering), under(t)) + BETWEEN)
        .toArray();
  }

  private static double under(String[] text) {
    return text.length > 1 ? LabelShape.width(text[1], UNDER) : 0;
  }

  private static double sum(double[] widths) {
    double sum = 0;
    for (double w : widths) {
      sum += w;
    }
    return sum;
  }
}
