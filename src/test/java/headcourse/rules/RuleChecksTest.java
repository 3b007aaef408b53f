package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.Limits;
import headcourse.job.Setting;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Values from outside, each with its source in the data file, through the rule book. */
class RuleChecksTest {
  static Stream<List<String>> rules() {
    return Table.of("rules.csv").stream();
  }

  static Stream<List<String>> lifting() {
    return Table.of("lifting.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsWhatTheSourceSays(List<String> row) {
    Scene scene = new Scene();
    Units units = row.get(1).contains("units=mm") ? Units.MILLIMETRE : Units.INCH;
    if (units == Units.MILLIMETRE) {
      scene.job.units = units;
      scene.job.tick = Length.mm(1);
    }
    for (String pair : row.get(1).split(" ")) {
      int at = pair.indexOf('=');
      set(scene, units, pair.substring(0, at), pair.substring(at + 1));
    }
    List<Finding> found = scene.check(row.get(2));
    String said =
        found.stream()
            .map(Finding::severity)
            .sorted()
            .map(Severity::word)
            .findFirst()
            .orElse("none");
    assertEquals(row.get(3), said, row.toString());
  }

  private static void set(Scene s, Units units, String key, String word) {
    if (key.equals("units")) {
      return;
    }
    if (key.equals("shape")) {
      s.job.first().shape = word;
      return;
    }
    double value = Double.parseDouble(word);
    Length length = units.of(value);
    switch (key) {
      case "width" -> s.job.first().width = length;
      case "depth" -> s.job.first().headHeight = length;
      case "clear" -> s.job.first().clear = length;
      case "least" ->
          s.job.first().bearing = new HeadSpec.Bearing(length, Length.inches(12), length);
      case "key" -> s.key = length;
      case "stone" -> s.stone = length;
      case "side" -> s.left = s.right = (int) value;
      case "bearing" -> s.bearing = length;
      case "rise" -> s.rise = length;
      case "joint" -> {
        s.job.joints = Setting.Joints.MORTAR;
        s.job.joint = length;
      }
      case "key-rise" ->
          s.job.first().key =
              new HeadSpec.Key(
                  Length.inches(10), Length.inches(10), length, Length.ZERO, Length.ZERO);
      case "thickness" -> s.job.thickness = length;
      case "density" -> s.job.liftingDensity = value * Figures.KG_PER_LB / Figures.M3_PER_FT3;
      case "edition" -> s.job.limits = new Limits((int) value, Map.of());
      case "area" -> s.change("K", p -> p.areaM2 = value * Figures.M2_PER_IN2);
      case "face" -> s.change("K", p -> p.top = length);
      case "return" -> s.change("K", p -> p.returnDepth = length);
      case "bed" -> s.bed = length;
      case "scratch" -> s.scratch = length;
      case "mass" ->
          s.change("K", p -> p.liftingKg = units == Units.INCH ? value * Figures.KG_PER_LB : value);
      default -> throw new IllegalArgumentException(key);
    }
  }

  @ParameterizedTest
  @MethodSource("lifting")
  void allowsWhatTheLiftingEquationDoes(List<String> row) {
    NioshLift lift =
        new NioshLift(
            Length.inches(Double.parseDouble(row.get(1))),
            Length.inches(Double.parseDouble(row.get(2))),
            Length.inches(Double.parseDouble(row.get(3))),
            Angle.degrees(Double.parseDouble(row.get(4))),
            1,
            1);
    assertEquals(Double.parseDouble(row.get(5)), lift.limitLb(), 0.01, row.toString());
    assertEquals(lift.limitLb() / 2.2046226, lift.limitKg(), 1e-5);
  }
}
