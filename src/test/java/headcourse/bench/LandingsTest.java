package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import org.junit.jupiter.api.Test;

/** Heads of every shape, built in numbers: held against a second, plain way of building them. */
class LandingsTest {
  @Test
  void aSecondWayOfBuildingThemAgrees() {
    int telling = 0;
    for (RandomWork.Case c : RandomWork.cases(Seeds.of(30))) {
      Landing found = Landings.of(c.job(), c.work().layout());
      PlainBuilds plain = new PlainBuilds(c.job(), c.work().layout(), c.name().hashCode());
      agree(c.name() + ", checked", found.checked(), plain, true);
      agree(c.name() + ", unchecked", found.unchecked(), plain, false);
      telling += found.unchecked() > 0.02 && found.unchecked() < 0.98 ? 1 : 0;
    }
    assertTrue(telling > 0, "some heads land sometimes");
  }

  // Both shares are of samples, 10,000 builds and 2,000.
  private static void agree(String name, double share, PlainBuilds plain, boolean checking) {
    int builds = 2000;
    double other = (double) plain.landed(builds, checking) / builds;
    double p = (share * Landings.BUILDS + other * builds + 1) / (Landings.BUILDS + builds + 2);
    double within = 4.5 * Math.sqrt(p * (1 - p) * (1.0 / Landings.BUILDS + 1.0 / builds));
    assertEquals(other, share, within + 1e-12, name);
  }
}
