package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Setting;
import headcourse.units.Length;
import headcourse.units.LengthParser;
import headcourse.units.NotationException;
import headcourse.units.Units;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What moves behind a head, and what of it is printed. */
class MovementTest {
  private static final Pattern LIMIT = Pattern.compile("limit L/600 = ([^,;]+?),");

  private static String said(Scene s, String rule) {
    return s.check(rule).get(0).message();
  }

  private static String said(double inches, String rule) {
    Scene s = new Scene();
    s.job.first().width = Length.inches(inches);
    return said(s, rule);
  }

  private static String limit(String message) {
    Matcher m = LIMIT.matcher(message);
    assertTrue(m.find(), message);
    return m.group(1);
  }

  /**
   * IRC R703.7.2 (R703.8.2 from 2015): a 600th of the span; MSJC 1.10.1: 0.3 in at most. Rounded
   * down to a grid of 1/16 in, to 1/32 where that leaves nothing.
   */
  @ParameterizedTest
  @CsvSource({
    "30, 0.050, 1/32\"",
    "48, 0.080, 1/16\"",
    "96, 0.160, 1/8\"",
    "180, 0.300, 1/4\"",
    "240, 0.300, 1/4\"",
  })
  void deflectionIsPrintedOnTheSafeSide(double span, double most, String printed)
      throws NotationException {
    String text = limit(said(span, "framing-deflection"));
    assertEquals(printed, text);
    assertTrue(LengthParser.parse(text, Units.INCH).inches() <= most + 1e-12, text);
  }

  @Test
  void theCapIsSaidWhereItGoverns() {
    assertTrue(said(240, "framing-deflection").contains("with the cap of 0.3 in"));
    assertTrue(!said(180, "framing-deflection").contains("cap"));
  }

  @Test
  void everyPrintedDeflectionIsWithinTheLimit() throws NotationException {
    for (int span = 24; span <= 300; span += 3) {
      double most = Math.min(span / 600.0, 0.3);
      String text = limit(said(span, "framing-deflection"));
      double read = LengthParser.parse(text, Units.INCH).inches();
      assertTrue(read <= most + 1e-12 && read > 0, span + ": " + text);
      Scene metric = new Scene();
      metric.job.units = Units.MILLIMETRE;
      metric.job.tick = Length.mm(1);
      metric.job.first().width = Length.mm(span * 25);
      String mm = limit(said(metric, "framing-deflection"));
      double readMm = LengthParser.parse(mm, Units.MILLIMETRE).mm();
      assertTrue(readMm <= Math.min(span * 25 / 600.0, 7.62) + 1e-9 && readMm > 0, mm);
    }
  }

  /**
   * Statics: the ends of a simple beam under an even load that sags L/600 turn 3.2/600 each, those
   * of a parabola 4/600; over 12 in of height both ends close 0.128 and 0.160 in.
   */
  @Test
  void aDryHeadOfTwelveInchesClosesByAnEighthOrSo() {
    double q = 3;
    double l = 96;
    double ei = 5 * q * Math.pow(l, 4) / 384 / (l / 600);
    double beam = 2 * 12 * q * Math.pow(l, 3) / 24 / ei;
    assertEquals(0.128, beam, 1e-12);
    String message = said(96, "dry-closing");
    assertTrue(message.contains("12\" high closes 0.13 in (simple beam) to 0.16 in (parabola)"));
    assertTrue(message.contains("soft joints that give 3/16\" in all"), message);
    assertEquals(message, said(200, "dry-closing").replace("200", "96"), "whatever the span");
  }

  @Test
  void mortarJointsAreNotSaidToClose() {
    Scene s = new Scene();
    s.job.joints = Setting.Joints.MORTAR;
    s.job.joint = Length.inches(0.375);
    assertTrue(s.check("dry-closing").isEmpty());
  }
}
