package headcourse.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Utf8BufferTest {
  private static String number(double value) {
    return new Utf8Buffer(1).number(value).toString();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "1, 1",
    "-12, -12",
    "0.5, 0.5",
    "10.0625, 10.0625",
    "-0.0001, -0.0001",
    "0.00004, 0",
    "-0.00004, 0",
    "0.00006, 0.0001",
    "-0.00006, -0.0001",
    "100.1000, 100.1",
    "99999.99996, 100000",
    "1e9, 1000000000",
    "-1234567.8901, -1234567.8901"
  })
  void numbersHaveFourDecimalsAtMost(double value, String text) {
    assertEquals(text, number(value));
  }

  /**
   * Halves up, as {@link Math#round} has it; a half of a ten-thousandth that is exact in binary.
   */
  @Test
  void halvesGoUp() {
    assertEquals("0.0313", number(0.03125));
    assertEquals("-0.0312", number(-0.03125));
  }

  @Test
  void numbersAreThoseOfMathRound() {
    long seed = 20260504;
    Random random = new Random(seed);
    for (int i = 0; i < 20_000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 4);
      String wanted =
          BigDecimal.valueOf(Math.round(value * 10000), 4).stripTrailingZeros().toPlainString();
      assertEquals(wanted, number(value), "seed " + seed + ", " + value);
      double far = new BigDecimal(number(value)).subtract(new BigDecimal(value)).doubleValue();
      assertEquals(0, far, 0.00005 + Math.abs(value) * 1e-15, "seed " + seed + ", " + value);
    }
  }

  @Test
  void digitsArePaddedOrCutToAWidth() {
    assertEquals("0000000042", new Utf8Buffer(1).padded(42, 10).toString());
    assertEquals("345", new Utf8Buffer(1).padded(12345, 3).toString());
    assertEquals("9876543210", new Utf8Buffer(1).whole(9876543210L).toString());
    assertEquals("00affff00c", new Utf8Buffer(1).hex(0xa, 3).hex(0xfffff00c, 7).toString());
  }

  @Test
  void textGrowsInUtf8() {
    Utf8Buffer out = new Utf8Buffer(1);
    StringBuilder all = new StringBuilder();
    for (String s : new String[] {"", "a", "½ · é", "𝄞", "x".repeat(300)}) {
      out.put(s).put(',').put(s).put(s.getBytes(StandardCharsets.UTF_8));
      all.append(s).append(',').append(s).append(s);
    }
    assertArrayEquals(all.toString().getBytes(StandardCharsets.UTF_8), out.toBytes());
    assertEquals(all.toString(), out.toString());
  }
}
