package headcourse.rules;

import static headcourse.job.Stock.Kind.CORNER;
import static headcourse.job.Stock.Kind.FLAT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Language;
import headcourse.job.Limits;
import headcourse.job.Stock;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlan.Measure;
import headcourse.stock.StockPlan.Reason;
import headcourse.stock.StockPlan.Shortage;
import headcourse.stock.StockPlan.Why;
import headcourse.testing.JobMaker;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.Units;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Findings speak the job's language. */
class RuleWordsTest {
  /** Words that no Spanish sentence has. */
  private static final Pattern ENGLISH =
      Pattern.compile("\\b(the|of|and|with|is|to|than|from|stones?|least|most|edge|end|just)\\b");

  static Stream<String> rules() {
    return RuleBook.cards().stream().map(RuleCard::name);
  }

  /** What a rule says of its example, changed further, in a language. */
  private static List<Finding> said(String rule, Language language, int variant) {
    Scene s = new Scene();
    s.job.language = language;
    if (variant > 0) {
      s.job.units = Units.MILLIMETRE;
      s.job.tick = Length.mm(1);
      s.job.limits = new Limits(2022, Map.of());
      s.job.first().shape = variant == 1 ? "jack" : "segmental";
    }
    RuleExamples.all().get(rule).fires().accept(s);
    return variant == 0 ? s.check(rule) : s.check();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void spanishIsSpanishAndBothAreBoth(String rule) {
    for (int variant = 0; variant < 3; variant++) {
      List<Finding> en = said(rule, Language.EN, variant);
      List<Finding> es = said(rule, Language.ES, variant);
      List<Finding> both = said(rule, Language.EN_ES, variant);
      assertEquals(en.size(), es.size());
      assertEquals(en.size(), both.size());
      for (int i = 0; i < en.size(); i++) {
        Finding a = en.get(i);
        Finding b = es.get(i);
        String place = place(a);
        assertTrue(b.message().startsWith(place), b.message());
        String english = a.message().substring(place.length());
        String spanish = b.message().substring(place.length());
        assertNotEquals(english, spanish);
        assertFalse((english + spanish).matches(".*[{}].*"), english + "\n" + spanish);
        assertFalse(ENGLISH.matcher(spanish).find(), spanish);
        assertEquals(figures(english), figures(spanish), english + "\n" + spanish);
        assertEquals(place + english + " / " + spanish, both.get(i).message());
        assertEquals(a.severity(), b.severity());
        assertFalse(english(b.source()), b.source());
        assertEquals(
            a.source().equals(b.source()) ? a.source() : a.source() + " / " + b.source(),
            both.get(i).source());
      }
    }
  }

  /** Whether a source is described in English; a book keeps its title. */
  private static boolean english(String source) {
    return ENGLISH.matcher(source.replace("Cyclopedia of Architecture", "")).find();
  }

  private static String place(Finding f) {
    return f.stone() != null ? f.stone() + ": " : f.opening() != null ? f.opening() + ": " : "";
  }

  /** The numbers of a sentence, sorted, since languages put them in different places. */
  private static List<String> figures(String text) {
    List<String> found = new ArrayList<>();
    var m = Pattern.compile("[0-9]+([./][0-9]+)?").matcher(text);
    while (m.find()) {
      found.add(m.group());
    }
    return found.stream().sorted().toList();
  }

  @Test
  void englishStandsAsItWasWritten() throws IOException {
    List<String> said = new ArrayList<>();
    for (String rule : RuleExamples.all().keySet()) {
      for (Finding f : said(rule, Language.EN, 0)) {
        said.add(String.join("\t", rule, f.severity().name(), f.message(), f.source()));
      }
    }
    try (InputStream in =
        RuleWordsTest.class.getResourceAsStream("/headcourse/checks/rule-messages.tsv")) {
      String wanted = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      // Line by line, as all of it is too long to read.
      List<String> lines = wanted.lines().toList();
      for (int i = 0; i < lines.size(); i++) {
        assertEquals(lines.get(i), i < said.size() ? said.get(i) : "nothing");
      }
      assertEquals(lines.size(), said.size());
    }
  }

  @Test
  void theSummaryJoinsMarksInEveryLanguage() {
    for (Language language : JobMaker.LANGUAGES) {
      Scene s = new Scene();
      s.job.language = language;
      s.change("L1", p -> p.liftingKg = 25.0).change("K", p -> p.liftingKg = 25.0);
      s.change("L2", p -> p.liftingKg = 25.0).change("L3", p -> p.liftingKg = 25.0);
      List<String> lines =
          RuleBook.summary(s.make(), s.check("lifting")).stream().map(Finding::message).toList();
      String english = "weighs up to 55.1 lb: two people, from 50 lb; check with the local code";
      String spanish = "pesa hasta 55.1 lb: entre dos, desde 50 lb; consultar el código local";
      String wanted =
          switch (language.word()) {
            case "en" -> "D1-L1 to L3, K: " + english;
            case "es" -> "D1-L1 a L3, K: " + spanish;
            case "en+es" -> "D1-L1 to / a L3, K: " + english + " / " + spanish;
            default -> "D1-L1 a / to L3, K: " + spanish + " / " + english;
          };
      assertEquals(List.of(wanted), lines);
    }
  }

  @Test
  void aHairOverALimitIsSaidInSpanishToo() {
    Scene s = new Scene();
    s.job.language = Language.ES;
    s.change("K", p -> p.top = Length.inches(36.001));
    assertTrue(
        s.check("veneer-face").get(0).message().startsWith("D1-K: mide apenas más de 36\" de cara"),
        s.check("veneer-face").get(0).message());
  }

  /** Why no blank fits is said for every kind, measure and case. */
  @Test
  void noBlankSaysWhy() {
    List<Shortage> shorts = new ArrayList<>();
    for (Measure m : Measure.values()) {
      shorts.add(new Shortage(m, Length.inches(15), Length.inches(13)));
    }
    assertEquals(
        "no corner has an arris of 15\" (longest 13\") or a face leg of 15\" (longest 13\") or a"
            + " return leg of 15\" (longest 13\")",
        why(Language.EN, new Reason(Why.SHORT, CORNER, Length.inches(1.25), shorts)));
    assertEquals(
        "ninguna pieza plana tiene un largo de 15\" (el mayor 13\") o un alto de 15\" (el mayor"
            + " 13\")",
        why(Language.ES, new Reason(Why.SHORT, FLAT, Length.inches(1.25), shorts.subList(0, 2))));
    List<String> english = new ArrayList<>();
    for (Stock.Kind kind : Stock.Kind.values()) {
      for (Why w : Why.values()) {
        if (w != Why.SHORT) {
          Reason reason = new Reason(w, kind, Length.inches(1.25), List.of());
          english.add(why(Language.EN, reason));
          assertFalse(ENGLISH.matcher(why(Language.ES, reason)).find(), why(Language.ES, reason));
        }
      }
    }
    assertEquals(
        List.of(
            "there is no corner in the yard",
            "no corner is 1 1/4\" thick",
            "every corner that it fits is taken by other stones",
            "no one corner has all its measures at once",
            "there is no flat in the yard",
            "no flat is 1 1/4\" thick",
            "every flat that it fits is taken by other stones",
            "no one flat has all its measures at once"),
        english);
  }

  private static String why(Language language, Reason reason) {
    Scene s = new Scene();
    s.job.language = language;
    Length l = Length.inches(8);
    s.unfit.add(new StockPlan.Unfit("D1-R2", StockPlan.Part.WHOLE, reason, l, l, Length.ZERO));
    String message = s.check("no-blank").get(0).message();
    return message.substring(message.indexOf('(') + 1, message.lastIndexOf(");"));
  }

  /** Every description of a source that has words is some rule's. */
  @Test
  void describedSourcesAreTheRules() {
    TreeSet<String> sources = new TreeSet<>();
    RuleBook.cards().forEach(c -> sources.add(c.source()));
    said("veneer-weight", Language.EN, 1).forEach(f -> sources.add(f.source()));
    said("bearing-least", Language.EN, 0).forEach(f -> sources.add(f.source()));
    for (String key : SourceWords.KEYS) {
      assertTrue(sources.contains(Words.of("en").say(key)), key);
      assertNotEquals(Words.of("en").say(key), Words.of("es").say(key), key);
    }
    Words es = Words.of("es");
    for (String source : sources) {
      assertFalse(english(SourceWords.say(source, es)), source);
    }
  }
}
