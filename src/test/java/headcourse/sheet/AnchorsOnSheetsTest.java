package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.export.LayoutJson;
import headcourse.job.Backing;
import headcourse.job.Bundle;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the finished sheets say of screws, read off them and held against {@code layout.json}. */
class AnchorsOnSheetsTest {
  private static final Pattern HOLD =
      Pattern.compile("wood screw ([^\"]+)\": (?:holds )?([^\"]+)\" in the lintel \\(wood\\)");
  private static final Pattern WRITTEN =
      Pattern.compile(
          "\"screwMm\": ?([0-9.]+),\\s*\"penetrationMm\": ?([0-9.]+),\\s*\"holdsIn\": ?\"wood\"");

  private static ShopWork work(double lintel) {
    JobMaker m = JobMaker.one();
    m.backing =
        List.of(
            new Backing(Length.inches(lintel), Backing.Kind.WOOD, "lintel", 0.51),
            new Backing(null, Backing.Kind.BOARD, "", 0));
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  private static String text(ShopWork work, Bundle bundle) {
    return SheetBook.compose(work, bundle, Frame.plain()).pages().stream()
        .flatMap(p -> FiguresAddUpTest.labels(p.marks()).stream())
        .map(Mark.Label::text)
        .collect(Collectors.joining(" "));
  }

  /** Screw and hold, to the sixteenth below, as the file has them: in sixteenths of an inch. */
  private static TreeSet<String> written(ShopWork work) {
    TreeSet<String> found = new TreeSet<>();
    Matcher m = WRITTEN.matcher(LayoutJson.write(work));
    while (m.find()) {
      long screw = Math.round(Double.parseDouble(m.group(1)) / 25.4 * 16);
      long deep = (long) Math.floor(Double.parseDouble(m.group(2)) / 25.4 * 16 + 1e-3);
      found.add(screw + " " + deep);
    }
    return found;
  }

  private static TreeSet<String> printed(String text) {
    TreeSet<String> found = new TreeSet<>();
    Matcher m = HOLD.matcher(text);
    while (m.find()) {
      long screw = Math.round(FiguresAddUpTest.read(m.group(1)) * 16);
      long deep = Math.round(FiguresAddUpTest.read(m.group(2)) * 16);
      found.add(screw + " " + deep);
    }
    return found;
  }

  @Test
  void everySheetSaysWhatHolds() {
    ShopWork work = work(10);
    TreeSet<String> wanted = written(work);
    assertFalse(wanted.isEmpty());
    for (Bundle bundle : List.of(Bundle.BENCH, Bundle.CONTRACTOR)) {
      TreeSet<String> printed = printed(text(work, bundle));
      assertTrue(printed.equals(wanted), bundle + ": " + printed + " for " + wanted);
    }
    // On the wall's sheets screw and hold stand in two cells of a row.
    String wall = text(work, Bundle.WALL).replaceAll("(wood screw [^\"]+\") ", "$1: ");
    assertTrue(printed(wall).containsAll(wanted), wall);
    assertTrue(text(work, Bundle.CONTRACTOR).contains("Holds nothing: board"));
  }

  /** Where the lintel is too low for the slots no sheet claims a hold, and all say why. */
  @Test
  void noSheetClaimsWhatDoesNotHold() {
    ShopWork work = work(3);
    assertTrue(written(work).isEmpty());
    for (Bundle bundle : List.of(Bundle.BENCH, Bundle.WALL, Bundle.CONTRACTOR)) {
      String text = text(work, bundle);
      assertTrue(printed(text).isEmpty(), bundle + text);
      assertTrue(text.contains("the board holds no screw"), bundle + ": " + text);
    }
  }
}
