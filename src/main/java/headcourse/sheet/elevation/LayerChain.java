package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Lettering;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The thicknesses of layers side by side, over a section: ticks, and numbers turned and spread. */
public final class LayerChain {
  private static final double CAP = 3.5;
  private static final double LINE = 5;

  private final LengthFormat format;
  private final Length[] thicknesses;

  /** The thicknesses, left to right. */
  public LayerChain(LengthFormat format, Length[] thicknesses) {
    this.format = format;
    this.thicknesses = thicknesses.clone();
  }

  private MarkBand band(double[] xs, double y) {
    List<MarkBand.Item> items = new ArrayList<>();
    for (int i = 0; i < thicknesses.length; i++) {
      double middle = (xs[i] + xs[i + 1]) / 2;
      if (thicknesses[i].isPositive()) {
        items.add(new MarkBand.Item(new Point(middle, y), middle, format.withUnit(thicknesses[i])));
      }
    }
    return new MarkBand(items, List.of(), -1e5, 1e5);
  }

  /** How much height it takes over the section, mm. */
  public double depth(double[] depths, double scale) {
    double[] xs = new double[depths.length];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = depths[i] * scale;
    }
    return LINE + 2 + band(xs, 0).plan(CAP, 1).orElseThrow().depth();
  }

  /** Draws it over a height of the section in model space. */
  public void draw(Board board, Similarity view, double[] depths, double top) {
    double[] xs = new double[depths.length];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = view.apply(new Point(depths[i], 0)).x();
    }
    double object = view.apply(new Point(0, top)).y();
    double line = object - LINE;
    new Dimensions(board)
        .chain(xs, object, line, Collections.nCopies(xs.length - 1, ""), new Lettering(CAP, true));
    MarkBand band = band(xs, line);
    band.draw(board, band.plan(CAP, 1).orElseThrow(), line - 2, -1);
  }
}
