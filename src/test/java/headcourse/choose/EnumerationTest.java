package headcourse.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.bench.StackUp;
import headcourse.job.Choosing;
import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Vary;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.stock.StockPlanner;
import headcourse.testing.JobMaker;
import headcourse.testing.JobYaml;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What is enumerated and what of it is left out, against trying every number with every width and
 * every key, each head set out by itself with its widths given.
 */
class EnumerationTest {
  /** A head tried: what it is, and how good. */
  private record Tried(
      String what, double shortfall, boolean stackUp, int blanks, double off, double lap) {
    boolean outdoneBy(Tried o) {
      boolean worse =
          o.shortfall <= shortfall
              && (!o.stackUp || stackUp)
              && o.blanks <= blanks
              && o.off <= off + 1e-9
              && o.lap >= lap - 1e-9;
      boolean better =
          o.shortfall < shortfall
              || !o.stackUp && stackUp
              || o.blanks < blanks
              || o.off < off - 1e-9
              || o.lap > lap + 1e-9;
      return worse && better;
    }
  }

  @Test
  void equalsBruteForce() {
    int compared = 0;
    int several = 0;
    for (long seed = 1; compared < Seeds.of(50); seed++) {
      JobMaker maker = RandomJobs.flat(120_000 + seed, 24, 70);
      maker.first().shape = "soldier";
      maker.first().params.keySet().retainAll(Set.of("ease"));
      maker.first().rhythm = Rhythm.EVEN;
      maker.first().step = Length.ZERO;
      if (maker.first().key == null
          || maker.first().key.bottom() == null
          || compared % 3 == 0 && maker.stock.items().isEmpty()) {
        continue;
      }
      // The reader gives a soldier's key both widths.
      Job read = maker.make();
      maker.first().key = maker.first().key.upright(read.units(), read.grid());
      Job job = maker.make();
      Opening o = job.openings().get(0);
      Length tick = job.grid().tick();
      List<Length> bottoms =
          List.of(o.head().key().bottom(), o.head().key().bottom().plus(tick.times(8)));
      Job varied = varied(job, bottoms);
      List<Tried> all = brute(job, bottoms);
      Enumeration found = Enumeration.of(varied, 0);
      long at = seed;
      // What the solver sets apart is one more head, which this does not try.
      boolean alike =
          found.kept().stream()
              .allMatch(
                  k ->
                      k.candidate()
                          .arrangement()
                          .left()
                          .equals(k.candidate().arrangement().right()));
      if (!alike) {
        continue;
      }
      assertEquals(all.size(), found.all(), () -> "seed " + at);
      TreeSet<String> expected = new TreeSet<>();
      for (Tried t : all) {
        if (all.stream().noneMatch(t::outdoneBy)) {
          expected.add(t.what + " of " + t.blanks);
        }
      }
      TreeSet<String> are = new TreeSet<>();
      for (Enumeration.Kept k : found.kept()) {
        are.add(what(k.candidate().arrangement().head().get()) + " of " + k.blanks());
      }
      assertEquals(expected, are, () -> "seed " + at);
      compared++;
      several += all.size() > are.size() && are.size() > 1 ? 1 : 0;
    }
    assertTrue(several > compared / 4, "only " + several + " with something left out");
  }

  private static Job varied(Job job, List<Length> bottoms) {
    Opening o = job.openings().get(0);
    List<String> values = bottoms.stream().map(b -> b.mm() + " mm").toList();
    Vary vary = new Vary(List.of(new Vary.Dial("key.bottom", values)), 1.1, 1.4);
    return job.withOpenings(
        List.of(
            new Opening(
                o.path(),
                o.mark(),
                o.label(),
                o.count(),
                o.at(),
                o.level(),
                o.width(),
                o.height(),
                o.reveal(),
                o.wallLeft(),
                o.wallRight(),
                o.measured(),
                o.head(),
                o.floor(),
                new Choosing(vary, "", false))));
  }

  private static List<Tried> brute(Job job, List<Length> bottoms) {
    Opening o = job.openings().get(0);
    HeadSpec head = o.head();
    HeadSpec.Key key = head.key();
    Length taper = key.top().minus(key.bottom());
    List<Tried> all = new ArrayList<>();
    TreeSet<String> seen = new TreeSet<>();
    for (Length bottom : bottoms) {
      HeadSpec keyed =
          head.with(
              new HeadSpec.Key(bottom, bottom.plus(taper), key.rise(), key.drop(), key.proud()));
      long most = job.grid().floor(head.stones().max());
      for (long w = job.grid().ceil(head.stones().min()); w <= most; w++) {
        long reach = job.grid().ceil(o.width().half().plus(head.bearing().max()));
        for (int n = 1; n * w <= reach; n++) {
          List<Length> widths = java.util.Collections.nCopies(n, job.grid().ticks(w));
          HeadSpec given = keyed.with(given(keyed.stones(), widths));
          Job one = job.withOpenings(List.of(o.with(given)));
          if (Shapes.named("soldier").orElseThrow().setOut(one, one.openings().get(0))
                  instanceof Solution.Solved s
              && seen.add(what(s.head()))) {
            all.add(tried(one, s.head()));
          }
        }
      }
    }
    return all;
  }

  private static HeadSpec.Stones given(HeadSpec.Stones s, List<Length> widths) {
    return new HeadSpec.Stones(
        s.min(),
        s.max(),
        s.target(),
        s.step(),
        s.jump(),
        s.eachSide(),
        s.rhythm(),
        s.mirror(),
        s.seed(),
        s.prefer(),
        s.give(),
        new HeadSpec.Widths(widths, widths));
  }

  private static Tried tried(Job job, HeadLayout head) {
    HeadWork work = HeadBench.workUp(job, head);
    var plan = StockPlanner.plan(job, List.of(work));
    int blanks =
        plan.blanks().size()
            + plan.order().stream()
                .filter(l -> l.stock().isEmpty())
                .mapToInt(l -> l.count() - l.spares())
                .sum();
    boolean stackUp =
        work.stackUps().stream().map(StackUp::shortfall).anyMatch(s -> s.most().isPositive());
    double joint = job.setting().joint().mm();
    double lap = Double.POSITIVE_INFINITY;
    double widths = 0;
    for (JointLine j : head.joints()) {
      double mark = j.soffitMark().mm();
      double jamb = head.jamb(j.side()).mm();
      boolean end = j.outer().isEmpty();
      double far = end ? mark : mark + joint;
      lap = Math.min(lap, mark > jamb ? mark - jamb : jamb - far);
    }
    var s = head.opening().head().stones();
    widths = s.widths().left().get(0).mm();
    return new Tried(
        what(head),
        head.proof().shortfall().mm(),
        stackUp,
        blanks,
        Math.abs(widths - s.target().mm()),
        lap);
  }

  /** The feet of all edges, and the key's two ends. */
  private static String what(HeadLayout head) {
    StringBuilder text = new StringBuilder();
    head.stones().stream()
        .filter(s -> s.side() != Side.LEFT)
        .forEach(
            s ->
                text.append(s.feet().rightSoffit())
                    .append(s.feet().rightTop())
                    .append(s.role() == Role.KEY ? "|" : " "));
    return text.toString();
  }

  /** Nothing is better known than that no tolerance spoils the end. */
  @Test
  void theFirstHasNoStackUpWarningWhereAnyHasNone() {
    int told = 0;
    for (long seed = 1; told < Seeds.of(12); seed++) {
      JobMaker maker = RandomJobs.flat(160_000 + seed, 30, 90);
      if (maker.first().rhythm == Rhythm.MIXED) {
        continue;
      }
      maker.first().mirror = true;
      Job job = JobYaml.job(JobYaml.of(maker));
      Enumeration found = Enumeration.of(job, 0);
      boolean any = found.kept().stream().anyMatch(k -> !k.candidate().stackUp());
      boolean all = found.kept().stream().noneMatch(k -> k.candidate().stackUp());
      if (found.kept().isEmpty()) {
        continue;
      }
      Choice first = Choices.of(job, 0).pictured().get(0);
      long at = seed;
      assertEquals(
          !any,
          first.worked().orElseThrow().findings().stream()
              .anyMatch(f -> f.rule().equals("stack-up")),
          () -> "seed " + at);
      told += any && !all ? 1 : 0;
    }
  }

  @Test
  void ofWidthsLessThanAStepApartOneCounts() {
    Job job =
        JobYaml.job(
            """
            stone: {thickness: 1 1/4}
            openings:
              - width: 5'
                head: {shape: jack, key: {bottom: 7}, stones: {min: 4, max: 8, target: 5}}
            """);
    Enumeration found = Enumeration.of(job, 0);
    assertFalse(found.kept().isEmpty());
    for (Enumeration.Kept a : found.kept()) {
      for (Enumeration.Kept b : found.kept()) {
        if (a != b
            && a.candidate().arrangement().stones() == b.candidate().arrangement().stones()) {
          double apart =
              Math.abs(
                  a.candidate().arrangement().widths().mm()
                      - b.candidate().arrangement().widths().mm());
          assertTrue(apart / a.candidate().arrangement().stones() > job.grid().tick().mm() - 1e-6);
        }
      }
    }
  }
}
