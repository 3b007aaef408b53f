package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Translation;
import headcourse.geom.Box;
import headcourse.geom.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pages put together: nothing is lost, nothing lies on anything, the order stays. */
class SheetPackerTest {
  private static final Box AREA = new Box(10, 10, 410, 287);

  private static PageDraft page(int n, double width, double height) {
    PageDraft p = new PageDraft(420, 297, AREA, "P" + n, "page " + n);
    p.board().text(10, 20, "page " + n, new Lettering(5, true), Align.START);
    p.board().stroke(Path.rect(10, 22, width, height), Pen.EDGE);
    p.bookmark(1, "page " + n, "page-" + n, 10);
    return p;
  }

  @Test
  void nothingIsLostAndNothingOverlaps() {
    Random random = new Random(3);
    int fewer = 0;
    for (int run = 0; run < 200; run++) {
      List<PageDraft> pages = new ArrayList<>();
      int n = 2 + random.nextInt(6);
      for (int i = 0; i < n; i++) {
        pages.add(page(i, 20 + random.nextInt(380), 10 + random.nextInt(250)));
      }
      List<PageDraft> sheets = SheetPacker.of(pages);
      fewer += n - sheets.size();
      List<String> anchors = new ArrayList<>();
      for (PageDraft sheet : sheets) {
        List<Box> boxes = new ArrayList<>();
        for (Mark m : sheet.board().marks()) {
          if (m instanceof Mark.Stroke) {
            boxes.add(Translation.room(List.of(m)).orElseThrow());
          }
        }
        for (int a = 0; a < boxes.size(); a++) {
          assertTrue(AREA.grown(1e-6).contains(boxes.get(a)), "run " + run);
          for (int b = 0; b < a; b++) {
            assertTrue(!boxes.get(a).grown(10).overlaps(boxes.get(b)), "run " + run);
          }
        }
        sheet.bookmarks().forEach(b -> anchors.add(b.anchor()));
      }
      List<String> wanted = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        wanted.add("page-" + i);
      }
      assertEquals(wanted, anchors);
    }
    assertTrue(fewer > 100, "only " + fewer);
  }
}
