package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cure.Advice;
import headcourse.diag.Source;
import headcourse.diag.Span;
import headcourse.job.HeadSpec;
import headcourse.job.Spans;
import headcourse.layout.Solution;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.CureCheck;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What cannot be is named, and every change that is offered makes it possible. */
class RefusalTest {
  private static Solution.Refused refused(JobMaker m) {
    return assertInstanceOf(Solution.Refused.class, CurvedJobs.solve(m));
  }

  private static void everyChangeWorks(String shape, Consumer<JobMaker> ask, String says) {
    JobMaker m = CurvedJobs.of(shape, 48, 8);
    ask.accept(m);
    Advice r = CureCheck.advice(m);
    assertTrue(r.problems().get(0).message().contains(says), r.problems().get(0).message());
    assertFalse(r.cures().isEmpty(), () -> "no cure: " + says);
    assertEquals(List.of(), new CureCheck().of(m, shape + " " + says).failed);
  }

  private static Consumer<JobMaker> with(Object... params) {
    return m -> {
      for (int i = 0; i < params.length; i += 2) {
        Object v = params[i + 1] instanceof Integer n ? Length.inches(n) : params[i + 1];
        m.first().params.put((String) params[i], v);
      }
    };
  }

  @Test
  void measuresThatMakeNoCurve() {
    everyChangeWorks("segmental", with("rise", 30), "no more than half its span");
    everyChangeWorks("segmental", with("radius", 20), "does not reach across");
    everyChangeWorks("segmental", with("rise", Length.mm(2)), "is flat");
    everyChangeWorks("semicircular", with("rise", 20), "segmental");
    everyChangeWorks("three-centred", with("rise", 26), "no more than half its span");
    everyChangeWorks("three-centred", with("haunch-radius", 30), "half the span");
    everyChangeWorks("three-centred", with("haunch-radius", 20, "rise", 15), "corner");
    everyChangeWorks("three-centred", with("radius", 20, "rise", 15), "corner");
    everyChangeWorks("three-centred", with("radius", 20, "haunch-radius", 15), "corner");
    everyChangeWorks("three-centred", with("radius", 60), "corner");
    Length sharp = Length.mm(6);
    everyChangeWorks("three-centred", with("rise", Length.mm(18)), "at least 1/200");
    everyChangeWorks("three-centred", with("haunch-radius", sharp), "at least 1/200");
    everyChangeWorks("three-centred", with("haunch-radius", sharp, "rise", 12), "at least 1/200");
    everyChangeWorks("three-centred", with("haunch-radius", sharp, "radius", 30), "at least 1/200");
    everyChangeWorks("three-centred", with("radius", Length.inches(47.8)), "at least 1/200");
    everyChangeWorks("elliptical", with("rise", 2), "a tenth");
    everyChangeWorks("pointed", with("radius", 0.4), "half the span");
    everyChangeWorks("pointed", with("rod", 20), "half the span");
    everyChangeWorks("pointed", with("rise", 20), "half the span");
    everyChangeWorks("four-centred", with("rise", 10), "between");
    everyChangeWorks("four-centred", with("haunch-radius", 24), "between 1/200");
    everyChangeWorks("four-centred", with("haunch-radius", Length.mm(6)), "this makes it 15/64");
    everyChangeWorks("four-centred", with("rise", Length.mm(8)), "between 1/200");
    everyChangeWorks("four-centred", with("radius", 20), "this makes it 26 3/16");
    everyChangeWorks("four-centred", with("radius", 20, "haunch-radius", 8), "radius of at least");
  }

  @Test
  void measuresThatContradictEachOther() {
    everyChangeWorks("segmental", with("rise", 6, "radius", 40), "the radius 40\" makes it");
    everyChangeWorks("semicircular", with("radius", 25), "half the span makes it 24\"");
    everyChangeWorks("semicircular", with("stilt", 4, "rise", 30), "the stilt makes it 28\"");
    everyChangeWorks(
        "three-centred", with("rise", 16, "haunch-radius", 12, "radius", 50), "makes it");
    everyChangeWorks("pointed", with("radius", 1.0, "rise", 30), "makes it");
    everyChangeWorks("pointed", with("radius", 1.0, "rod", 40), "makes it 48\"");
    everyChangeWorks("pointed", with("radius", 0.75, "point", "lancet"), "makes it drop");
    everyChangeWorks(
        "segmental",
        m ->
            m.first().key =
                new HeadSpec.Key(
                    Length.inches(6), Length.inches(6), Length.ZERO, Length.ZERO, Length.ZERO),
        "sides square to the soffit");
  }

  @Test
  void stonesThatDoNotFit() {
    everyChangeWorks("segmental", m -> m.first().eachSide = 20, "allowed");
    everyChangeWorks(
        "segmental",
        m -> {
          m.first().min = Length.inches(7.5);
          m.first().max = Length.inches(7.75);
          m.first().target = Length.inches(7.75);
        },
        "allowed");
    everyChangeWorks("segmental", m -> m.first().wallLeft = Length.inches(2), "past the jamb");
    everyChangeWorks(
        "semicircular",
        m -> {
          m.first().params.put("extrados", "level");
          m.first().wallRight = Length.inches(5);
        },
        "the wall only 5\"");
    everyChangeWorks("segmental", with("extrados", "stepped"), "needs the wall's courses");
    everyChangeWorks(
        "segmental", m -> m.first().rhythm = HeadSpec.Rhythm.MIXED, "is for flat heads");
    everyChangeWorks(
        "segmental",
        m ->
            m.first().key =
                new HeadSpec.Key(Length.inches(60), null, Length.ZERO, Length.ZERO, Length.ZERO),
        "wider than the whole head");
    everyChangeWorks(
        "segmental",
        m -> {
          m.first().key =
              new HeadSpec.Key(null, Length.inches(8), Length.ZERO, Length.ZERO, Length.ZERO);
          with("extrados", "stepped", "course", 7).accept(m);
        },
        "by its lower width");
    everyChangeWorks(
        "semicircular",
        m ->
            m.first().key =
                new HeadSpec.Key(
                    null, Length.inches(2), Length.ZERO, Length.inches(30), Length.ZERO),
        "sides meet");
    everyChangeWorks(
        "semicircular",
        m ->
            m.first().key =
                new HeadSpec.Key(
                    Length.inches(8), null, Length.ZERO, Length.inches(23), Length.ZERO),
        "flatter than 30°");
    everyChangeWorks(
        "semicircular",
        m ->
            m.first().key =
                new HeadSpec.Key(Length.inches(44), null, Length.ZERO, Length.ZERO, Length.ZERO),
        "flatter than 30°");
  }

  /** A contradiction points at both places in the file. */
  @Test
  void contradictionsHavePlaces() {
    JobMaker m = CurvedJobs.of("segmental", 48, 8);
    with("rise", 6, "radius", 40).accept(m);
    Source file = Source.of("job.yaml", "rise: 6\nradius: 40\n");
    m.spans =
        new Spans(
            Map.of(
                "openings[0].head.rise", new Span(file, 1, 7, 1),
                "openings[0].head.radius", new Span(file, 2, 9, 2)));
    Solution.Refused r = refused(m);
    assertEquals("job.yaml:1:7", r.problems().get(0).span().place());
    assertEquals("job.yaml:2:9", r.problems().get(1).span().place());
  }

  /** Whatever is written, the answer is a head or a refusal, and never a crash. */
  @ParameterizedTest
  @FieldSource("SHAPES")
  void senselessMeasures(String shape) {
    double[] values = {-30, 0, 1e-9, 0.01, 0.5, 1, 7, 23.99, 24, 24.01, 36, 48, 100, 5000, 1e6};
    String[] keys = {
      "rise", "radius", "haunch-radius", "stilt", "rod", "top", "shoulder", "course", "arris-limit"
    };
    for (int seed = 0; seed < Seeds.of(200); seed++) {
      Random r = new Random(seed);
      JobMaker m =
          CurvedJobs.of(shape, r.nextBoolean() ? 48 : 12 + r.nextInt(468), 0.25 + r.nextInt(40));
      for (String key : keys) {
        if (r.nextInt(4) == 0) {
          double v = values[r.nextInt(values.length)];
          boolean ratio = shape.equals("pointed") && key.equals("radius");
          m.first().params.put(key, ratio ? (Object) v : Length.inches(v));
        }
      }
      m.first()
          .params
          .put("extrados", new String[] {"concentric", "level", "stepped"}[r.nextInt(3)]);
      m.first().key =
          r.nextBoolean()
              ? null
              : new HeadSpec.Key(
                  r.nextBoolean() ? null : Length.inches(r.nextInt(60)),
                  r.nextBoolean() ? null : Length.inches(r.nextInt(60)),
                  Length.inches(r.nextInt(20)),
                  Length.inches(r.nextInt(20)),
                  Length.ZERO);
      if (r.nextBoolean()) {
        m.first().rhythm = HeadSpec.Rhythm.GRADED;
        m.first().step = Length.inches(r.nextInt(9) - 4);
      }
      CurvedJobs.mortar(m, r.nextInt(3));
      m.first().eachSide = r.nextBoolean() ? null : 1 + r.nextInt(40);
      try {
        if (CurvedJobs.solve(m) instanceof Solution.Refused refused) {
          assertFalse(refused.problems().isEmpty());
        }
      } catch (RuntimeException e) {
        throw new AssertionError(shape + ", seed " + seed + " " + m.first().params, e);
      }
    }
  }

  static final String[] SHAPES = RandomHeads.SHAPES;
}
