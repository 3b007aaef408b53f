package headcourse.job.yaml;

import headcourse.job.Props;
import headcourse.units.Length;
import headcourse.units.Units;

/** Reads {@code props:}. */
final class PropsReader {
  private PropsReader() {}

  static Props read(Section s) {
    Reading in = s.in;
    boolean inch = in.units == Units.INCH;
    Section plank = s.section("plank");
    Length thickness = plank.length("thickness", Range.of(0.25, 12), in.or(1.5, 38));
    Length width = plank.length("width", Range.of(1, 48), in.or(5.5, 140));
    double unit = inch ? Props.LB_PER_IN2 : 1;
    double own = inch ? Props.INCH_STIFFNESS : Props.METRIC_STIFFNESS;
    // From the softest board to steel.
    Item given = plank.item("stiffness");
    Double read =
        given == null ? null : given.number(inch ? 100_000 : 1000, inch ? 30_000_000 : 210_000);
    plank.done();
    Length sag = s.length("sag", Range.of(1 / 512.0, 0.5), in.or(1 / 32.0, 1));
    double push = s.get("push", 2.0, i -> i.number(1, 10));
    Length lagging = s.length("lagging", Range.of(0, 4), in.or(0.75, 19));
    s.done();
    return new Props(thickness, width, read == null ? own : read * unit, sag, push, lagging);
  }
}
