package headcourse.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.Care;
import headcourse.job.HeadSpec;
import headcourse.job.Language;
import headcourse.job.Setting;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.Tape;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** How often a head lands, as the finished pages say it, against layout.json and by hand. */
class LandsOnSheetsTest {
  private static ShopWork work(Consumer<JobMaker> change) {
    JobMaker m = JobMaker.one();
    change.accept(m);
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  private static String printed(ShopWork work, Bundle bundle) {
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, bundle, Frame.plain()).pages()) {
      collect(page.marks(), labels);
    }
    return String.join(" ", labels).replaceAll("[\\p{Cf}]", "").replaceAll("\\s+", " ");
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Label label) {
        labels.add(Tape.raised(label.text()));
      } else if (mark instanceof Mark.Group group) {
        collect(group.marks(), labels);
      }
    }
  }

  private static List<String> found(String pattern, String text) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    assertTrue(m.find(), pattern + " in " + text);
    List<String> groups = new ArrayList<>();
    for (int i = 1; i <= m.groupCount(); i++) {
      groups.add(m.group(i));
    }
    return groups;
  }

  private static void hardly(JobMaker m) {
    // Care so rough that some builds fail either way, and not as many.
    Length off = Length.inches(1 / 16.0);
    m.care = new Care(Care.OWN, off, off, off, off.half(), off, off.times(8));
  }

  private static void jack(JobMaker m) {
    m.first().shape = "jack";
    m.first().width = Length.inches(48);
    m.first().params.put("skewback", Angle.degrees(70));
    m.first().key = new HeadSpec.Key(Length.inches(5), null, Length.ZERO, Length.ZERO, Length.ZERO);
    m.first().min = Length.inches(3);
  }

  private static void segmental(JobMaker m) {
    m.first().shape = "segmental";
    m.first().width = Length.inches(60);
    m.first().params.put("rise", Length.inches(12));
    m.first().key = null;
    m.first().min = Length.inches(4);
    m.first().target = Length.inches(6);
    m.first().step = Length.ZERO;
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(0.375);
    m.opens = Length.ZERO;
  }

  @Test
  void thePagesSayWhatTheFileSays() {
    List<Consumer<JobMaker>> jobs =
        List.of(
            LandsOnSheetsTest::hardly,
            m -> {
              hardly(m);
              jack(m);
            },
            m -> {
              hardly(m);
              segmental(m);
            });
    int differ = 0;
    for (Consumer<JobMaker> job : jobs) {
      for (Language language : List.of(Language.EN, Language.ES)) {
        ShopWork work = work(job.andThen(m -> m.language = language));
        List<String> file =
            found(
                "\"lands\": *\\{\\s*\"builds\": *(\\d+),\\s*\"checked\": *([0-9.]+),"
                    + "\\s*\"unchecked\": *([0-9.]+),\\s*\"care\": *\"(\\w+)\"",
                LayoutJson.write(work));
        List<String> page =
            found(
                language == Language.EN
                    ? "Tried ([0-9,]+) times in numbers with errors by chance, this head lands in"
                        + " ([0-9,]+) builds with the check above, in ([0-9,]+) without\\."
                    : "Probado ([0-9,]+) veces en números con errores al azar, este cabezal queda"
                        + " bien en ([0-9,]+) montajes con la revisión de arriba y en ([0-9,]+) sin"
                        + " ella\\.",
                printed(work, Bundle.WALL));
        int builds = number(page.get(0));
        assertEquals(Integer.parseInt(file.get(0)), builds);
        assertEquals(Double.parseDouble(file.get(1)), number(page.get(1)) / (double) builds, 1e-9);
        assertEquals(Double.parseDouble(file.get(2)), number(page.get(2)) / (double) builds, 1e-9);
        assertEquals("own", file.get(3));
        differ += page.get(1).equals(page.get(2)) ? 0 : 1;
      }
    }
    assertTrue(differ > 0, "the check tells");
  }

  private static int number(String text) {
    return Integer.parseInt(text.replace(",", ""));
  }

  /** The classes as the README's table and the job file's contract have them, in inches. */
  @Test
  void theClassIsNamedAsAnAssumptionWithItsFigures() {
    String[][] classes = {
      {"careful", "careful work", "96", "128", "128", "96", "64", "32"},
      {"ordinary", "ordinary care", "64", "64", "64", "64", "32", "16"},
      {"rough", "rough work", "32", "32", "32", "32", "16", "8"}
    };
    for (String[] c : classes) {
      Care care =
          List.of(Care.CAREFUL, Care.ORDINARY, Care.ROUGH).stream()
              .filter(k -> k.name().equals(c[0]))
              .findFirst()
              .orElseThrow();
      String text = printed(work(m -> m.care = care), Bundle.WALL);
      String part = "(\\S+)\"";
      List<String> said =
          found(
              "Assumed, not measured: ([a-z ]+)\\. Errors as a rule \\(standard deviations\\): a cut "
                  + part
                  + ", the fence "
                  + part
                  + ", a dry joint open "
                  + part
                  + " on average, a reading of the tape "
                  + part
                  + ", the key's place "
                  + part
                  + ", the opening's width "
                  + part,
              text);
      assertEquals(c[1], said.get(0));
      for (int i = 1; i < said.size(); i++) {
        assertEquals(c[i + 1], denominator(said.get(i)), c[0] + " " + i);
      }
    }
    String mortar = printed(work(LandsOnSheetsTest::segmental), Bundle.WALL);
    assertTrue(mortar.contains("a mortar joint ¹⁄₃₂\""), mortar);
    String metric =
        printed(
            work(
                m -> {
                  m.units = Units.MILLIMETRE;
                  m.tick = Length.mm(1);
                  m.care = Care.CAREFUL;
                }),
            Bundle.WALL);
    assertTrue(metric.contains("a cut 0.26 mm, the fence 0.2 mm"), metric);
  }

  private static String denominator(String fraction) {
    StringBuilder s = new StringBuilder();
    assertEquals('¹', fraction.charAt(0), fraction);
    for (char ch : fraction.substring(2).toCharArray()) {
      s.append("₀₁₂₃₄₅₆₇₈₉".indexOf(ch));
    }
    return s.toString();
  }

  /**
   * A 96 in door, six soldiers a side of one width, 1/64 each: the fence puts 6/64 = 3/32 on the
   * end and half the key's 1/128 hardly more; six dry joints open by 3/32 on average; cuts by
   * themselves make √6.25/64. In careful hands it is 6/128.
   */
  @Test
  void whatMovesAnEndMostIsSaidWithWhatToDo() {
    String text = printed(work(m -> {}), Bundle.WALL);
    assertTrue(
        text.contains(
            "the fence: one error goes into all 6 stones of a side that are cut at one setting,"
                + " ³⁄₃₂\" at the end as a rule. Cut one, measure it, correct the fence, then cut"
                + " the rest. Dry joints push an end out by ³⁄₃₂\" on average besides"),
        text);
    String careful = printed(work(m -> m.care = Care.CAREFUL), Bundle.WALL);
    assertTrue(careful.contains("cut at one setting, ³⁄₆₄\" at the end"), careful);
    assertFalse(careful.contains("Dry joints push"), careful);
    // A quarter inch that the opening is off moves each jamb by half of it.
    Length off = Length.inches(1 / 64.0);
    Care open = new Care(Care.OWN, off, Length.ZERO, off, off, Length.ZERO, Length.inches(0.25));
    String site = printed(work(m -> m.care = open), Bundle.WALL);
    assertTrue(site.contains("is the opening's width, ¹⁄₈\" at the end as a rule"), site);
    Care key = new Care(Care.OWN, off, Length.ZERO, off, off, Length.inches(0.25), off);
    assertTrue(
        printed(work(m -> m.care = key), Bundle.WALL)
            .contains("the key's place, ¹⁄₄\" at the end"));
  }

  /** What is printed to be done is what the builds do: places, allowance, who is trimmed. */
  @Test
  void theCheckIsPrintedAsTheBuildsMakeIt() {
    String text = printed(work(m -> {}), Bundle.WALL);
    List<String> said =
        found(
            "Check after every (\\d+) stones, where the table says\\. Out by no more than (\\S+):",
            text);
    assertEquals(List.of("3", "¹⁄₁₆\""), said);
    String table = text.substring(text.indexOf("at worst, cut the next to"));
    assertTrue(table.matches("(?s).* K .*L1, R1: .* L3, R3 .*L4, R4: .*"), table);
    assertFalse(table.substring(0, table.indexOf("Tried")).contains("L6"), table);
  }

  @Test
  void everyRunAtOneSettingHasALineAndABox() {
    String text = printed(work(m -> {}), Bundle.BENCH);
    assertTrue(text.contains("Cut one, measure it, correct the fence"), text);
    String plan = text.substring(text.indexOf("fence put right"));
    // Six of 8 a side: 5 + 48 from the centre, 5 past the jamb; the nearest to the 8 aimed at.
    assertTrue(plan.contains("D1-R1–R6, L1–L6 12 8\" __________ ☐"), plan);
    ShopWork work = work(m -> m.first().count = 2);
    String twice = printed(work, Bundle.BENCH);
    // Two keys alike for two openings are a run as well.
    assertTrue(twice.contains("D1-K 2 10\" __________ ☐"), twice);
    assertTrue(twice.contains("D1-R1–R6, L1–L6 24 "), twice);
    String fan = printed(work(LandsOnSheetsTest::jack), Bundle.BENCH);
    assertFalse(fan.contains("fence put right"), "no two stones of a fan are cut at one setting");
  }
}
