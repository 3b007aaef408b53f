package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.export.LayoutJson;
import headcourse.export.Overview;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Setting;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.elevation.ElevationSvg;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.testing.Tape;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The bearing of each end, read off every finished sheet, is the one in layout.json. Left and right
 * differ in most of the jobs, so that a swap shows.
 */
class BearingEverywhereTest {
  /** Both ends as layout.json has them, in the words of a tape. */
  private record Ends(String left, String right, String topLeft, String topRight) {}

  private static List<ShopWork> flat() {
    List<ShopWork> list = new ArrayList<>();
    for (long seed = 1; seed <= Seeds.of(26); seed++) {
      JobMaker m = RandomJobs.flat(seed, 30, 110);
      m.paper = "a1";
      Length off = m.tick.times(seed % 2 == 0 ? 6 : -5);
      m.first().measured = new Measured(null, null, null, List.of(), null, null, off);
      WorkUp.of(m.make()).value().ifPresent(list::add);
    }
    return list;
  }

  private static List<ShopWork> curved() {
    List<ShopWork> list = new ArrayList<>();
    for (String shape : List.of("segmental", "semicircular", "pointed", "three-centred")) {
      JobMaker m = JobMaker.one();
      m.paper = "a1";
      m.joints = Setting.Joints.MORTAR;
      m.joint = Length.inches(0.375);
      JobMaker.OpeningMaker o = m.first();
      o.shape = shape;
      o.width = Length.inches(60 + 1 / 16.0);
      o.headHeight = Length.inches(9.5);
      o.min = Length.inches(2);
      o.max = Length.inches(24);
      o.key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
      if (shape.equals("segmental")) {
        o.params.put("rise", Length.inches(7));
      }
      if (shape.equals("three-centred")) {
        o.params.put("rise", Length.inches(20));
        o.params.put("haunch-radius", Length.inches(14));
      }
      list.add(WorkUp.of(m.make()).value().orElseThrow());
    }
    return list;
  }

  private static Length json(String json, String key) {
    Matcher m = Pattern.compile("\"" + key + "\": (-?[0-9.]+)").matcher(json);
    assertTrue(m.find(), key);
    return new Length(new BigDecimal(m.group(1)).movePointRight(9).longValueExact());
  }

  /** To the nearest step, from halfway down. */
  private static Length onTape(Job job, Length exact) {
    long tick = job.grid().tick().picometres();
    long twice = 2 * exact.picometres();
    return job.grid().ticks(-Math.floorDiv(-(twice - tick), 2 * tick));
  }

  private static Ends ends(ShopWork work, boolean plain) {
    Job job = work.job();
    String json = LayoutJson.write(work);
    LengthFormat f = new LengthFormat(job.units(), job.grid());
    List<String> texts = new ArrayList<>();
    for (String key :
        List.of("bearingLeftMm", "bearingRightMm", "bearingTopLeftMm", "bearingTopRightMm")) {
      Length on = onTape(job, json(json, key));
      texts.add(plain ? f.plainWithUnit(on) : f.withUnit(on));
    }
    return new Ends(texts.get(0), texts.get(1), texts.get(2), texts.get(3));
  }

  private static List<Mark.Label> labels(List<Mark> marks) {
    List<Mark.Label> all = new ArrayList<>();
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        all.addAll(labels(g.marks()));
      } else if (m instanceof Mark.Label l) {
        all.add(l);
      }
    }
    return all;
  }

  private static List<List<Mark.Label>> pages(ShopWork work, Bundle bundle) {
    return SheetBook.compose(work, bundle, Frame.plain()).pages().stream()
        .map(Page::marks)
        .map(BearingEverywhereTest::labels)
        .toList();
  }

  private static String what(ShopWork work) {
    var opening = work.heads().get(0).layout().opening();
    return opening.head().shape() + " of " + opening.width();
  }

  @Test
  void everyFlatHead() {
    int distinct = 0;
    int jacks = 0;
    for (ShopWork work : flat()) {
      Ends ends = ends(work, false);
      distinct += ends.left.equals(ends.right) ? 0 : 1;
      jacks += work.heads().get(0).layout().fanned() ? 1 : 0;
      everySheet(work, ends);
    }
    assertTrue(distinct > 8, "only " + distinct + " with two different ends");
    assertTrue(jacks > 3, "only " + jacks + " jack arches");
  }

  @Test
  void everyCurvedHead() {
    for (ShopWork work : curved()) {
      everySheet(work, ends(work, false));
    }
  }

  private static void everySheet(ShopWork work, Ends ends) {
    HeadWork head = work.heads().get(0);
    elevation(work, head, ends);
    settingSheet(work, head, ends);
    schedule(work, head, ends);
    board(work, head, ends);
    sentence(pages(work, Bundle.FULL_SIZE), work, head, ends);
    if (head.layout().curve() != null) {
      sentence(pages(work, Bundle.BENCH), work, head, ends);
    }
    check(work, head);
    overview(work, head, ends);
    outline(work, head);
  }

  // Bearing, opening, bearing: figures of one height on one line, read from the left.
  private static void elevation(ShopWork work, HeadWork head, Ends ends) {
    List<String> words = List.of("on the wall", "on the wall, rounded");
    List<Mark.Label> all = labels(ElevationSvg.page(work, head).marks());
    List<Mark.Label> figures =
        all.stream()
            .filter(l -> l.degrees() == 0 && l.lettering().height() == 5 && l.lettering().bold())
            .filter(l -> l.text().endsWith("\"") || l.text().endsWith(" mm"))
            .sorted(Comparator.comparingDouble(l -> l.at().x()))
            .toList();
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      String expected = side == Side.LEFT ? ends.left : ends.right;
      if (head.layout().bearing(side).onWall().mm() < 0.02) {
        continue;
      }
      Mark.Label end = figures.get(side == Side.LEFT ? 0 : figures.size() - 1);
      assertEquals(expected, end.text(), side + " of " + what(work));
    }
    boolean said =
        all.stream().anyMatch(l -> words.contains(l.text()) || l.text().startsWith("on the wall"));
    assertTrue(
        said || figures.isEmpty() || !head.layout().bearing(Side.LEFT).onWall().isPositive());
  }

  // In the order in which the ends go up.
  private static void settingSheet(ShopWork work, HeadWork head, Ends ends) {
    List<String> expected = new ArrayList<>();
    head.inSettingOrder().stream()
        .map(p -> p.stone())
        .filter(s -> s.role() == Role.END)
        .forEach(
            s -> {
              boolean left = s.side() == Side.LEFT;
              String on = left ? ends.left : ends.right;
              // What is printed as nothing springs from the jamb.
              if (!head.layout().fanned() || !on.matches("0(\"| mm)")) {
                expected.add("on the wall " + on);
              }
              if (head.layout().fanned()) {
                expected.add(
                    "on the wall " + (left ? ends.topLeft : ends.topRight) + " at the top");
              }
            });
    Pattern said =
        Pattern.compile("on the wall [0-9⁰¹²³⁴⁵⁶⁷⁸⁹.⁄₀₁₂₃₄₅₆₇₈₉ ]+(\"|mm)( at the top)?");
    List<String> found = new ArrayList<>();
    for (Page page : SheetBook.compose(work, Bundle.WALL, Frame.plain()).pages()) {
      for (String cell : cells(page.marks())) {
        said.matcher(Tape.raised(cell)).results().forEach(r -> found.add(r.group()));
      }
    }
    assertEquals(expected, found, what(work));
  }

  // What the cells of the tables say, though it runs over several lines.
  private static List<String> cells(List<Mark> marks) {
    List<String> all = new ArrayList<>();
    for (Mark m : marks) {
      if (m instanceof Mark.Group g && g.role() == Mark.Role.CELL) {
        all.add(labels(g.marks()).stream().map(Mark.Label::text).collect(Collectors.joining(" ")));
      } else if (m instanceof Mark.Group g) {
        all.addAll(cells(g.marks()));
      }
    }
    return all;
  }

  private static void schedule(ShopWork work, HeadWork head, Ends ends) {
    String both = ends.left + " · " + ends.right;
    if (head.layout().fanned()) {
      both += "; top line " + ends.topLeft + " · " + ends.topRight;
    }
    String all =
        String.join(
            " ",
            pages(work, Bundle.CONTRACTOR).stream()
                .flatMap(List::stream)
                .map(l -> Tape.raised(l.text()))
                .toList());
    assertTrue(all.contains(both), both + " in " + all);
  }

  private static void board(ShopWork work, HeadWork head, Ends ends) {
    boolean curved = head.layout().curved();
    List<String> expected = new ArrayList<>();
    for (boolean left : new boolean[] {true, false}) {
      expected.add("on the wall");
      if (!curved) {
        expected.add(bare(left ? ends.left : ends.right));
      }
      if (curved || head.layout().fanned()) {
        expected.add(bare(left ? ends.topLeft : ends.topRight));
      }
    }
    List<List<String>> rows = new ArrayList<>();
    for (List<Mark.Label> page : pages(work, Bundle.BENCH)) {
      page.stream()
          .filter(l -> l.text().equals("on the wall"))
          .findFirst()
          .ifPresent(
              word ->
                  rows.add(
                      page.stream()
                          .filter(l -> Math.abs(l.at().y() - word.at().y()) < 0.2)
                          .sorted(Comparator.comparingDouble(l -> l.at().x()))
                          .map(l -> Tape.raised(l.text()))
                          .toList()));
    }
    // An arch is struck out; it has no board.
    assertEquals(curved ? List.of() : List.of(expected), rows, what(work));
  }

  private static String bare(String text) {
    return text.replace(" mm", "");
  }

  private static void sentence(
      List<List<Mark.Label>> pages, ShopWork work, HeadWork head, Ends ends) {
    String both = "left " + ends.left + ", right " + ends.right;
    String expected =
        head.layout().curved()
            ? "On the wall, at the back of the arch: " + both + "."
            : head.layout().fanned()
                ? "On the wall on the soffit line: "
                    + both
                    + "; on the top line: left "
                    + ends.topLeft
                    + ", right "
                    + ends.topRight
                    + "."
                : "On the wall: " + both + ".";
    boolean said =
        pages.stream()
            .map(p -> p.stream().map(Mark.Label::text).collect(Collectors.joining(" ")))
            .anyMatch(text -> Tape.raised(text).contains(expected));
    assertTrue(said, expected + " " + what(work));
  }

  private static void check(ShopWork work, HeadWork head) {
    Ends plain = ends(work, true);
    String said = CheckCommand.summary(work, head);
    String both = " bears " + plain.left + " left and " + plain.right + " right";
    if (head.layout().fanned()) {
      both +=
          " on the soffit line, " + plain.topLeft + " and " + plain.topRight + " on the top line";
    }
    assertTrue(said.contains(both + ", "), both + " in " + said);
  }

  private static void overview(ShopWork work, HeadWork head, Ends ends) {
    boolean fan = head.layout().fanned();
    String left = ends.left + (fan ? " (top line " + ends.topLeft + ")" : "");
    String right = ends.right + (fan ? " (top line " + ends.topRight + ")" : "");
    String html =
        new String(
                Overview.write(work, new byte[0], List.of(), List.of(), true),
                StandardCharsets.UTF_8)
            .replace("&quot;", "\"");
    assertTrue(html.contains("<td>" + left + ", " + right + "</td>"), left + ", " + right);
  }

  // layout.json keeps what the stones' own corners say.
  private static void outline(ShopWork work, HeadWork head) {
    String json = LayoutJson.write(work);
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      double out =
          head.layout().end(side).outline().vertices(0.01).stream()
              .filter(p -> head.layout().curved() || Math.abs(p.y()) < 1e-6)
              .mapToDouble(p -> side.sign() * p.x())
              .max()
              .orElseThrow();
      String key = side == Side.LEFT ? "bearingLeftMm" : "bearingRightMm";
      assertEquals(out - head.layout().jamb(side).mm(), json(json, key).mm(), 1e-4, what(work));
    }
  }
}
