package headcourse.layout.flat;

import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.List;

/** Stones that are cut already, each of which could be cut again to let the rest be solved. */
final class FittedKnobs {
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
    Recut recut = new Recut(terms.job(), f);
    long base = recut.base();
    return new Knob(
        f.path(),
        base,
        0,
        Math.min(Recut.FARTHEST, base - 1),
        Math.max(1, base),
        v -> {
          Fitted other = recut.to(v);
          return other == null
              ? null
              : new Knob.Asked(Edits.fitted(terms.job(), f, other), terms.opening());
        },
        v -> recut.text(recut.to(v)),
        h -> tells(h, f, format),
        "recut " + f.stone() + ", or cut another");
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
