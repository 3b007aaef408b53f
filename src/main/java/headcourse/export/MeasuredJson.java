package headcourse.export;

import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** A part of {@code layout.json}: writes lengths and angles as that file has them. */
abstract class MeasuredJson {
  final JsonWriter json;

  // A sixteenth of a step, pm: jambs and what hangs on them may stand between two steps.
  private final long part;

  MeasuredJson(JsonWriter json, Grid grid) {
    this.json = json;
    this.part = Math.max(1, grid.tick().picometres() / 16);
  }

  final void length(String key, Length length) {
    json.key(key).value(mm(length));
  }

  final void nullable(String key, Double mm) {
    json.key(key);
    if (mm == null) {
      json.value((String) null);
    } else {
      json.value(mm(mm));
    }
  }

  final BigDecimal mm(double mm) {
    return mm(Length.mm(mm));
  }

  /** All decimals of what lies on a part of the grid, four of anything else. */
  final BigDecimal mm(Length length) {
    BigDecimal exact = BigDecimal.valueOf(length.picometres(), 9);
    return length.picometres() % part == 0 ? exact : exact.setScale(4, RoundingMode.HALF_EVEN);
  }

  final void angle(String key, Angle angle) {
    json.key(key).value(angle.degrees());
  }
}
