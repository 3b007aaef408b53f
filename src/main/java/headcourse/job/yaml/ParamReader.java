package headcourse.job.yaml;

import headcourse.job.ShapeDef;
import headcourse.units.Angle;
import headcourse.units.AngleParser;

/** Reads a key that a shape or a rule asks for, after its definition. */
final class ParamReader {
  private static final double MOST = 1e6;

  private ParamReader() {}

  /** The value, or null where it was refused. */
  static Object read(Item item, ShapeDef.ParamDef def) {
    return switch (def.kind()) {
      case LENGTH -> item.length(Range.NOT_NEGATIVE);
      case ANGLE -> item.angle();
      case NUMBER -> item.number(0, MOST);
      case COUNT -> {
        Long n = item.whole(1, 1000);
        yield n == null ? null : (Object) n.intValue();
      }
      case WORD -> item.word(def.words());
      case LENGTH_OR_RATE -> lengthOrRate(item, def);
      case MASS -> Quantity.MASS.read(item, 0, MOST);
      case MASS_PER_AREA -> Quantity.MASS_PER_AREA.read(item, 0, MOST);
      case AREA -> Quantity.AREA.read(item, 0, MOST);
    };
  }

  private static Object lengthOrRate(Item item, ShapeDef.ParamDef def) {
    String s = item.raw("a length or a rate");
    if (s == null || def.words().contains(s)) {
      return s;
    }
    if (!AngleParser.isRate(s)) {
      return item.length(Range.NOT_NEGATIVE);
    }
    Angle rate = item.angle();
    if (rate != null && rate.degrees() < 0) {
      item.error(Reading.quoted(s) + " falls; expected a rate that rises, or 0");
      return null;
    }
    return rate;
  }
}
