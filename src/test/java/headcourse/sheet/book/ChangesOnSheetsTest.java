package headcourse.sheet.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.revision.Changes;
import headcourse.sheet.HeadFixture;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.RandomJobs;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The triangles of changed stones touch nothing, and each stands once. */
class ChangesOnSheetsTest {
  /** The same job with every opening and every n-th stone new. */
  private static ShopWork changed(ShopWork w, int every) {
    List<Changes.Item> items = new ArrayList<>();
    for (var head : w.heads()) {
      String opening = head.layout().opening().mark();
      items.add(new Changes.Item(items.size() + 1, opening, "", Changes.Kind.ADDED, List.of()));
      for (int i = 0; i < head.pieces().size(); i += every) {
        String stone = head.pieces().get(i).mark();
        items.add(
            new Changes.Item(items.size() + 1, opening, stone, Changes.Kind.ADDED, List.of()));
      }
    }
    return new ShopWork(
        w.job(), w.heads(), w.stock(), w.materials(), w.findings(), new Changes("A", true, items));
  }

  private static void check(ShopWork work, String which) {
    List<Page> pages = SheetBook.compose(work, Bundle.CONTRACTOR, Frame.plain()).pages();
    for (Page page : pages) {
      assertEquals(List.of(), PageInspector.faults(page), which);
    }
    long triangles =
        pages.stream()
            .flatMap(p -> groups(p.marks()))
            .filter(g -> g.title().matches("Change [0-9]+|Cambio [0-9]+|Change / Cambio [0-9]+"))
            .count();
    // So many on so little paper that only the table tells of them.
    boolean many = work.heads().stream().anyMatch(h -> h.pieces().size() > 50);
    assertTrue(triangles == work.changes().items().size() || many && triangles == 0, which);
  }

  private static Stream<Mark.Group> groups(List<Mark> marks) {
    return marks.stream()
        .filter(m -> m instanceof Mark.Group)
        .map(m -> (Mark.Group) m)
        .flatMap(g -> Stream.concat(Stream.of(g), groups(g.marks())));
  }

  @Test
  void flatHeads() {
    int drawn = 0;
    for (long seed = 1; seed <= 30; seed++) {
      JobMaker m = RandomJobs.flat(seed);
      m.paper = List.of("letter", "a4", "tabloid").get((int) (seed % 3));
      m.language = JobMaker.LANGUAGES[(int) (seed % 3)];
      var work = WorkUp.of(m.make()).value();
      if (work.isPresent()) {
        drawn++;
        check(changed(work.get(), 1 + (int) (seed % 4)), "seed " + seed);
      }
    }
    assertTrue(drawn > 8, "drawn " + drawn);
  }

  @Test
  void arches() {
    for (int count : new int[] {7, 15, 25}) {
      for (double rise : new double[] {300, 900}) {
        JobMaker m = JobMaker.one();
        var job = m.make();
        var opening = job.openings().get(0);
        double most = opening.width().mm() / 2;
        var head = HeadFixture.arch(job, opening, Math.min(rise, most), count);
        check(changed(HeadFixture.work(job, List.of(head)), 1), count + " stones, rise " + rise);
      }
    }
  }
}
