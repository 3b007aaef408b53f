package headcourse.sheet.fullsize;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.layout.Side;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.DemoJobs;
import headcourse.testing.RandomArches;
import headcourse.testing.Seeds;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every stone is named on its opening's strip, near the springing of an arch with a leader. */
class StripMarksTest {
  @Test
  void demoJobs() throws IOException {
    List<String> dropped = new ArrayList<>();
    for (String name : DemoJobs.names()) {
      look(name, DemoJobs.work(name), dropped);
    }
    assertEquals(List.of(), dropped);
  }

  @Test
  void randomArches() {
    List<String> dropped = new ArrayList<>();
    for (long seed = 1; seed <= Seeds.of(12); seed++) {
      String name = "seed " + seed;
      WorkUp.of(RandomArches.job(seed).make()).value().ifPresent(w -> look(name, w, dropped));
    }
    assertEquals(List.of(), dropped);
  }

  private static void look(String name, ShopWork work, List<String> dropped) {
    List<Page> pages = SheetBook.compose(work, Bundle.FULL_SIZE, Frame.plain()).pages();
    for (HeadWork head : work.heads()) {
      String strip = head.layout().opening().mark() + " strip, part ";
      Set<String> said = new TreeSet<>();
      boolean half = false;
      for (Page page : pages) {
        List<Mark.Group> groups = new ArrayList<>();
        groups(page.marks(), groups);
        // A part's names follow its lines.
        for (int i = 0; i + 1 < groups.size(); i++) {
          if (groups.get(i).title().startsWith(strip)) {
            half |= groups.get(i).title().contains("right half");
            List<String> here = new ArrayList<>();
            texts(groups.get(i + 1).marks(), here);
            said.addAll(here);
            // A part that is shorter than its name has it beside it, in several lines.
            if (!String.join(" ", here).contains(groups.get(i).title())) {
              dropped.add(name + ": " + groups.get(i).title());
            }
          }
        }
      }
      for (Piece p : head.pieces()) {
        boolean here = !half || p.stone().side() != Side.LEFT;
        if (here && !said.contains(p.stone().mark())) {
          dropped.add(name + ": " + p.mark());
        }
      }
    }
  }

  private static void groups(List<Mark> marks, List<Mark.Group> found) {
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        found.add(g);
        groups(g.marks(), found);
      }
    }
  }

  private static void texts(List<Mark> marks, List<String> said) {
    for (Mark m : marks) {
      if (m instanceof Mark.Label l) {
        said.add(l.text());
      }
    }
  }
}
