package headcourse.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Numbers in JSON against exact arithmetic. */
class JsonDecimalTest {
  @Test
  void agreesWithExactRounding() {
    long seed = 20260505;
    Random random = new Random(seed);
    for (int i = 0; i < 40_000; i++) {
      double v = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(14) - 4);
      v = i % 4 == 0 ? Math.rint(v * 32) / 32 : v;
      String expected = exact(v);
      assertEquals(expected, JsonWriter.decimal(v), v + " seed " + seed + ", round " + i);
    }
    assertEquals("0.0", JsonWriter.decimal(-0.00004));
    assertEquals("0.0", JsonWriter.decimal(-0.0));
    assertEquals("-12.5", JsonWriter.decimal(-12.5));
    assertEquals("3.0", JsonWriter.decimal(3));
  }

  private static String exact(double v) {
    BigDecimal d = new BigDecimal(v).setScale(4, RoundingMode.HALF_EVEN);
    if (d.signum() == 0) {
      return "0.0";
    }
    d = d.stripTrailingZeros();
    return d.setScale(Math.max(1, d.scale())).toPlainString();
  }
}
