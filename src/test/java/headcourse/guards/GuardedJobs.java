package headcourse.guards;

import headcourse.job.Answers;
import headcourse.job.Contract;
import headcourse.job.Floor;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Sheathing;
import headcourse.testing.JobMaker;
import headcourse.testing.JobYaml;
import headcourse.testing.RandomJobs;
import headcourse.testing.Records;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Jobs whose sheets are read back: made so that left, right, up and down differ, and by chance. */
final class GuardedJobs {
  /** One line to order, whose corner is drawn with its sizes; each leg another. */
  private static final String ORDERED =
      """
      stone: {thickness: 1 1/4, density: 130 lb/ft3}
      openings:
        - mark: D1
          width: 9'
          head:
            key: {bottom: 8, top: 11, rise: 2, proud: 1/2}
            stones: {min: 5, max: 8 1/2, target: 7 7/16}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        order:
          - {mark: X1, arris: 22, face: 18, return: 6}
      """;

  private GuardedJobs() {}

  static Stream<Arguments> made() {
    List<Arguments> all = new ArrayList<>();
    all.add(Arguments.of("lopsided", lopsided()));
    all.add(Arguments.of("mitred", mitred()));
    all.add(Arguments.of("one corner ordered", JobYaml.job(ORDERED)));
    int found = 0;
    for (long seed = 900; found < Seeds.of(5) && seed < 900 + Seeds.of(60); seed++) {
      JobMaker maker = RandomJobs.flat(seed, 24, 90);
      maker.scratch = Length.inches(0.625);
      Job job = maker.make();
      if (WorkUp.of(job).value().isPresent()) {
        all.add(Arguments.of("seed " + seed, job));
        found++;
      }
    }
    return all.stream();
  }

  /** Every layer of another thickness, a raked head off the middle, its rough head out of level. */
  static Job lopsided() {
    return lopsided(12, HeadSpec.Soffit.RETURNED);
  }

  /** The same of flats joined along the arris: some cuts turn the fence, others tilt the blade. */
  static Job mitred() {
    return lopsided(12, HeadSpec.Soffit.MITRED);
  }

  /** The same with a higher head. */
  static Job higher() {
    return lopsided(13, HeadSpec.Soffit.RETURNED);
  }

  private static Job lopsided(double height, HeadSpec.Soffit soffit) {
    JobMaker m = JobMaker.one();
    // Large enough for whole outlines at full size.
    m.paper = "arch-c";
    m.scratch = Length.inches(0.75);
    m.sheathing = new Sheathing(Length.inches(0.4375), false);
    var o = m.first();
    o.shape = "jack";
    o.soffit = soffit;
    o.headHeight = Length.inches(height);
    o.params.putAll(Map.of("striking", Length.inches(70)));
    o.width = Length.inches(60);
    o.floor = new Floor(Length.inches(30), Length.inches(7));
    o.key =
        new HeadSpec.Key(
            Length.inches(7), null, Length.inches(2), Length.inches(1), Length.inches(0.5));
    o.measured =
        new Measured(
            Length.inches(60.25),
            null,
            null,
            List.of(
                new Measured.Level(Length.inches(-30), Length.ZERO),
                new Measured.Level(Length.inches(30), Length.inches(0.5))),
            null,
            null,
            Length.inches(0.25));
    Job job = m.make();
    Answers answers =
        new Answers(
            new Answers.Lintel("steel", "L6x4", Length.inches(7), null, Length.inches(0.125), 20),
            new Answers.Flashing(Length.inches(1), Length.inches(7)),
            "",
            "");
    Contract contract =
        new Contract("4 Mill Road", "", "", "", List.of("A note."), answers, Map.of());
    return Records.with(job, "info", job.info().with(contract));
  }
}
