package headcourse.layout.curved;

import headcourse.job.HeadSpec;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.Random;

/** Random curved jobs, the same for the same seed. */
final class RandomHeads {
  private RandomHeads() {}

  static final String[] SHAPES = {
    "segmental", "semicircular", "three-centred", "elliptical", "pointed", "four-centred"
  };

  private static final String[] EXTRADOS = {"concentric", "level", "stepped"};

  /** A job of a shape that could be asked for; not every one can be solved. */
  static JobMaker job(String shape, long seed) {
    Random r = new Random(seed);
    double width = 24 + r.nextInt(145);
    JobMaker m = CurvedJobs.of(shape, width, 5 + r.nextInt(11));
    shapeOwn(m, shape, width, r);
    m.first().target = Length.inches(3.5 + r.nextInt(7));
    m.first().min = Length.inches(2);
    m.first().max = Length.inches(18);
    m.first().clear = Length.inches(1.5);
    if (r.nextBoolean()) {
      CurvedJobs.mortar(m, new double[] {0.125, 0.25, 0.375, 0.5}[r.nextInt(4)]);
    }
    m.first().key = key(r);
    if (r.nextInt(4) == 0) {
      m.first().rhythm = HeadSpec.Rhythm.GRADED;
      m.first().step = Length.inches((1 + r.nextInt(3)) / 16.0);
    }
    m.first().params.put("extrados", EXTRADOS[r.nextInt(3)]);
    m.first().params.put("course", Length.inches(3 + r.nextInt(10)));
    return m;
  }

  private static HeadSpec.Key key(Random r) {
    Length none = Length.ZERO;
    return switch (r.nextInt(4)) {
      case 0 -> null;
      case 1 ->
          new HeadSpec.Key(
              Length.inches(4 + r.nextInt(5)),
              null,
              Length.inches(r.nextInt(3)),
              Length.inches(r.nextInt(3) / 2.0),
              Length.inches(0.5));
      default -> new HeadSpec.Key(null, null, none, none, none);
    };
  }

  private static void shapeOwn(JobMaker m, String shape, double w, Random r) {
    double part = r.nextDouble();
    switch (shape) {
      case "segmental" -> m.first().params.put("rise", Length.inches(w * (0.06 + 0.44 * part)));
      case "semicircular" -> m.first().params.put("stilt", Length.inches(r.nextInt(12)));
      case "three-centred", "elliptical" ->
          m.first().params.put("rise", Length.inches(w * (0.2 + 0.28 * part)));
      case "pointed" -> m.first().params.put("radius", 0.55 + part);
      case "four-centred" -> m.first().params.put("rise", Length.inches(w * (0.33 + 0.3 * part)));
      default -> throw new IllegalArgumentException(shape);
    }
  }
}
