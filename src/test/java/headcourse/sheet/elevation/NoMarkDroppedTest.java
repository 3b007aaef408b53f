package headcourse.sheet.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.RandomArches;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Every stone on every elevation bears its mark, and on the wall's its number in the setting order:
 * random jobs, flat, curved, and curved with as many stones as they take on small paper.
 */
class NoMarkDroppedTest {
  /** 300 with {@code -Dheadcourse.seeds=25}. */
  private static final long SEEDS = Seeds.of(7);

  private static final List<String> SMALL = List.of("letter", "a4", "letter", "tabloid");

  @Test
  void everyStoneBearsItsMarkAndItsNumber() {
    List<String> dropped = new ArrayList<>();
    int stones = 0;
    int most = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Optional<ShopWork> work = WorkUp.of(job(seed)).value();
      if (work.isEmpty()) {
        continue;
      }
      for (Bundle bundle : List.of(Bundle.WALL, Bundle.CONTRACTOR)) {
        List<Page> pages = SheetBook.compose(work.get(), bundle, Frame.plain()).pages();
        for (Page page : pages) {
          for (String fault : PageInspector.faults(page)) {
            dropped.add("seed " + seed + ": " + bundle + " " + fault);
          }
        }
        for (HeadWork head : work.get().heads()) {
          stones += head.pieces().size();
          most = Math.max(most, head.pieces().size());
          look("seed " + seed + ": " + bundle + " ", pages, head, dropped);
        }
      }
      for (HeadWork head : work.get().heads()) {
        Page page = ElevationSvg.page(work.get(), head);
        look("seed " + seed + ": picture ", List.of(page), head, dropped);
      }
    }
    assertEquals(List.of(), dropped);
    assertTrue(stones > 20 * SEEDS && most > 40, stones + " stones, at most " + most + " a head");
  }

  private static Job job(long seed) {
    JobMaker m;
    if (seed % 3 == 0) {
      m = RandomJobs.flat(seed, 24, 200);
    } else {
      m = RandomArches.job(seed);
      if (seed % 3 == 1) {
        m.first().min = Length.inches(2);
        m.first().target = Length.inches(2.5);
        m.first().max = Length.inches(9);
      }
    }
    m.paper = SMALL.get((int) (seed / 3 % SMALL.size()));
    m.language = JobMaker.LANGUAGES[(int) (seed / 2 % 3)];
    return m.make();
  }

  // Each face that is drawn is labelled on it, and each stone of the head is drawn somewhere.
  private static void look(String where, List<Page> pages, HeadWork head, List<String> dropped) {
    TreeSet<String> seen = new TreeSet<>();
    for (Page page : pages) {
      // The picture for the client and the figure of the thrust show how it looks, no stone's mark.
      boolean elevation =
          stones(page.marks()).stream()
              .anyMatch(
                  g ->
                      head.pieces().stream()
                          .anyMatch(
                              p -> p.mark().equals(g.id()) && texts(g).contains(p.stone().mark())));
      if (where.contains("CONTRACTOR") && !elevation) {
        continue;
      }
      for (Mark.Group group : stones(page.marks())) {
        for (Piece p : head.pieces()) {
          if (p.mark().equals(group.id())) {
            seen.add(p.mark());
            List<String> texts = texts(group);
            if (!texts.contains(p.stone().mark())) {
              dropped.add(where + page.label() + ": no mark on " + p.mark());
            }
            if (!where.contains("CONTRACTOR") && !texts.contains("" + p.setOrder())) {
              dropped.add(where + page.label() + ": no number on " + p.mark());
            }
          }
        }
      }
    }
    for (Piece p : head.pieces()) {
      if (!seen.contains(p.mark())) {
        dropped.add(where + "nowhere " + p.mark());
      }
    }
  }

  private static List<Mark.Group> stones(List<Mark> marks) {
    List<Mark.Group> found = new ArrayList<>();
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        if (g.role() == Mark.Role.STONE) {
          found.add(g);
        }
        found.addAll(stones(g.marks()));
      }
    }
    return found;
  }

  private static List<String> texts(Mark.Group group) {
    return group.marks().stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> ((Mark.Label) m).text())
        .toList();
  }
}
