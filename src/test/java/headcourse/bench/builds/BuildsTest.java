package headcourse.bench.builds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Builds whose outcome is known: statistics to 4 σ of the sample, and errors put in by hand. */
class BuildsTest {
  private static final int BUILDS = 10_000;
  private static final Errors NONE = new Errors(0, 0, 0, 0, 0, 0);

  /** Mean and standard deviation of something over builds without checks. */
  private record Sample(double mean, double spread) {
    static Sample of(BuildPlan plan, ToDoubleFunction<Builds> what) {
      Builds b = new Builds(plan);
      double sum = 0;
      double squares = 0;
      for (int i = 0; i < BUILDS; i++) {
        b.draw();
        b.build(false);
        double x = what.applyAsDouble(b);
        sum += x;
        squares += x * x;
      }
      double mean = sum / BUILDS;
      return new Sample(mean, Math.sqrt(squares / BUILDS - mean * mean));
    }

    /**
     * Holds it against theory.
     *
     * @param excess excess kurtosis, which widens the sample's spread of the spread
     */
    void is(double mean, double spread, double excess) {
      assertEquals(mean, this.mean, 4 * spread / Math.sqrt(BUILDS), "mean");
      double within = 4 * spread / 2 * Math.sqrt((2 + excess) / BUILDS);
      assertEquals(spread, this.spread, within, "spread");
    }
  }

  private static Errors only(double cut, double fence, double joint, double key, double site) {
    return new Errors(cut, fence, joint, 0, key, site);
  }

  private static BuildPlan known(BuildPlan p) {
    return new BuildPlan(
        true,
        BuildSide.KNOWN,
        p.settings(),
        p.first(),
        p.second(),
        p.errors(),
        p.mortar(),
        p.mostJoint(),
        p.clear(),
        p.allowed());
  }

  /** Check value 43: n uncorrelated cuts of σ come to σ√n. */
  @ParameterizedTest
  @ValueSource(ints = {1, 4, 13, 40})
  void cutsAddAsTheRootOfTheirNumber(int n) {
    BuildPlan plan = known(Plans.dry(n, true, only(0.4, 0, 0, 0, 0)));
    Sample.of(plan, Builds::firstEnd).is(0, 0.4 * Math.sqrt(n), 0);
    Sample.of(plan, Builds::secondEnd).is(0, 0.4 * Math.sqrt(n), 0);
    // The key's half brings half its cut along, to both sides alike.
    BuildPlan keyed = Plans.dry(n, true, only(0.4, 0, 0, 0, 0));
    Sample.of(keyed, Builds::firstEnd).is(0, 0.4 * Math.sqrt(n + 0.25), 0);
    Sample.of(keyed, b -> b.firstEnd() - b.secondEnd()).is(0, 0.4 * Math.sqrt(2.0 * n), 0);
  }

  /** Check value 43: one bias b for all comes to n·b. */
  @ParameterizedTest
  @ValueSource(ints = {1, 4, 13, 40})
  void aFenceAddsAsTheNumberOfStones(int n) {
    BuildPlan one = known(Plans.dry(n, true, only(0, 0.4, 0, 0, 0)));
    Sample.of(one, Builds::firstEnd).is(0, 0.4 * n, 0);
    // One draw for both sides: the ends move alike.
    assertEquals(0, Sample.of(one, b -> b.firstEnd() - b.secondEnd()).spread(), 1e-9);
    BuildPlan each = known(Plans.dry(n, false, only(0, 0.4, 0, 0, 0)));
    Sample.of(each, Builds::firstEnd).is(0, 0.4 * Math.sqrt(n), 0);
  }

  /** Check value 43: n exponential joints of mean f come to n·f, spread by f√n. */
  @ParameterizedTest
  @ValueSource(ints = {1, 4, 13, 40})
  void dryJointsOnlyOpen(int n) {
    BuildPlan plan = Plans.dry(n, true, only(0, 0, 0.4, 0, 0));
    Sample.of(plan, Builds::firstEnd).is(0.4 * n, 0.4 * Math.sqrt(n), 6.0 / n);
    Sample.of(plan, b -> b.firstEnd() - b.secondEnd()).is(0, 0.4 * Math.sqrt(2.0 * n), 3.0 / n);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 13, 40})
  void mortarJointsGiveAndTake(int n) {
    BuildPlan plan = Plans.mortar(n, true, only(0, 0, 0.79375, 0, 0));
    Sample.of(plan, Builds::firstEnd).is(0, 0.79375 * Math.sqrt(n), 0);
    // Drawn ten times as far off they are held at the most a joint is off: ± 3.175 nearly always.
    BuildPlan wild = Plans.mortar(n, true, only(0, 0, 1000, 0, 0));
    double end = Sample.of(wild, b -> Math.abs(b.firstEnd())).mean();
    assertTrue(end <= n * 3.175 + 1e-9, "held at " + end);
    Sample.of(wild, Builds::firstEnd).is(0, 3.175 * Math.sqrt(n), -2.0 / n + 0.02);
  }

  @Test
  void theKeysPlaceMovesTheSidesOppositeWaysAndTheOpeningBothJambs() {
    BuildPlan key = Plans.dry(5, true, only(0, 0, 0, 0.8, 0));
    Sample.of(key, Builds::firstEnd).is(0, 0.8, 0);
    assertEquals(0, Sample.of(key, b -> b.firstEnd() + b.secondEnd()).spread(), 1e-9);
    // Bearing 100 within 60 to 140: the jamb has to move by 40, half of what the opening is off.
    BuildPlan site = Plans.dry(5, true, only(0, 0, 0, 0, 80));
    double share = 0.682689492;
    Tally t = Builds.run(site, BUILDS);
    double within = 4 * Math.sqrt(share * (1 - share) / BUILDS);
    assertEquals(share, (double) t.unchecked() / BUILDS, within);
    // No check sees the opening.
    assertEquals(t.unchecked(), t.checked());
  }

  /** Errors put in by hand, none drawn. */
  private static Walk walk(BuildPlan plan) {
    return new Walk(plan, plan.first());
  }

  @Test
  void whatStandsTooFarOutComesOffTheNextStone() {
    Walk w = walk(Plans.dry(7, true, NONE));
    w.build(5, w(7), true);
    assertEquals(0, w.end, 1e-9);
    w.build(5, w(7), false);
    assertEquals(5, w.end, 1e-9);
  }

  private static double w(int stones) {
    return Plans.side(stones, true).jamb();
  }

  @Test
  void whatIsOutByNoMoreThanAllowedStays() {
    Walk w = walk(Plans.dry(7, true, NONE));
    for (double off : new double[] {1.5, -1.5}) {
      w.build(off, w(7), true);
      assertEquals(off, w.end, 1e-9);
    }
  }

  @Test
  void whatFallsShortIsSharedByTheNextJoints() {
    Walk w = walk(Plans.dry(7, true, NONE));
    w.build(-6, w(7), true);
    assertEquals(0, w.end, 1e-9);
    // A mortar joint opens by 3.175 at most: 12 short, 9.525 made up at once, the rest after three.
    Walk m = walk(Plans.mortar(7, true, NONE));
    m.build(-12, w(7), true);
    assertEquals(0, m.end, 1e-9);
    Walk few = walk(Plans.mortar(2, true, NONE));
    few.build(-12, w(2), true);
    assertEquals(-12 + 2 * 3.175, few.end, 1e-9);
  }

  @Test
  void landsWithinTheBoundsOfTheBearingAndClearOfTheJamb() {
    // Bearing 100, from 60 to 140; the last joint stands 100 inside the jamb, 40 asked.
    Walk w = walk(Plans.dry(7, true, NONE));
    assertTrue(w.build(40, w(7), false));
    assertEquals(0, w.outside, 1e-9);
    assertTrue(!w.build(40.5, w(7), false));
    assertEquals(0.5, w.outside, 1e-9);
    assertTrue(!w.build(-41, w(7), false));
    assertEquals(1, w.inside, 1e-9);
    // The jamb 65 farther in: the end bears 165 and the joint is 35 from it.
    assertTrue(!w.build(0, w(7) - 65, false));
    assertEquals(5, w.near, 1e-9);
    assertEquals(25, w.outside, 1e-9);
  }

  @Test
  void anEndThatClosesIsTrimmedToItsSkewbackButFallsShort() {
    BuildSide s = Plans.side(7, true);
    BuildSide closing =
        new BuildSide(s.keyEdge(), s.stones(), s.checks(), s.jamb() + 100, -3.175, 0, true);
    BuildPlan p = Plans.dry(7, true, NONE);
    BuildPlan plan =
        new BuildPlan(true, 0, 2, closing, closing, NONE, -1, p.mostJoint(), 40, p.allowed());
    Walk w = walk(plan);
    assertTrue(w.build(9, closing.jamb(), false));
    assertTrue(w.build(-3.1, closing.jamb(), false));
    assertTrue(!w.build(-3.3, closing.jamb(), false));
    assertEquals(0.125, w.inside, 1e-9);
    assertTrue(w.build(-3.3, closing.jamb(), true));
  }

  @Test
  void withoutAKeyBothSidesShareTheMiddleJoint() {
    BuildPlan p = Plans.dry(4, true, only(0, 0, 0.4, 0, 0));
    BuildPlan bare =
        new BuildPlan(false, BuildSide.KNOWN, 2, p.first(), p.second(), p.errors(), -1, 3, 40, 1.5);
    Sample.of(bare, Builds::firstEnd).is(0.4 * 3.5, 0.4 * Math.sqrt(3.25), 6 / 3.25);
    Sample.of(bare, b -> b.firstEnd() + b.secondEnd()).is(0.4 * 7, 0.4 * Math.sqrt(7), 6 / 7.0);
  }

  @Test
  void aMissSaysByHowMuchItsLimitHasToGive() {
    // The jamb alone is off, by 40 as a rule: one in a hundred by more than 2.3263 times that.
    BuildPlan site = Plans.dry(5, true, only(0, 0, 0, 0, 80));
    Tally t = Builds.run(site, BUILDS);
    double within = 4 * 40 * Math.sqrt(0.01 * 0.99 / BUILDS) / 0.02665;
    assertEquals(2.3263 * 40 - 40, t.outside().relief(), within);
    assertEquals(2.3263 * 40 - 40, t.inside().relief(), within);
    double beyond = 0.158655254;
    double spread = 4 * Math.sqrt(beyond * (1 - beyond) / BUILDS);
    assertEquals(beyond, (double) t.outside().builds() / BUILDS, spread);
  }

  @Test
  void theSamePlanIsBuiltTheSameAndAnotherOtherwise() {
    BuildPlan plan = Plans.dry(13, true, Plans.ordinary());
    assertEquals(Builds.run(plan, 500), Builds.run(Plans.dry(13, true, Plans.ordinary()), 500));
    assertEquals(plan.digest(), Plans.dry(13, true, Plans.ordinary()).digest());
    assertNotEquals(plan.digest(), Plans.dry(12, true, Plans.ordinary()).digest());
    assertNotEquals(plan.digest(), Plans.mortar(13, true, Plans.ordinary()).digest());
  }
}
