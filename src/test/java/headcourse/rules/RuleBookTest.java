package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.job.Accepted;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RuleBookTest {
  static Stream<String> rules() {
    return RuleBook.cards().stream().map(RuleCard::name);
  }

  @Test
  void everyRuleHasAnExampleOfItsOwnAndNoExampleIsLeftOver() {
    assertEquals(new TreeSet<>(rules().toList()), new TreeSet<>(RuleExamples.all().keySet()));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void speaksAndKeepsSilent(String rule) {
    RuleExamples.Example example = RuleExamples.all().get(rule);
    Scene fires = new Scene();
    example.fires().accept(fires);
    assertFalse(fires.check(rule).isEmpty(), rule + " keeps silent");
    Scene silent = new Scene();
    example.silent().accept(silent);
    assertEquals(List.of(), silent.check(rule));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void saysWhereAndWhoStandsBehindIt(String rule) {
    Scene scene = new Scene();
    RuleExamples.all().get(rule).fires().accept(scene);
    RuleCard card =
        RuleBook.cards().stream().filter(c -> c.name().equals(rule)).findFirst().orElseThrow();
    for (Finding f : scene.check(rule)) {
      String place = f.stone() != null ? f.stone() : f.opening();
      assertTrue(place == null || f.message().startsWith(place + ": "), f.message());
      assertEquals(card.code(), f.message().endsWith("check with the local code"), f.message());
      assertFalse(f.source().isBlank());
      String lower = f.message().toLowerCase(Locale.ROOT);
      assertFalse(lower.contains("complies") || lower.contains("compliant"), f.message());
      assertFalse(lower.contains("null") || lower.contains("nan"), f.message());
    }
  }

  @Test
  void everyRuleNamesASourceAndWhatItIsWorth() {
    Set<String> names = new TreeSet<>();
    for (RuleCard card : RuleBook.cards()) {
      assertTrue(card.name().matches("[a-z]+(-[a-z]+)*"), card.name());
      assertTrue(names.add(card.name()), "twice: " + card.name());
      assertFalse(card.what().isBlank() || card.source().isBlank(), card.name());
      assertEquals(
          card.status() == Finding.SourceStatus.PRACTICE,
          card.source().equals("common practice, no source"),
          card.name());
    }
  }

  @Test
  void thresholdsAreNamedOnce() {
    List<String> names = RuleBook.limits().stream().map(ParamDef::name).toList();
    assertEquals(names.size(), new TreeSet<>(names).size());
    assertTrue(RuleBook.limits().stream().noneMatch(d -> d.help().isBlank()));
  }

  @Test
  void theJobsThresholdGoesBeforeTheRules() {
    Scene s = new Scene();
    s.job.first().shape = "jack";
    s.job.first().headHeight = Length.inches(10);
    assertEquals(1, s.check("arch-depth").size());
    assertEquals(List.of(), s.limit("arch-depth", Length.inches(10)).check("arch-depth"));
  }

  @Test
  void aCurvedHeadsOwnLimitGoesBeforeTheRules() {
    Scene s = new Scene();
    s.change("R1", p -> p.chordDeviation = 4.0);
    assertEquals(1, s.check("chord-deviation").size());
    s.job.first().params.put("arris-limit", Length.mm(4));
    assertEquals(List.of(), s.check("chord-deviation"));
    s.job.first().params.put("arris-limit", Length.mm(1));
    assertEquals(1, s.check("chord-deviation").size());
    s.job.first().params.put("arris", "worked");
    assertEquals(List.of(), s.check("chord-deviation"));
  }

  @Test
  void wallCoursesAreForFlatHeads() {
    Scene s = new Scene();
    s.job.courses =
        List.of(Length.inches(0), Length.inches(6), Length.inches(12), Length.inches(18));
    assertEquals(1, s.check("four-corners").size());
    assertEquals(2, s.check("stacked-joints").size());
    s.job.first().shape = "semicircular";
    assertEquals(List.of(), s.check("four-corners"));
    assertEquals(List.of(), s.check("stacked-joints"));
    assertEquals(List.of(), CourseClosers.of(s.make(), s.heads(s.make()).get(0)));
  }

  @Test
  void openingByOpeningGravestFirstThenLeftToRightAndTheWholeJobLast() {
    Scene s = new Scene();
    s.job.openings.add(new headcourse.testing.JobMaker.OpeningMaker());
    s.job.openings.get(1).mark = "A2";
    s.each(p -> p.liftingKg = 30.0);
    s.bearing = Length.inches(3);
    List<Finding> found = s.check();
    List<String> openings = new ArrayList<>();
    for (Finding f : found) {
      if (openings.isEmpty() || openings.get(openings.size() - 1) != f.opening()) {
        openings.add(f.opening());
      }
    }
    assertEquals(java.util.Arrays.asList("D1", "A2", null), openings);
    for (String mark : List.of("D1", "A2")) {
      List<Severity> order =
          found.stream().filter(f -> mark.equals(f.opening())).map(Finding::severity).toList();
      assertEquals(order.stream().sorted(Comparator.naturalOrder()).toList(), order);
    }
    assertEquals(
        List.of("L6", "L5", "L4", "L3", "L2", "L1", "K", "R1", "R2", "R3", "R4", "R5", "R6"),
        found.stream()
            .filter(f -> f.rule().equals("lifting") && f.opening().equals("D1"))
            .map(f -> f.stone().substring(3))
            .toList());
    assertEquals(found, s.check());
  }

  @Test
  void acceptedFindingsCarryTheReasonWhereTheyAreMeant() {
    Scene s = new Scene();
    s.job.openings.add(new headcourse.testing.JobMaker.OpeningMaker());
    s.job.openings.get(1).mark = "D2";
    s.bearing = Length.inches(3);
    s.job.accepted.add(new Accepted("accept[0]", "bearing-asked", "D2", "owner knows"));
    s.job.accepted.add(new Accepted("accept[1]", "veneer-weight", "", "engineer's letter"));
    List<Finding> found = s.check();
    for (Finding f : found) {
      String reason =
          f.rule().equals("veneer-weight")
              ? "engineer's letter"
              : f.rule().equals("bearing-asked") && f.opening().equals("D2") ? "owner knows" : null;
      assertEquals(reason, f.accepted(), f.message());
    }
    assertTrue(found.stream().anyMatch(f -> f.rule().equals("veneer-weight")));
    assertTrue(found.stream().anyMatch(Finding::standing));
    assertEquals(List.of(), RuleBook.unknownAcceptances(s.job.make()));
  }

  @Test
  void unknownRulesAndOpeningsAreReportedWithTheNearest() {
    Scene s = new Scene();
    s.job.accepted.add(new Accepted("accept[0]", "vener-wieght", "", "why"));
    s.job.accepted.add(new Accepted("accept[1]", "waste", "D7", "why"));
    List<Diagnostic> said = RuleBook.unknownAcceptances(s.job.make());
    assertEquals(2, said.size());
    assertEquals("no rule is called 'vener-wieght'", said.get(0).message());
    assertEquals(List.of("did you mean veneer-weight?"), said.get(0).hints());
    assertEquals("no opening is marked 'D7'", said.get(1).message());
    assertEquals(List.of("did you mean D1?"), said.get(1).hints());
    assertNull(said.get(0).span());
  }

  @Test
  void theSummaryPutsAlikeStonesOnOneLineAndLosesNothing() {
    Scene s = new Scene();
    s.change("L1", p -> p.liftingKg = 25.0).change("R1", p -> p.liftingKg = 25.0);
    s.change("K", p -> p.liftingKg = 40.0);
    List<Finding> all = s.check("lifting");
    assertEquals(3, all.size());
    List<String> lines = RuleBook.summary(s.make(), all).stream().map(Finding::message).toList();
    assertEquals(
        List.of(
            "D1-L1, R1: weighs up to 55.1 lb: two people, from 50 lb; check with the local code",
            "D1-K: weighs up to 88.2 lb: two people, from 50 lb; check with the local code"),
        lines);
    List<Finding> once = RuleBook.summary(s.make(), s.check());
    assertEquals(once, RuleBook.summary(s.make(), once));
  }

  @Test
  void marksInARowAreSaidAsARun() {
    assertEquals(
        List.of("L1 to L6", "K", "R1 to R3", "R5", "R6"),
        FindingSummary.runs(
            List.of("L6", "L5", "L4", "L3", "L2", "L1", "K", "R1", "R2", "R3", "R5", "R6"), "to"));
    assertEquals(List.of("L2", "L1", "R1"), FindingSummary.runs(List.of("L2", "L1", "R1"), "to"));
  }

  @Test
  void aHairOverALimitDoesNotReadLikeTheLimit() {
    Scene s = new Scene();
    s.change("K", p -> p.top = Length.inches(36.001));
    assertEquals(
        "D1-K: measures just over 36\" across its face; an adhered piece at most 36\"; check with"
            + " the local code",
        s.check("veneer-face").get(0).message());
  }

  @Test
  void otherLocalesChangeNothing() {
    Scene s = new Scene();
    List<Finding> here = s.check();
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr-TR", "de-DE", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertNotEquals(before, Locale.getDefault());
        assertEquals(here, s.check());
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
