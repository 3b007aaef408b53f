package headcourse.testing;

import headcourse.job.HeadSpec;
import headcourse.job.Setting;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import java.util.Random;

/**
 * Valid jobs with one curved head, from a seed: the six shapes take turns, then the three kinds of
 * extrados; both units, dry and mortared, with and without a key. Most can be solved; some can't.
 */
public final class RandomArches {
  /** The shapes. */
  public static final List<String> SHAPES =
      List.of(
          "segmental", "semicircular", "three-centred", "elliptical", "pointed", "four-centred");

  private static final List<String> EXTRADOS = List.of("concentric", "level", "stepped");

  private final Random random;
  private final JobMaker maker = JobMaker.one();
  private final JobMaker.OpeningMaker opening = maker.first();
  private Grid grid;

  private RandomArches(long seed) {
    random = new Random(seed * 0x9E3779B97F4A7C15L + 0x7654321);
  }

  /** A job for a seed, its opening from 2 to 14 ft wide. */
  public static JobMaker job(long seed) {
    return new RandomArches(seed).make(seed);
  }

  private JobMaker make(long seed) {
    boolean inches = random.nextBoolean();
    maker.units = inches ? Units.INCH : Units.MILLIMETRE;
    maker.tick =
        inches
            ? Length.inches(random.nextBoolean() ? 1 / 16.0 : 1 / 32.0)
            : Length.mm(random.nextBoolean() ? 1 : 0.5);
    grid = new Grid(maker.tick);
    opening.mark = "A1";
    opening.label = "Arch";
    opening.shape = SHAPES.get((int) (seed % SHAPES.size()));
    double width = 24 + random.nextInt(145);
    opening.width = snap(width);
    opening.headHeight = snap(5 + random.nextInt(11));
    opening.target = snap(3.5 + random.nextInt(7));
    opening.min = snap(2);
    opening.max = snap(18);
    opening.clear = snap(1.5);
    opening.reveal = snap(3 + random.nextInt(3));
    if (random.nextBoolean()) {
      maker.joints = Setting.Joints.MORTAR;
      maker.joint = snap(0.125 * (1 + random.nextInt(4)));
      maker.opens = Length.ZERO;
    }
    opening.key = key();
    if (random.nextInt(4) == 0) {
      opening.rhythm = HeadSpec.Rhythm.GRADED;
      opening.step = snap((1 + random.nextInt(3)) / 16.0);
    }
    opening.params.put("extrados", EXTRADOS.get((int) (seed / SHAPES.size() % 3)));
    opening.params.put("course", snap(3 + random.nextInt(10)));
    if (random.nextInt(4) == 0) {
      opening.params.put("arris", "worked");
    }
    own(width);
    return maker;
  }

  private HeadSpec.Key key() {
    Length none = Length.ZERO;
    return switch (random.nextInt(4)) {
      case 0 -> null;
      case 1 ->
          new HeadSpec.Key(
              snap(4 + random.nextInt(5)),
              null,
              snap(random.nextInt(3)),
              snap(random.nextInt(3) / 2.0),
              snap(0.5));
      default -> new HeadSpec.Key(null, null, none, none, none);
    };
  }

  private void own(double width) {
    double part = random.nextDouble();
    switch (opening.shape) {
      case "segmental" -> opening.params.put("rise", snap(width * (0.06 + 0.43 * part)));
      case "semicircular" -> opening.params.put("stilt", snap(random.nextInt(12)));
      case "three-centred", "elliptical" ->
          opening.params.put("rise", snap(width * (0.2 + 0.28 * part)));
      case "pointed" -> opening.params.put("radius", 0.55 + part);
      case "four-centred" -> opening.params.put("rise", snap(width * (0.33 + 0.3 * part)));
      default -> throw new IllegalArgumentException(opening.shape);
    }
  }

  private Length snap(double inches) {
    return grid.snap(Length.inches(inches));
  }
}
