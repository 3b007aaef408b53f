package headcourse.testing;

import headcourse.job.HeadSpec;
import headcourse.job.Setting;
import headcourse.job.Stock;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import java.util.Random;

/**
 * Valid jobs with one flat head, from a seed: both units, both grids of each, dry and mortared,
 * with and without a key, walls short and ample. Most can be solved; some can't.
 */
public final class RandomJobs {
  private final Random random;
  private JobMaker maker;
  private JobMaker.OpeningMaker opening;
  private Grid grid;

  private RandomJobs(long seed) {
    // Neighbouring seeds of Random begin alike, so they are spread first.
    random = new Random(seed * 0x9E3779B97F4A7C15L + 0x1234567);
  }

  /** A job for a seed, its opening from 12 in to 40 ft wide, most of them under 20 ft. */
  public static JobMaker flat(long seed) {
    RandomJobs r = new RandomJobs(seed);
    double most = r.random.nextInt(10) == 0 ? 480 : r.random.nextInt(3) == 0 ? 240 : 100;
    return r.make(12, most);
  }

  /** A job for a seed, its opening between two widths in inches. */
  public static JobMaker flat(long seed, double least, double most) {
    return new RandomJobs(seed).make(least, most);
  }

  private JobMaker make(double least, double most) {
    maker = JobMaker.one();
    opening = maker.first();
    boolean inches = random.nextBoolean();
    maker.units = inches ? Units.INCH : Units.MILLIMETRE;
    maker.tick =
        inches
            ? Length.inches(random.nextBoolean() ? 1 / 16.0 : 1 / 32.0)
            : Length.mm(random.nextBoolean() ? 1 : 0.5);
    maker.paper = inches ? "letter" : "a4";
    grid = new Grid(maker.tick);
    opening.width = between(least, most);
    opening.headHeight = between(6, 16);
    opening.reveal = between(3, 5);
    opening.shape = random.nextInt(5) < 3 ? "soldier" : "jack";
    joint();
    stones();
    bearing();
    if (opening.shape.equals("jack")) {
      jack();
    } else {
      soldier();
    }
    if (random.nextInt(6) == 0) {
      Length arris = opening.max.times(3);
      maker.stock =
          new Stock(
              List.of(
                  new Stock.Item(
                      "stock.corners[0]",
                      "C1",
                      Stock.Kind.CORNER,
                      arris,
                      between(17, 20),
                      between(6, 7),
                      maker.thickness,
                      40,
                      false,
                      0)),
              0.1);
    }
    return maker;
  }

  private void joint() {
    if (random.nextBoolean()) {
      return;
    }
    maker.joints = Setting.Joints.MORTAR;
    // An even number of steps, so that a head without a key begins on the grid too.
    maker.joint = grid.ticks(2 * (1 + random.nextInt((int) (grid.floor(Length.mm(10)) / 2))));
    maker.opens = Length.ZERO;
  }

  private void stones() {
    double target = 4 + 6 * random.nextDouble();
    opening.target = snap(target);
    opening.min = snap(target * (0.55 + 0.3 * random.nextDouble()));
    opening.max = snap(target * (1.15 + 0.5 * random.nextDouble()));
    opening.seed = random.nextInt(1000);
    opening.mirror = random.nextInt(4) != 0;
    opening.rhythm =
        List.of(HeadSpec.Rhythm.EVEN, HeadSpec.Rhythm.GRADED, HeadSpec.Rhythm.MIXED)
            .get(random.nextInt(3));
    opening.step =
        opening.rhythm == HeadSpec.Rhythm.GRADED
            ? grid.ticks(random.nextInt(7) - 3)
            : grid.ticks(random.nextInt(Math.max(1, (int) grid.floor(Length.inches(0.6)))));
    if (opening.rhythm == HeadSpec.Rhythm.MIXED && random.nextInt(4) == 0) {
      opening.jump = opening.step.plus(between(0.5, 2));
    }
  }

  private void bearing() {
    boolean springs = opening.shape.equals("jack") && random.nextBoolean();
    double min = springs ? 0 : 3 + 2 * random.nextDouble();
    double max = springs ? 0.1 : min + 3 + 3 * random.nextDouble();
    opening.bearing = new HeadSpec.Bearing(snap(min), snap(max), snap((min + max) / 2));
    opening.clear = between(0.5, 2);
    if (random.nextInt(3) == 0) {
      opening.wallLeft = between(5, 24);
    }
    if (random.nextInt(3) == 0) {
      opening.wallRight = between(5, 24);
    }
  }

  private void soldier() {
    opening.params.put("ease", 1 + random.nextInt(3));
    if (random.nextInt(5) == 0) {
      opening.key = null;
      return;
    }
    Length bottom = between(5, 10);
    Length taper = random.nextInt(3) == 0 ? Length.ZERO : between(0, 2.5);
    opening.key = new HeadSpec.Key(bottom, bottom.plus(taper), maybe(2), maybe(1), maybe(0.5));
  }

  private void jack() {
    switch (random.nextInt(4)) {
      case 0 -> opening.params.put("skewback", Angle.degrees(58 + random.nextInt(25)));
      case 1 -> opening.params.put("striking", between(40, 140));
      case 2 -> opening.params.put("rake", Angle.ofRate(0.25 + random.nextInt(3) * 0.125, 4));
      default -> {}
    }
    opening.params.put("divide", List.of("top", "soffit", "angle").get(random.nextInt(3)));
    if (random.nextInt(3) == 0) {
      opening.params.put("camber", Angle.ofRate(1 / 8.0, 12));
    }
    if (random.nextInt(5) == 0) {
      opening.key = null;
      return;
    }
    Length width = between(4, 9);
    boolean below = random.nextBoolean();
    opening.key =
        new HeadSpec.Key(
            below ? width : null, below ? null : width.times(2), maybe(2), maybe(1), maybe(0.5));
  }

  private Length maybe(double most) {
    return random.nextBoolean() ? Length.ZERO : between(0, most);
  }

  private Length between(double least, double most) {
    return snap(least + (most - least) * random.nextDouble());
  }

  private Length snap(double inches) {
    return grid.snap(Length.inches(inches));
  }
}
