package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.elevation.ElevationSvg;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sheet for the wall and the contractor, on every paper, looked over by the inspector. */
class WallAndContractorSheetsTest {
  private static final List<String> PAPERS =
      List.of("letter", "legal", "tabloid", "a4", "a3", "a2", "a1", "arch-c", "arch-d");

  static Stream<Arguments> sheets() {
    List<Arguments> all = new ArrayList<>();
    for (SheetCases c : SheetCases.values()) {
      for (String paper : PAPERS) {
        for (Language l : JobMaker.LANGUAGES) {
          all.add(Arguments.of(c, paper, l));
        }
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void nothingCollides(SheetCases head, String paper, Language language) {
    ShopWork work = head.work(paper, language);
    for (Bundle bundle : List.of(Bundle.WALL, Bundle.CONTRACTOR)) {
      WatchedFrame frame = new WatchedFrame(Frame.plain());
      PageSet set = SheetBook.compose(work, bundle, frame);
      assertTrue(!set.pages().isEmpty());
      // A contractor's set is turned over like a book: every page lies.
      boolean lie = set.pages().stream().allMatch(p -> p.width() > p.height());
      assertTrue(lie || bundle == Bundle.WALL, head + " on " + paper);
      assertEquals(List.of(), frame.faults(set.pages()), bundle + " of " + head + " on " + paper);
    }
  }

  @ParameterizedTest
  @EnumSource(SheetCases.class)
  void elevationsForScreensDoNotCollide(SheetCases head) {
    for (Language l : JobMaker.LANGUAGES) {
      ShopWork work = head.work("letter", l);
      Page page = ElevationSvg.page(work, work.heads().get(0));
      assertEquals(List.of(), PageInspector.faults(page));
    }
  }

  @Test
  void pageLabelsAndAnchorsAreUnique() {
    for (SheetCases c : SheetCases.values()) {
      for (Bundle b : List.of(Bundle.WALL, Bundle.CONTRACTOR)) {
        PageSet set = SheetBook.compose(c.work("letter", Language.EN), b, Frame.plain());
        List<String> labels = set.pages().stream().map(Page::label).toList();
        assertEquals(labels.stream().distinct().toList(), labels);
        List<String> anchors =
            set.pages().stream()
                .flatMap(p -> p.bookmarks().stream())
                .map(Page.Bookmark::anchor)
                .toList();
        assertEquals(anchors.stream().distinct().toList(), anchors);
      }
    }
  }
}
