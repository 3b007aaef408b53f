package headcourse.sheet.elevation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.Piece;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobYaml;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A pointed arch of 77 stones whose key hangs into the room of the running marks beside it: at no
 * scale do these have room for large lettering, nor at a small one each stone for its mark. Its
 * elevation once never ended, and the contractor's set found no paper large enough.
 */
class TightMarksTest {
  private static final String JOB =
      """
      units: in
      grid: 1/16
      paper: letter
      stone: {density: 145 lb/ft3, thickness: 1 1/4}
      setting: {joints: mortar, joint: 1/4}
      openings:
        - mark: A1
          width: 165
          height: 96
          reveal: 4
          head:
            shape: pointed
            radius: 1.074
            height: 14
            extrados: stepped
            course: 10
            key: {bottom: 4, rise: 0, drop: 1/2, proud: 1/2}
            stones: {min: 2, max: 18, target: 3 1/2, step: 1/8, rhythm: graded}
            bearing: {min: 4, max: 8, target: 6}
            clear: 1 1/2
            soffit: returned
      steps: 20000
      """;

  private static ShopWork work;

  @BeforeAll
  static void workUp() {
    work = WorkUp.of(JobYaml.job(JOB), name -> Optional.empty()).value().orElseThrow();
  }

  private static Set<String> texts(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            m ->
                m instanceof Mark.Group g
                    ? texts(g.marks()).stream()
                    : m instanceof Mark.Label l ? Stream.of(l.text()) : Stream.empty())
        .collect(Collectors.toSet());
  }

  private static void everyStoneIn(Set<String> texts) {
    List<Piece> pieces = work.heads().get(0).pieces();
    assertTrue(pieces.size() > 70, "as many as it takes: " + pieces.size());
    for (Piece p : pieces) {
      String shorter = p.mark().substring(p.mark().indexOf('-') + 1);
      assertTrue(texts.contains(p.mark()) || texts.contains(shorter), p.mark());
    }
  }

  @Test
  void theElevationIsDrawn() {
    Page page = ElevationSvg.page(work, work.heads().get(0));
    everyStoneIn(texts(page.marks()));
    assertTrue(page.width() < 2000, page.width() + " mm wide");
  }

  @Test
  void theContractorsSetIsDrawn() {
    Set<String> texts =
        SheetBook.compose(work, Bundle.CONTRACTOR, Frame.plain()).pages().stream()
            .flatMap(p -> texts(p.marks()).stream())
            .collect(Collectors.toSet());
    everyStoneIn(texts);
  }
}
