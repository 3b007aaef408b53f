package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.elevation.ElevationSvg;
import headcourse.sheet.frame.Frame;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.testing.Tape;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Reads the numbers off the sheets as a mason would, and adds them up: running marks against the
 * head, chain sizes against the overall width.
 */
class FiguresAddUpTest {
  /** A printed length in units of the job: inches or millimetres. */
  static double read(String text) {
    return Tape.read(text);
  }

  static List<Mark.Label> labels(List<Mark> marks) {
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

  private static List<ShopWork> jobs() {
    List<ShopWork> list = new ArrayList<>();
    for (SheetCases c : SheetCases.values()) {
      list.add(c.work("a1", Language.EN));
    }
    for (long seed = 500; seed < 500 + Seeds.of(40); seed++) {
      var maker = RandomJobs.flat(seed);
      maker.paper = "a1";
      Optional<ShopWork> work = WorkUp.of(maker.make()).value();
      work.ifPresent(list::add);
    }
    return list;
  }

  @Test
  void everyRunningMarkIsOnTheElevation() {
    for (ShopWork work : jobs()) {
      HeadWork head = work.heads().get(0);
      if (head.layout().curved()) {
        continue; // marked around the form, which the guards of the wall's sheets hold
      }
      Page page = ElevationSvg.page(work, head);
      List<String> turned =
          labels(page.marks()).stream()
              .filter(l -> l.degrees() == 90)
              .map(Mark.Label::text)
              .toList();
      var format = new LengthFormat(work.job().units(), work.job().grid());
      boolean cambered =
          head.layout().joints().stream()
              .anyMatch(j -> !work.job().grid().snapMm(j.foot().y()).isZero());
      for (var j : head.layout().joints()) {
        if (!j.soffitMark().isZero()) {
          String mark = format.tape(j.soffitMark());
          Length rise = work.job().grid().snapMm(j.foot().y());
          // On a cambered soffit each mark also says how far over the springing line it stands.
          String shown = cambered ? mark + " → " + format.tape(rise) : mark;
          assertTrue(turned.contains(shown), () -> "no mark " + shown + " among " + turned);
        }
      }
    }
  }

  @Test
  void chainedSizesAddUpToTheOverall() {
    int chains = 0;
    for (ShopWork work : jobs()) {
      HeadWork head = work.heads().get(0);
      if (head.layout().curved()) {
        continue;
      }
      List<Page> pages = SheetBook.compose(work, Bundle.CONTRACTOR, Frame.plain()).pages();
      List<Mark> marks = pages.stream().flatMap(p -> p.marks().stream()).toList();
      var format = new LengthFormat(work.job().units(), work.job().grid());
      var figures = new headcourse.sheet.elevation.HeadFigures(head, format);
      String overall = format.building(figures.overall());
      List<Mark.Label> all = labels(marks);
      assertTrue(all.stream().anyMatch(l -> l.text().equals(overall)), "no overall " + overall);
      double sum = 0;
      boolean shown = false;
      for (Mark.Label l : labels(sizes(marks))) {
        String text = l.text();
        int equals = text.indexOf(" = ");
        double size = read(equals < 0 ? text : text.substring(equals + 3));
        if (equals >= 0) {
          int times = text.indexOf(" × ");
          double each = read(text.substring(times + 3, equals));
          assertEquals(size, each * Integer.parseInt(text.substring(0, times)), 1e-9, text);
        }
        sum += size;
        shown = true;
      }
      if (shown) {
        chains++;
        assertEquals(read(overall), sum, 1e-9, "chain of " + head.layout().opening().path());
      }
    }
    assertTrue(chains > 20, "only " + chains);
  }

  private static List<Mark> sizes(List<Mark> marks) {
    List<Mark> found = new ArrayList<>();
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        found.addAll(g.title().equals("sizes from joint to joint") ? g.marks() : sizes(g.marks()));
      }
    }
    return found;
  }
}
