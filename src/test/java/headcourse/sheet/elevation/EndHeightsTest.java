package headcourse.sheet.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomArches;
import headcourse.units.LengthParser;
import headcourse.units.NotationException;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Joints of an arch that run out on the plumb end of its side: beside that end stands how high, as
 * the finished page has it.
 */
class EndHeightsTest {
  private static final int SEEDS = 60;

  /** Heights on the grid of the joints that run out on a side's plumb end, mm. */
  private static Set<Long> heights(ShopWork work, HeadLayout head, Side side) {
    double end =
        head.joints().stream()
            .filter(j -> j.side() == side)
            .mapToDouble(j -> Math.abs(j.head().x()))
            .max()
            .orElseThrow();
    Set<Long> heights = new HashSet<>();
    for (JointLine j : head.joints()) {
      boolean last = j.outer().isEmpty();
      if (j.side() == side && !last && Math.abs(Math.abs(j.head().x()) - end) < 0.05) {
        heights.add(work.job().grid().snapMm(j.head().y()).picometres());
      }
    }
    return heights;
  }

  @Test
  void eachSideSaysHowHigh() throws NotationException {
    int sides = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      JobMaker m = RandomArches.job(seed);
      m.openings.subList(1, m.openings.size()).clear();
      Optional<ShopWork> done = WorkUp.of(m.make()).value();
      if (done.isEmpty()) {
        continue;
      }
      ShopWork work = done.get();
      HeadLayout head = work.heads().get(0).layout();
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        Set<Long> wanted = heights(work, head, side);
        int here = 0;
        for (Page page : SheetBook.compose(work, Bundle.WALL, Frame.plain()).pages()) {
          here += upwards(page, side, wanted, seed + " " + side);
        }
        assertEquals(wanted.isEmpty(), here == 0, seed + " " + side + ": " + wanted);
        sides += here;
      }
    }
    assertTrue(sides > 20, "only " + sides + " heights");
  }

  /** The figures on a page beside an end: each the height of a joint, the higher the higher up. */
  private static int upwards(Page page, Side side, Set<Long> wanted, String what)
      throws NotationException {
    List<Mark.Label> said = new ArrayList<>();
    labels(page.marks(), said);
    said.removeIf(l -> l.align() != (side == Side.LEFT ? Align.END : Align.START));
    said.sort(Comparator.comparingDouble(l -> -l.at().y()));
    double below = 0;
    for (Mark.Label l : said) {
      Units units = l.text().contains("\"") ? Units.INCH : Units.MILLIMETRE;
      double mm = LengthParser.parse(l.text().substring(2), units).mm();
      assertTrue(
          wanted.stream().anyMatch(w -> Math.abs(w / 1e9 - mm) < 0.01),
          what + " says " + l.text() + " of " + wanted);
      assertTrue(mm > below, what + ": " + l.text() + " stands too high");
      below = mm;
    }
    return said.size();
  }

  private static void labels(List<Mark> from, List<Mark.Label> to) {
    for (Mark m : from) {
      if (m instanceof Mark.Group g) {
        labels(g.marks(), to);
      } else if (m instanceof Mark.Label l && l.text().matches("↑ \\d.*")) {
        to.add(l);
      }
    }
  }
}
