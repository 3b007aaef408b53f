package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cure.Advice;
import headcourse.cure.Adviser;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.testing.JobYaml;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Openings beside each other, by hand. Each door is 4 ft wide under a dry head of equal stones of 7
 * in beside an 8-in key, so that three a side end 4 + 21 = 25 in out and bear 1 in; the key of 15
 * in makes it 28 1/2 in and 4 1/2 in. Doors whose centre lines stand 56 in apart have a pier of 8
 * in between them.
 */
class PiersTest {
  /** Two doors; %s are place, units, and more of each. */
  private static String doors(
      String unit, double scale, double key, double pier, String a, String b) {
    StringBuilder s = new StringBuilder("units: " + unit + "\n");
    s.append(unit.equals("in") ? "grid: 1/16\n" : "grid: 0.1\n");
    s.append("stone: {thickness: ").append(1.25 * scale).append(", density: 2300 kg/m3}\n");
    s.append("openings:\n");
    double at = 40 * scale;
    for (String more : List.of(a, b)) {
      boolean first = at == 40 * scale;
      s.append("  - mark: ").append(first ? "D1" : "D2").append('\n');
      s.append("    at: ").append(at).append('\n');
      s.append(more);
      s.append("    width: ").append(48 * scale).append('\n');
      s.append("    head:\n");
      s.append("      height: ").append(12 * scale).append('\n');
      s.append("      key: {bottom: ").append(key * scale);
      s.append(", top: ").append(key * scale).append("}\n");
      s.append("      stones: {min: ").append(7 * scale).append(", max: ").append(7 * scale);
      s.append(", each-side: 3}\n");
      s.append("      bearing: {min: ").append(3.5 * scale);
      s.append(", max: ").append(5 * scale).append(", target: ").append(4 * scale).append("}\n");
      s.append("      clear: ").append(scale).append('\n');
      at += (48 + pier) * scale;
    }
    return s.toString();
  }

  private static String inches(double key, double pier) {
    return doors("in", 1, key, pier, "", "");
  }

  private static Outcome<ShopWork> work(String text) {
    return WorkUp.of(JobYaml.job(text));
  }

  private static List<String> said(String text) {
    return work(text).diagnostics().stream().map(Diagnostic::message).toList();
  }

  /** 15 + 42 = 57 in over 48: 4 1/2 in each onto 8 in of pier, 1 in too much. */
  @Test
  void eightInchesForTwiceFourAndAHalf() {
    List<Diagnostic> all = work(inches(15, 8)).diagnostics();
    assertEquals(
        "D1 and D2 overlap: the pier between them is 8\", D1 runs 4 1/2\" past its jamb and D2"
            + " 4 1/2\": 1\" too much",
        all.get(0).message());
    assertEquals(6, all.get(0).span().line());
    assertEquals("D2: stands on the other side of that pier", all.get(1).message());
    assertEquals(15, all.get(1).span().line());
    assertTrue(
        all.get(0).hints().get(all.get(0).hints().size() - 1).contains("give level:"),
        all.get(0).hints().toString());
  }

  /** 9 in of pier is just enough, and 1/16 in less is not. */
  @Test
  void meetingIsNoOverlap() {
    assertEquals(List.of(), said(inches(15, 9)));
    assertTrue(said(inches(15, 9 - 1 / 16.0)).get(0).endsWith(": 1/16\" too much"));
    assertEquals(List.of(), said(doors("mm", 25.4, 15, 9, "", "")));
    String over = doors("mm", 25.4, 15, 9 - 0.1 / 25.4, "", "");
    assertTrue(said(over).get(0).endsWith(": 0.1 mm too much"), said(over).toString());
  }

  /** The same the other way about: the door that the file names second stands on the left. */
  @Test
  void mirrored() {
    String text = inches(15, 8).replace("at: 96.0", "at: -16.0");
    assertEquals(
        "D2 and D1 overlap: the pier between them is 8\", D2 runs 4 1/2\" past its jamb and D1"
            + " 4 1/2\": 1\" too much",
        said(text).get(0));
  }

  /** The widths may vary here, so that ends can give way; every cure offered lets both stand. */
  @Test
  void curesCure() {
    String free = inches(15, 8).replace("min: 7.0, max: 7.0, each-side: 3", "min: 5, max: 9");
    for (String text : List.of(free, free.replace("soldier", "jack"), inches(15, 8))) {
      CureCheck check = new CureCheck();
      check.of(text, "doors");
      assertEquals(List.of(), check.failed);
      assertEquals(text.equals(inches(15, 8)) ? check.helped : 1, check.helped, check.toString());
    }
    Job job = JobYaml.job(free);
    Heads heads = Heads.of(job);
    Piers.Clash clash = new Piers(job).clashes(heads.layouts()).get(0);
    Advice advice = Adviser.between(job, 0, 1, clash.refused(), heads.trying(1));
    // D1 keeps 4 in of its own, or D2 does, or both what they need of the eight.
    List<Change> first = advice.cures().get(0).changes();
    assertEquals("openings[0].wall-right", first.get(0).path());
  }

  /**
   * In two storeys nothing meets; at one level it does, and so it does where the door is taller.
   */
  @Test
  void levels() {
    String low = "    height: 80\n    level: 80\n";
    assertEquals(
        List.of(), said(doors("in", 1, 15, 8, low, low.replace("level: 80", "level: 190"))));
    assertTrue(said(doors("in", 1, 15, 8, low, low)).get(0).contains("overlap"));
    // D2's head stands higher, but its jamb does not: D1 may take the whole pier, and not more.
    String tall = "    height: 120\n    level: 100\n";
    assertEquals(List.of(), said(doors("in", 1, 15, 8, low, tall)));
    assertEquals(List.of(), said(doors("in", 1, 15, 4.5, low, tall)));
    assertTrue(said(doors("in", 1, 15, 4.4375, low, tall)).get(0).endsWith(": 1/16\" too much"));
  }

  /** A wall that reaches into the next opening is a slip, and told at its line. */
  @Test
  void wallsThatCannotBe() {
    String text = doors("in", 1, 15, 10, "    wall-right: 12\n", "    wall-left: 11\n");
    List<Diagnostic> all = work(text).diagnostics();
    assertEquals(
        "D1: there can't be so much wall on the right, because D2 begins 10\" from the jamb",
        all.get(0).message());
    assertEquals(7, all.get(0).span().line());
    assertEquals(
        "D2: there can't be so much wall on the left, because D1 begins 10\" from the jamb",
        all.get(1).message());
    String inside = inches(15, -2);
    assertEquals("D2: begins 62\" along the wall, but D1 ends at 64\"", said(inside).get(0));
  }

  /** Several of one kind have a place each. */
  @Test
  void copies() {
    String one =
        """
        stone: {thickness: 1 1/4}
        openings:
          - mark: W1
            count: 3
            at: [4', 8' 8", 20']
            width: 4'
            head:
              key: {bottom: 15, top: 15}
              stones: {min: 5, max: 9, target: 7, each-side: 3}
              bearing: {min: 3 1/2, max: 4 1/2, target: 4 1/2}
              clear: 1
        """;
    assertTrue(said(one).get(0).startsWith("W1 and W1 overlap: the pier between them is 8\""));
    CureCheck check = new CureCheck();
    check.of(one, "copies");
    assertEquals(List.of(), check.failed);
    assertEquals(1, check.helped);
    Outcome<Job> read = JobYaml.read(one.replace("count: 3", "count: 2"));
    assertTrue(read.diagnostics().get(0).message().contains("expected as many places"));
    read = JobYaml.read(one.replace("count: 3", "count: 1"));
    assertTrue(read.diagnostics().get(0).message().contains("more than one place"));
  }

  /** Mortared heads that meet share a joint: 9 in of pier lack its 3/8 in. */
  @Test
  void aJointLiesBetween() {
    String mortar = "setting: {joints: mortar, joint: 3/8}\n";
    // Three joints a side: 7 1/2 + 3 (7 + 3/8) = 29 5/8 in, so that each bears 5 5/8 in.
    String text = mortar + inches(15, 11.25).replace("min: 3.5, max: 5.0", "min: 3.5, max: 6.0");
    assertTrue(
        said(text).get(0).endsWith("with a joint of 3/8\": 3/8\" too much"), said(text)::toString);
    assertEquals(List.of(), said(text.replace("at: 99.25", "at: 99 5/8")));
  }
}
