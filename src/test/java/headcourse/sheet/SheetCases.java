package headcourse.sheet;

import headcourse.bench.HeadWork;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Language;
import headcourse.job.Measured;
import headcourse.job.Setting;
import headcourse.job.Wall;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import java.util.Arrays;
import java.util.List;

/** The heads that every sheet has to stand. */
public enum SheetCases {
  DOOR_8,
  WINDOW_NARROW,
  CART_DOOR_16,
  BARN_40,
  TINY_STONES,
  MORTAR_METRIC,
  JACK,
  NO_KEY,
  SEGMENTAL,
  SEMICIRCULAR,
  MIXED,
  OUT_OF_LEVEL,
  MITRED_PLAIN,
  BUTTED;

  /** The job worked out. */
  public ShopWork work(String paper, Language language) {
    return work(paper, language, false);
  }

  /** The same, with every outline at full size where {@code every}. */
  public ShopWork work(String paper, Language language, boolean every) {
    JobMaker m = JobMaker.one();
    m.everyOutline = every;
    m.paper = paper;
    m.language = language;
    JobMaker.OpeningMaker o = m.first();
    o.label = "Cart door, east side of the yard";
    double in = 25.4;
    switch (this) {
      case DOOR_8 -> o.key = key(8, 11, 2, 1);
      case WINDOW_NARROW -> o.width = Length.inches(30);
      case CART_DOOR_16 -> {
        o.width = Length.inches(192);
        o.key = key(8, 11, 2, 1);
        return flat(m, even(14, 7.0625 * in), 0);
      }
      case BARN_40 -> {
        o.width = Length.inches(480);
        o.key = key(9, 12, 2, 1);
        return flat(m, even(32, 7.4375 * in), 0);
      }
      case TINY_STONES -> {
        o.width = Length.inches(120);
        o.key = key(4, 5, 0, 0);
        o.headHeight = Length.inches(6);
        return flat(m, even(29, 2.0625 * in), 0);
      }
      case MORTAR_METRIC -> {
        m.units = Units.MILLIMETRE;
        m.tick = Length.mm(1);
        m.joints = Setting.Joints.MORTAR;
        m.joint = Length.mm(8);
        o.width = Length.mm(1200);
        o.headHeight = Length.mm(240);
        o.key =
            new HeadSpec.Key(
                Length.mm(120), Length.mm(160), Length.mm(30), Length.ZERO, Length.ZERO);
        return flat(m, even(6, 107), 0);
      }
      case JACK -> {
        o.width = Length.inches(48);
        o.key = key(5, 6.25, 1, 0);
        return flat(m, even(5, 4.5 * in), 48 * in);
      }
      case NO_KEY -> {
        o.key = null;
        return flat(m, even(7, 7.5 * in), 0);
      }
      case SEGMENTAL -> {
        o.width = Length.inches(72);
        o.headHeight = Length.inches(9);
        Job job = m.make();
        HeadWork head = HeadFixture.arch(job, job.openings().get(0), 12 * in, 13);
        return HeadFixture.work(job, List.of(head));
      }
      case SEMICIRCULAR -> {
        o.width = Length.inches(60);
        o.headHeight = Length.inches(10);
        Job job = m.make();
        HeadWork head = HeadFixture.arch(job, job.openings().get(0), 30 * in, 15);
        return HeadFixture.work(job, List.of(head));
      }
      case OUT_OF_LEVEL -> {
        o.key = key(8, 11, 2, 1);
        o.count = 3;
        o.wallLeft = Length.inches(9);
        o.measured =
            new Measured(
                Length.inches(96),
                null,
                null,
                List.of(
                    new Measured.Level(Length.inches(-48), Length.ZERO),
                    new Measured.Level(Length.ZERO, Length.inches(-0.125)),
                    new Measured.Level(Length.inches(48), Length.inches(0.1875))),
                null,
                null,
                null);
        return flat(m, even(6, 8 * in), 0);
      }
      case MITRED_PLAIN -> {
        m.jambs = Wall.Jambs.PLAIN;
        o.soffit = HeadSpec.Soffit.MITRED;
      }
      case BUTTED -> o.soffit = HeadSpec.Soffit.BUTTED;
      case MIXED -> {
        o.width = Length.inches(120);
        o.key = key(9, 12, 2, 0);
        double[] w = {7, 6.25, 7.875, 5.5, 8.0625, 6.1875, 7.25, 5.9375, 7.5};
        return flat(m, Arrays.stream(w).map(x -> x * in).toArray(), 0);
      }
      default -> throw new IllegalStateException();
    }
    return this == WINDOW_NARROW ? flat(m, even(2, 8.25 * in), 0) : flat(m, even(6, 8 * in), 0);
  }

  private static HeadSpec.Key key(double bottom, double top, double rise, double drop) {
    return new HeadSpec.Key(
        Length.inches(bottom),
        Length.inches(top),
        Length.inches(rise),
        Length.inches(drop),
        Length.inches(0.5));
  }

  private static double[] even(int n, double width) {
    double[] w = new double[n];
    Arrays.fill(w, width);
    return w;
  }

  private static ShopWork flat(JobMaker m, double[] widths, double striking) {
    Job job = m.make();
    return HeadFixture.work(
        job, List.of(HeadFixture.flat(job, job.openings().get(0), widths, striking)));
  }
}
