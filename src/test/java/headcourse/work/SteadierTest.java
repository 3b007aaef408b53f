package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.statics.AsSolid;
import headcourse.statics.Standing.Verdict;
import headcourse.testing.JobYaml;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said to cure a head that reads as hanging does. */
class SteadierTest {
  private static String text(String head, String more) {
    return """
        units: in
        grid: 1/16
        stone: {kind: sandstone, density: 140 lb/ft3, thickness: 1 1/4}
        openings:
          - {mark: D1, width: 18', reveal: 4, head: {%s}}
        %s
        """
        .formatted(head, more);
  }

  private static AsSolid read(Job job) {
    return WorkUp.of(job).value().orElseThrow().heads().get(0).asSolid();
  }

  private static List<List<Change>> cures(String text) {
    Job job = JobYaml.job(text);
    AsSolid solid = read(job);
    assertNotEquals(Verdict.STANDS, solid.standing().verdict());
    for (List<Change> cure : solid.cures()) {
      Job cured = job.spans().rewriting().with(cure).value().orElseThrow();
      assertEquals(Verdict.STANDS, read(cured).standing().verdict(), cure.toString());
    }
    return solid.cures();
  }

  @Test
  void aThinFlatHeadIsMadeDeeper() {
    List<List<Change>> cures =
        cures(text("shape: soldier, height: 8, stones: {min: 5, max: 9, target: 7}", ""));
    assertEquals("openings[0].head.height", cures.get(0).get(0).path());
    // Two other ways: longer bearings with less depth, or bearings alone.
    assertEquals(3, cures.size(), cures.toString());
    assertTrue(
        cures.subList(1, 3).stream()
            .allMatch(c -> c.stream().anyMatch(x -> x.path().endsWith("bearing.target"))),
        cures.toString());
    // One step of the grid less does not do.
    Job job =
        JobYaml.job(text("shape: soldier, height: 8, stones: {min: 5, max: 9, target: 7}", ""));
    double inches = job(cures.get(0), job).openings().get(0).head().height().inches();
    Change less = new Change("openings[0].head.height", "" + (inches - 1 / 16.0), "");
    Job one = job.spans().rewriting().with(List.of(less)).value().orElseThrow();
    assertEquals(Verdict.PUSHES, read(one).standing().verdict());
  }

  private static Job job(List<Change> cure, Job job) {
    return job.spans().rewriting().with(cure).value().orElseThrow();
  }

  @Test
  void aFanHasMoreThanOneWay() {
    List<List<Change>> cures =
        cures(
            text(
                "shape: jack, height: 9, skewback: 75, stones: {min: 3, max: 9, target: 6}",
                "limits: {thrust: 2}"));
    assertTrue(cures.size() >= 2 && cures.size() <= 3, cures.toString());
  }

  /** Nothing would keep it up; a steeper rake lets less depth do. */
  @Test
  void aHeadThatFallsHasTwoWays() {
    List<List<Change>> cures =
        cures(
            text(
                    "shape: jack, height: 5, rake: 1/2 in 4, key: {top: 10, rise: 4},"
                        + " stones: {min: 3, max: 9, target: 6}",
                    "")
                .replace("18'", "12'"));
    assertTrue(cures.size() >= 2, cures.toString());
    assertTrue(
        cures.stream()
            .anyMatch(c -> c.size() == 2 && c.stream().anyMatch(x -> x.path().endsWith(".rake"))),
        cures.toString());
  }

  @Test
  void aFlatArchIsMadeToRise() {
    List<List<Change>> cures =
        cures(
            text(
                "shape: segmental, rise: 18, height: 8, stones: {min: 3, max: 12, target: 7}",
                "limits: {thrust: 1}"));
    assertEquals("openings[0].head.rise", cures.get(0).get(0).path(), cures.toString());
    assertEquals(2, cures.size(), cures.toString());
  }
}
