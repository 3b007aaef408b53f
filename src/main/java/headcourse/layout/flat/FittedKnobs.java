package headcourse.layout.flat;

import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Stones that are cut already, each of which could be cut again to let the rest be solved. */
final class FittedKnobs {
  /** How far either way a width is tried, in steps of the grid. */
  private static final long FARTHEST = 48;

  private FittedKnobs() {}

  static boolean is(Knob knob) {
    return knob.path().startsWith("fitted.");
  }

  static void addTo(List<Knob> knobs, FlatTerms terms, LengthFormat format) {
    for (Fitted f : FittedReading.of(terms.job(), terms.opening())) {
      knobs.add(knob(terms, format, f));
    }
  }

  private static Knob knob(FlatTerms terms, LengthFormat format, Fitted f) {
    Grid grid = terms.job().grid();
    long base = grid.nearest(f.bottom());
    return new Knob(
        f.path(),
        base,
        0,
        Math.min(FARTHEST, base - 1),
        Math.max(1, base),
        v -> {
          Fitted other = recut(f, grid, v);
          return other == null
              ? null
              : new Knob.Asked(Edits.fitted(terms.job(), f, other), terms.opening());
        },
        v -> text(recut(f, grid, v), format),
        h -> tells(h, f, format),
        "recut " + f.stone() + ", or cut another");
  }

  /** The stone with another width below, its edges leaning as they do. */
  private static Fitted recut(Fitted f, Grid grid, long ticks) {
    Length bottom = grid.ticks(ticks);
    Length top = f.top() == null ? null : grid.snap(f.top().plus(bottom.minus(f.bottom())));
    Length height = f.height() == null ? null : grid.snap(f.height());
    boolean stone = bottom.isPositive() && (top == null || top.isPositive());
    return stone ? new Fitted(f.path(), f.opening(), f.stone(), bottom, top, height) : null;
  }

  /** As the job file has it. */
  private static String text(Fitted f, LengthFormat format) {
    if (f.top() == null && f.height() == null) {
      return format.plain(f.bottom());
    }
    List<String> parts = new ArrayList<>();
    parts.add("bottom: " + format.plain(f.bottom()));
    if (f.top() != null) {
      parts.add("top: " + format.plain(f.top()));
    }
    if (f.height() != null) {
      parts.add("height: " + format.plain(f.height()));
    }
    return "{" + String.join(", ", parts) + "}";
  }

  private static String tells(HeadLayout then, Fitted f, LengthFormat format) {
    Length off = then.stone(f.stone()).bottom().minus(f.bottom());
    return f.stone()
        + " as it was cut, "
        + format.plainWithUnit(f.bottom())
        + " wide at the bottom, leaves no place for the rest; "
        + format.plainWithUnit(off.abs())
        + (off.isPositive() ? " wider" : " narrower")
        + " it would";
  }
}
