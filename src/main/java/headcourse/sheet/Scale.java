package headcourse.sheet;

import headcourse.units.Units;
import java.util.List;

/**
 * A drawing scale: paper size = true size / reduction.
 *
 * @param reduction 1, 2, 5 … or 1, 2, 4, 8 …
 * @param name as printed in every language: {@code 1:10}, {@code ¾" = 1'-0"}
 */
public record Scale(int reduction, String name) {
  /** Full size. */
  public static final Scale FULL = new Scale(1, "1:1");

  // ISO 5455 (from memory) and the architect's scale (office practice).
  private static final List<Scale> METRIC =
      List.of(
          FULL,
          new Scale(2, "1:2"),
          new Scale(5, "1:5"),
          new Scale(10, "1:10"),
          new Scale(20, "1:20"),
          new Scale(50, "1:50"),
          new Scale(100, "1:100"),
          new Scale(200, "1:200"),
          new Scale(500, "1:500"));
  private static final List<Scale> IMPERIAL =
      List.of(
          new Scale(1, "1:1"),
          new Scale(2, "1:2"),
          new Scale(4, "3\" = 1'-0\""),
          new Scale(8, "1 ¹⁄₂\" = 1'-0\""),
          new Scale(12, "1\" = 1'-0\""),
          new Scale(16, "³⁄₄\" = 1'-0\""),
          new Scale(24, "¹⁄₂\" = 1'-0\""),
          new Scale(32, "³⁄₈\" = 1'-0\""),
          new Scale(48, "¹⁄₄\" = 1'-0\""),
          new Scale(96, "¹⁄₈\" = 1'-0\""),
          new Scale(192, "¹⁄₁₆\" = 1'-0\""),
          new Scale(384, "¹⁄₃₂\" = 1'-0\""));

  /** The scales a job may be drawn at, largest drawing first. */
  public static List<Scale> ladder(Units units) {
    return units == Units.INCH ? IMPERIAL : METRIC;
  }

  /** The largest scale at which a true size fits into a room on paper; else the least of all. */
  public static Scale largest(
      Units units, double trueWidth, double trueHeight, double roomWidth, double roomHeight) {
    for (Scale s : ladder(units)) {
      if (trueWidth / s.reduction <= roomWidth && trueHeight / s.reduction <= roomHeight) {
        return s;
      }
    }
    List<Scale> ladder = ladder(units);
    return ladder.get(ladder.size() - 1);
  }

  /** Factor from true size to paper. */
  public double factor() {
    return 1.0 / reduction;
  }
}
