package headcourse.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The short way to write decimals against the JDK's formatter. */
class DecimalsTest {
  @Test
  void agreesWithTheFormatter() {
    long seed = 20260504;
    Random random = new Random(seed);
    for (int i = 0; i < 40_000; i++) {
      double v = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(13) - 3);
      same(i % 4 == 0 ? Math.rint(v * 2000) / 2000 : v, "seed " + seed + ", round " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {0, -0.0, 0.5, -0.5, 1.5, 0.05, 0.15, 0.25, -0.04, 2.675, 99.95, 999.9995, 1e12})
  void agreesAtTheTies(double v) {
    same(v, "");
  }

  private static void same(double v, String where) {
    for (int places = 0; places <= 4; places++) {
      String expected = String.format(Locale.ROOT, "%." + places + "f", v);
      assertEquals(expected, Decimals.fixed(v, places), v + " " + where);
    }
  }
}
