package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.yaml.JobReader;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.stock.StockPlan;
import headcourse.testing.PageInspector;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Stones that broke, and stones that are good, as a mason reports them from the bench. */
class BenchReportTest {
  /** A door of 8 ft: seven stones of 7 in a side, three to a 24-in corner, all proved. */
  private static final String DOOR =
      """
      units: in
      stone: {density: 140 lb/ft3, thickness: 1 1/4}
      openings:
        - mark: D1
          width: 8'
          head:
            shape: soldier
            height: 12
            key: {bottom: 8, top: 10, rise: 1 1/2, proud: 1/2}
            stones: {min: 5, max: 9, target: 7}
            bearing: {min: 4, max: 8, target: 6}
            clear: 1 1/2
      stock:
        corners:
          - {mark: C1, arris: 24, face: 16, return: 5, count: 12}
      """;

  private static Outcome<ShopWork> worked(String text) {
    Outcome<Job> read =
        JobReader.read(
            "job.yaml",
            text.getBytes(StandardCharsets.UTF_8),
            Shapes.definitions(),
            RuleBook.limits(),
            name -> Optional.empty());
    return read.value().isEmpty()
        ? Outcome.failed(read.diagnostics())
        : WorkUp.of(read.value().get());
  }

  private static StockPlan plan(String report) {
    Outcome<ShopWork> o = worked(DOOR + report);
    return o.value().orElseThrow(() -> new AssertionError(o.diagnostics().toString())).stock();
  }

  /** Each blank with its stones, as in C1#1: L7 L6. */
  private static String said(StockPlan plan) {
    return plan.blanks().stream()
        .map(
            b ->
                b.id()
                    + ": "
                    + b.cuts().stream()
                        .map(c -> c.stone().substring(3))
                        .collect(Collectors.joining(" ")))
        .collect(Collectors.joining("\n"));
  }

  private static String offCuts(StockPlan plan) {
    return plan.offCuts().stream()
        .map(o -> o.id() + " " + o.length().inches() + " " + o.stones())
        .collect(Collectors.joining("; "));
  }

  private static final String TICKETED =
      """
      C1#1: L7 L6 L5
      C1#2: L4 L3 L2
      C1#3: R2 R3 R4
      C1#4: R1 R5 R6
      C1#5: L1 K R7""";

  /** R5 broke: it comes from a blank of its own, everything else stays where its ticket says. */
  private static final String WITHOUT =
      """
      C1#1: L7 L6 L5
      C1#2: L4 L3 L2
      C1#3: R2 R3 R4
      C1#5: L1 K R7
      C1#6: R5""";

  private record Spelling(String report, String plan, String offCuts) {}

  /** R5 broke, and R1 and R6 of the same blank are good: every clear way to write it. */
  @Test
  void oneStoneBrokeAndTwoOfItsBlankAreGood() {
    assertEquals(TICKETED, said(plan("")));
    // R1 at 1/8, R5 at 7 1/4, R6 at 14 3/8: it ends at 21 3/8, a kerf of 1/8 on, and 24 less that
    // is 2 1/2.
    String left = "C1#4/1 2.5 []";
    List<Spelling> all =
        List.of(
            new Spelling("spoiled: [D1-R5]\ncut: [D1-R1, D1-R6]\n", WITHOUT, left),
            new Spelling("cut: [D1-R6, D1-R1]\nspoiled: [D1-R5]\n", WITHOUT, left),
            new Spelling("spoiled: [D1-R5]\ncut: {D1: [R1, R6]}\n", WITHOUT, left),
            new Spelling(
                "spoiled: [D1-R5]\ncut: [{stone: D1-R1}, {stone: D1-R6, piece: C1#4}]\n",
                WITHOUT,
                left),
            new Spelling(
                "spoiled: [D1-R5]\ncut: [{stone: D1-R1, width: 7}, {stone: D1-R6, width: 7}]\n",
                WITHOUT,
                left),
            new Spelling("spoiled: [D1-R5]\nfitted: {D1: {R1: 7, R6: 7}}\n", WITHOUT, left),
            new Spelling("spoiled: [D1-R5]\nfitted: {D1: {R1: 7}}\ncut: [D1-R6]\n", WITHOUT, left),
            new Spelling(
                "spoiled: [D1-R5]\n"
                    + "fitted: {D1: {R1: {width: 7, piece: C1#4}, R6: {width: 7, piece: C1#4}}}\n",
                WITHOUT,
                left),
            // The whole blank is said to be gone, but what was cut from it is good.
            new Spelling("spoiled: [C1#4]\ncut: [D1-R1, D1-R6]\n", WITHOUT, ""),
            new Spelling(
                "spoiled: [C1#4]\n"
                    + "fitted: {D1: {R1: {width: 7, piece: C1#4}, R6: {width: 7, piece: C1#4}}}\n",
                WITHOUT,
                ""),
            // Of R1 and R6 nothing is said: they keep their places on what is left of the blank.
            new Spelling(
                "spoiled: [D1-R5]\n",
                WITHOUT.replace("C1#5", "C1#4/1: R1\nC1#4/2: R6\nC1#5"),
                // 24 less 14 1/4 and a kerf; 7 1/4 less a kerf.
                "C1#4/1 7.125 [D1-R1]; C1#4/2 9.625 [D1-R6]"));
    for (Spelling s : all) {
      StockPlan plan = plan(s.report());
      assertEquals(s.plan(), said(plan), s.report());
      assertEquals(s.offCuts(), offCuts(plan), s.report());
      assertTrue(plan.unfit().isEmpty() && plan.order().isEmpty(), s.report());
      List<StockPlan.Moved> moved = plan.changes();
      assertEquals(
          List.of(new StockPlan.Moved("D1-R5", StockPlan.Part.WHOLE, "C1#4", "C1#6")),
          moved,
          s.report());
    }
  }

  private record Refusal(String report, String message) {}

  /** What can't be meant is told with what to write. */
  @Test
  void whatIsNotClearIsToldWithWhatToWrite() {
    List<Refusal> all =
        List.of(
            new Refusal(
                "spoiled: [R5]\n",
                "'R5' does not say of which opening; expected it before, as D1-R5"),
            new Refusal(
                "spoiled: [D2-R5]\n",
                "no opening has the mark 'D2'; expected D1 before the stone's"),
            new Refusal(
                "spoiled: [C1]\n", "'C1' names no one blank; expected its number too, as C1#1"),
            new Refusal("spoiled: [C1#13]\n", "there are only 12 of C1; expected a number to that"),
            new Refusal(
                "spoiled: [stone five]\n",
                "'stone five' names neither a stone nor a blank; expected a stone with its"
                    + " opening, as D1-R5, or a blank with its number, as C2#3"),
            new Refusal(
                "spoiled: {D1: [R5]}\n",
                "expected a list of stones and blanks, as spoiled: [D1-R5, C2#3]"),
            new Refusal(
                "cut: [C1#4]\n",
                "'C1#4' is a blank; expected the stones that were cut from it, as D1-R4"),
            new Refusal("cut: [D1-R4, D1-R4]\n", "D1-R4 stands here a second time; keep one"),
            new Refusal(
                "cut: {D1: {R4: 7}}\n",
                "sizes stand under fitted:; expected D1: [R4] here, or fitted: {D1: {R4: its"
                    + " width}}"),
            new Refusal(
                "cut: [D1-R4]\nfitted: {D1: {R4: 7}}\n",
                "D1-R4 stands under fitted: too, with its size; keep that and leave it out here"),
            new Refusal(
                "fitted: {D1: {R4}}\n",
                "R4 has no size; expected its width, or where it was cut as ticketed cut:"
                    + " [D1-R4]"),
            new Refusal(
                "fitted: {D1-R4: 7}\n",
                "no opening has the mark 'D1-R4'; expected D1, with the stone below it, as D1: {R4:"
                    + " 7}"),
            new Refusal(
                "cut: [D1-R9]\n",
                "D1 has no stone R9; expected one of L7, L6, L5, L4, L3, L2, L1, K, R1, R2, R3, R4,"
                    + " R5, R6, R7"));
    for (Refusal r : all) {
      var said = worked(DOOR + r.report()).diagnostics();
      assertEquals(1, said.size(), r.report() + said);
      assertEquals(r.message(), said.get(0).message(), r.report());
      assertTrue(said.get(0).span().line() > DOOR.lines().count(), r.report());
    }
  }

  /** Blanks that gave a stone give no third: what is left of them counts. */
  @Test
  void whatIsLeftOfABlankCounts() {
    StockPlan plan = plan("fitted: {D1: {L2: 7, R3: 7}}\n");
    assertEquals(
        """
        C1#1: L7 L6 L5
        C1#2/1: L4 L3
        C1#3/1: R2
        C1#3/2: R4
        C1#4: R1 R5 R6
        C1#5: L1 K R7""",
        said(plan));
    // L2 lay at 14 3/8: less a kerf 14 1/4, and 24 less 21 1/2 behind it.
    assertEquals(
        "C1#2/1 14.25 [D1-L4, D1-L3]; C1#2/2 2.5 []; C1#3/1 7.125 [D1-R2]; C1#3/2 9.625 [D1-R4]",
        offCuts(plan));
    assertTrue(plan.changes().isEmpty());
  }

  /** A stone that came out 1/8 wide pushes the next one on its blank along, by what it took. */
  @Test
  void aWiderStoneTakesMoreOfItsBlank() {
    StockPlan plan = plan("fitted: {D1: {R2: 7 1/8}}\n");
    StockPlan.CutBlank rest =
        plan.blanks().stream().filter(b -> b.id().startsWith("C1#3")).findFirst().orElseThrow();
    assertEquals("C1#3/1", rest.id());
    // 1/8 clean, 7 1/8, a kerf: 7 3/8; the rest is 16 5/8.
    assertEquals(16.625, rest.length().inches(), 1e-9);
    assertEquals(0, rest.cuts().get(0).at().inches(), 1e-9);
  }

  /** What was cut a second time and is good stays where it was moved to. */
  @Test
  void aStoneThatBrokeAndWasCutAgainIsDone() {
    StockPlan plan = plan("spoiled: [D1-R5]\ncut: [D1-R1, D1-R5, D1-R6]\n");
    assertEquals(WITHOUT.replace("\nC1#6: R5", ""), said(plan));
    // 24 less a clean cut of 1/8, 7 and a kerf.
    assertEquals("C1#4/1 2.5 []; C1#6/1 16.75 []", offCuts(plan));
    // It broke twice: the second comes from what is left of the first one's blank.
    StockPlan twice = plan("spoiled: [D1-R5, D1-R5]\ncut: [D1-R1, D1-R6]\n");
    assertEquals("C1#6/1: R5", said(twice).lines().reduce((a, b) -> b).orElseThrow());
    assertEquals(2, twice.changes().size());
  }

  /** The next plan draws on the off-cuts, so that no further blank is opened. */
  @Test
  void theNextPlanTakesTheOffCuts() {
    String few = DOOR.replace("count: 12", "count: 6");
    Outcome<ShopWork> o =
        worked(few + "spoiled: [D1-R5, D1-R2]\ncut: [D1-R1, D1-R6, D1-R3, D1-R4]\n");
    StockPlan plan = o.value().orElseThrow().stock();
    assertTrue(plan.unfit().isEmpty(), plan.unfit().toString());
    // Both fit on the sixth: 1/8 + 7 + 1/8 + 7.
    assertEquals(
        "C1#6: R5 R2", said(plan).lines().filter(l -> l.startsWith("C1#6")).findFirst().get());
    Outcome<ShopWork> third =
        worked(few + "spoiled: [D1-R5, D1-R2, C1#6/1]\ncut: [D1-R1, D1-R6, D1-R3, D1-R4, D1-R5]\n");
    StockPlan last = third.value().orElseThrow().stock();
    // What is left of the sixth broke too: none is left for R2.
    assertEquals("D1-R2", last.unfit().get(0).stone());
    assertEquals("", last.changes().get(last.changes().size() - 1).to());
  }

  /** Stones of a fan reach under each other: the long point of what is planned counts. */
  @Test
  void anOffCutIsAsLongAsWhatIsPlannedOnIt() {
    String fan =
        DOOR.replace("width: 8'", "width: 4'\n    measured: {width: 4' 0 1/4\", centre-off: 1/8}")
            .replace("shape: soldier", "shape: jack")
            .replace("key: {bottom: 8, top: 10, rise: 1 1/2, proud: 1/2}", "key: {bottom: 5}")
            .replace("stones: {min: 5, max: 9, target: 7}", "stones: {min: 4, max: 8, target: 5}")
            .replace("        clear: 1 1/2\n", "");
    int held = 0;
    for (StockPlan.CutBlank ticketed : worked(fan).value().orElseThrow().stock().blanks()) {
      for (StockPlan.Cut good : ticketed.cuts()) {
        String report = "cut: [" + good.stone() + "]\n";
        StockPlan plan = worked(fan + report).value().orElseThrow().stock();
        for (StockPlan.CutBlank b : plan.blanks()) {
          for (StockPlan.Cut c : b.offCut() ? b.cuts() : List.<StockPlan.Cut>of()) {
            assertTrue(c.at().plus(c.extent()).compareTo(b.length()) <= 0, report + b);
            held++;
          }
        }
      }
    }
    assertTrue(held > 5, held + " held");
  }

  /** Identical openings: one of two stones with a mark is cut. */
  @Test
  void oneOfTwoIdenticalStonesIsCut() {
    String two = DOOR.replace("width: 8'", "width: 8'\n    count: 2");
    StockPlan before = worked(two).value().orElseThrow().stock();
    StockPlan after = worked(two + "cut: [D1-R4]\n").value().orElseThrow().stock();
    long was = count(before, "D1-R4");
    assertEquals(2, was);
    assertEquals(1, count(after, "D1-R4"));
    assertEquals(2, count(after, "D1-R5"));
    assertEquals(
        0, count(worked(two + "cut: [D1-R4, D1-R4]\n").value().orElseThrow().stock(), "D1-R4"));
  }

  private static long count(StockPlan plan, String stone) {
    return plan.blanks().stream()
        .flatMap(b -> b.cuts().stream())
        .filter(c -> c.stone().equals(stone))
        .count();
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        collect(g.marks(), labels);
      } else if (mark instanceof Mark.Label l) {
        labels.add(l.text());
      }
    }
  }

  /** The sheet names each off-cut, how long it is, and what comes from it. */
  @Test
  void theCuttingPlanShowsTheOffCuts() {
    ShopWork work = worked(DOOR + "spoiled: [D1-R5]\ncut: [D1-R1, D1-R4]\n").value().orElseThrow();
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      assertEquals(List.of(), PageInspector.faults(page));
      if (page.label().startsWith("plan")) {
        collect(page.marks(), labels);
      }
    }
    String all = " " + String.join(" ", labels) + " ";
    assertTrue(all.contains(" Off-cuts in the yard "), all);
    assertTrue(all.contains(" C1#4/1 corner 9 5/8\" 16\" 5\" D1-R6 "), all);
    // R2 and R3 of the third blank: R4 lay at 14 3/8, less a kerf.
    assertTrue(all.contains(" C1#3/1 corner 14 1/4\" 16\" 5\" D1-R2, D1-R3 "), all);
    assertTrue(all.contains(" C1#3/2 corner 2 1/2\" 16\" 5\" – "), all);
    assertTrue(all.contains("4 blanks and 2 off-cuts"), all);
    String json = LayoutJson.write(work).replaceAll("\\s+", "");
    assertTrue(json.contains("{\"id\":\"C1#4/1\",\"blank\":\"C1#4\",\"lengthMm\":244.475"), json);
    assertTrue(json.contains("\"offCutOf\":\"C1#4\""), json);
  }
}
