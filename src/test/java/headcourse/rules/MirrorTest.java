package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Setting;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** A head seen in a mirror is spoken of as in a mirror. */
class MirrorTest {
  @Test
  void leftForRightGivesRightForLeft() {
    int said = 0;
    for (long seed = 1; seed <= 300; seed++) {
      List<String> straight = messages(random(new Random(seed), false), m -> m);
      List<String> mirrored = messages(random(new Random(seed), true), MirrorTest::swapped);
      assertEquals(straight, mirrored, "seed " + seed);
      said += straight.size();
    }
    assertTrue(said > 3000, "only " + said);
  }

  private static List<String> messages(Scene s, UnaryOperator<String> words) {
    return s.check().stream()
        .map(f -> f.rule() + " " + f.severity() + " " + words.apply(f.message()))
        .sorted()
        .toList();
  }

  private static String swapped(String message) {
    return message
        .replaceAll("\\bL(?=\\d)", "\u0000")
        .replaceAll("\\bR(?=\\d)", "L")
        .replace("\u0000", "R");
  }

  private static Scene random(Random r, boolean mirror) {
    Scene s = new Scene();
    if (r.nextBoolean()) {
      s.job.units = Units.MILLIMETRE;
      s.job.tick = Length.mm(1);
    }
    s.job.first().shape = List.of("soldier", "jack", "segmental", "semicircular").get(r.nextInt(4));
    s.job.first().width = Length.inches(24 + r.nextInt(200));
    s.job.first().headHeight = Length.inches(6 + r.nextInt(16));
    s.job.first().height = r.nextBoolean() ? null : Length.inches(80 + r.nextInt(100));
    s.job.liftingDensity = 1500 + r.nextInt(1500);
    s.job.thickness = Length.inches(0.5 + r.nextInt(20) / 8.0);
    s.stone = Length.inches(2 + r.nextInt(10));
    if (r.nextBoolean()) {
      s.job.joints = Setting.Joints.MORTAR;
      s.job.joint = Length.inches((1 + r.nextInt(12)) / 16.0);
    }
    if (r.nextBoolean()) {
      s.job.courses = List.of(Length.inches(-4), Length.inches(3), Length.inches(11));
    }
    int a = 1 + r.nextInt(8);
    int b = 1 + r.nextInt(8);
    s.left = mirror ? b : a;
    s.right = mirror ? a : b;
    Length wall = Length.inches(2 + r.nextInt(20));
    if (mirror) {
      s.job.first().wallRight = wall;
    } else {
      s.job.first().wallLeft = wall;
    }
    double narrow = 1 + r.nextInt(8);
    String mark = (mirror ? "R" : "L") + (1 + r.nextInt(3));
    s.change(mark, p -> p.bottom = Length.inches(narrow));
    return s;
  }
}
