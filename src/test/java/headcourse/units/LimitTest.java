package headcourse.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitTest {
  private static final double[] TICKS = {1 / 8.0, 1 / 16.0, 1 / 32.0, 1 / 64.0};
  private static final double[] METRIC = {1, 0.5, 2};

  /** Arithmetic: what a tape shows on the safe side of a length. */
  @ParameterizedTest
  @CsvSource({
    "0.3, 16, 1/4\", 5/16\"",
    "0.08, 16, 1/16\", 1/8\"",
    "0.05, 16, 1/32\", 1/16\"",
    "0.03, 16, 1/64\", 1/16\"",
    "0.01, 16, 0\", 1/16\"",
    "0.25, 16, 1/4\", 1/4\"",
    "-0.01, 16, -1/16\", 0\"",
  })
  void onATape(double inches, int part, String most, String least) {
    LengthFormat f = new LengthFormat(Units.INCH, new Grid(Length.inches(1.0 / part)));
    assertEquals(most, Limit.MOST.plainWithUnit(f, Length.inches(inches)));
    assertEquals(least, Limit.LEAST.plainWithUnit(f, Length.inches(inches)));
  }

  @Test
  void onAMetricTape() {
    LengthFormat f = new LengthFormat(Units.MILLIMETRE, new Grid(Length.mm(1)));
    assertEquals("7 mm", Limit.MOST.plainWithUnit(f, Length.mm(7.62)));
    assertEquals("8 mm", Limit.LEAST.plainWithUnit(f, Length.mm(7.62)));
    assertEquals("0.5 mm", Limit.MOST.plainWithUnit(f, Length.mm(0.99)));
  }

  /** What is printed, read again, is on the safe side and no more than a step away. */
  @Test
  void neverOnTheWrongSide() throws NotationException {
    Random random = new Random(41);
    for (int i = 0; i < Seeds.of(20_000); i++) {
      boolean inch = random.nextBoolean();
      double[] ticks = inch ? TICKS : METRIC;
      double tick = ticks[random.nextInt(ticks.length)];
      Units units = inch ? Units.INCH : Units.MILLIMETRE;
      LengthFormat f = new LengthFormat(units, new Grid(units.of(tick)));
      double size = Math.pow(10, random.nextInt(5) - 2);
      Length exact = units.of((random.nextDouble() * 2 - 0.5) * size);
      Length most = read(Limit.MOST.plainWithUnit(f, exact), units);
      Length least = read(Limit.LEAST.plainWithUnit(f, exact), units);
      assertTrue(most.compareTo(exact) <= 0, () -> most + " > " + exact);
      assertTrue(least.compareTo(exact) >= 0, () -> least + " < " + exact);
      assertTrue(exact.minus(most).compareTo(f.grid().tick()) < 0, () -> most + " < " + exact);
      assertTrue(least.minus(exact).compareTo(f.grid().tick()) < 0, () -> least + " > " + exact);
      assertEquals(most, read(Limit.MOST.withUnit(f, exact), units));
      if (f.grid().holds(exact)) {
        assertEquals(exact, most);
        assertEquals(exact, least);
      }
    }
  }

  private static Length read(String text, Units units) throws NotationException {
    return LengthParser.parse(text, units);
  }

  @Test
  void numbersTooAndTheNoiseOfBinaryFractionsIsNone() {
    assertEquals("50.0", Limit.MOST.decimal(50 * 0.45359237 / 0.45359237 - 1e-12, 1).toString());
    assertEquals("15.0", Limit.MOST.decimal(15.09, 1).toString());
    assertEquals("15.1", Limit.LEAST.decimal(15.01, 1).toString());
    assertEquals("-0.2", Limit.MOST.decimal(-0.15, 1).toString());
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double v = (random.nextDouble() - 0.5) * 1000;
      int places = random.nextInt(4);
      assertTrue(Limit.MOST.decimal(v, places).doubleValue() <= v + 1e-9);
      assertTrue(Limit.LEAST.decimal(v, places).doubleValue() >= v - 1e-9);
    }
  }
}
