package headcourse.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every way to write a length or an angle; sizes are arithmetic from 1 in = 25.4 mm by definition.
 */
class LengthNotationTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "16'|192",
        "2' 4 1/2\"|28.5",
        "2'-4 1/2\"|28.5",
        "2'4\"|28",
        "7 15/16\"|7.9375",
        "7 15/16|7.9375",
        "7.5\"|7.5",
        "0|0",
        "-1/8|-0.125",
        "6 ft|72",
        "6 ft 3 in|75",
        "2′ 4½″|28.5",
        "64 ¹⁄₈\"|64.125",
        "64¹⁄₈\"|64.125",
        "¹⁵⁄₁₆|0.9375",
        "7-1/2|7.5",
        "1' 0 1/16\"|12.0625",
        "25.4 mm|1",
        "2.54 cm|1",
        "0.0254 m|1"
      })
  void inches(String text, double inches) throws NotationException {
    assertEquals(Length.inches(inches), LengthParser.parse(text, Units.INCH));
  }

  @ParameterizedTest
  @CsvSource({"190,190", "1.2 m,1200", "19 cm,190", "0.5,0.5", "12.125 mm,12.125", "3',914.4"})
  void millimetres(String text, double mm) throws NotationException {
    assertEquals(Length.mm(mm), LengthParser.parse(text, Units.MILLIMETRE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "NaN",
        "1e300",
        "Infinity",
        "0x10",
        "7 17/16",
        "1/0",
        "2' 12\"",
        "7,5",
        "1_000",
        "--1",
        "12 furlongs",
        "1 2 3",
        "1001 m",
        "999999999999",
        "٣",
        ".",
        "7 15/",
        "'"
      })
  void refuses(String text) {
    assertThrows(NotationException.class, () -> LengthParser.parse(text, Units.INCH));
    assertThrows(NotationException.class, () -> AngleParser.parse(text + " ;", Units.INCH));
  }

  @ParameterizedTest
  @CsvSource({
    "12,12",
    "12°,12",
    "12.5 deg,12.5",
    "-3,-3",
    "1/2 in 12,2.385944",
    "1:24,2.385944",
    "1/8 per foot,0.596809",
    "1/2 in 4 per foot of span,7.125016",
    "10 mm per m,0.572939"
  })
  void angles(String text, double degrees) throws NotationException {
    assertEquals(degrees, AngleParser.parse(text, Units.INCH).degrees(), 1e-6);
  }

  @Test
  void printedLengthsReadBackUnderAnyLocale() throws NotationException {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"en-US", "de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        for (long seed = 0; seed < 2000; seed++) {
          Random random = new Random(seed);
          boolean inch = random.nextBoolean();
          Units units = inch ? Units.INCH : Units.MILLIMETRE;
          Grid grid =
              new Grid(inch ? Length.inches(1.0 / (1 << random.nextInt(8))) : Length.mm(0.5));
          Length l = grid.ticks(random.nextInt(20_000) - 5_000);
          LengthFormat f = new LengthFormat(units, grid);
          for (String s :
              new String[] {
                f.tape(l), f.building(l), f.withUnit(l), f.plain(l), f.plainWithUnit(l)
              }) {
            assertEquals(l, LengthParser.parse(s, units), tag + " seed " + seed + ": " + s);
          }
        }
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /** What is written into a job file is read again as the same step of its grid. */
  @Test
  void plainIsReadAgain() throws NotationException {
    for (Length tick :
        List.of(
            Length.mm(1),
            Length.mm(0.5),
            Length.mm(0.0625),
            Length.mm(0.1),
            Length.inches(1 / 64.0))) {
      Grid grid = new Grid(tick);
      LengthFormat format = new LengthFormat(Units.MILLIMETRE, grid);
      for (long ticks : new long[] {0, 1, 3, 31, 3629, -3629}) {
        Length length = grid.ticks(ticks);
        assertEquals(
            length, LengthParser.parse(format.plain(length), Units.MILLIMETRE), tick + " " + ticks);
      }
    }
    Grid fine = new Grid(Length.mm(0.0625));
    assertEquals("226.8125", new LengthFormat(Units.MILLIMETRE, fine).plain(Length.mm(226.8125)));
    assertEquals("226.813", new LengthFormat(Units.MILLIMETRE, fine).tape(Length.mm(226.8125)));
  }
}
