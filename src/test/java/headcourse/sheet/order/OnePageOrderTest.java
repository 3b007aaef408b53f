package headcourse.sheet.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.FinishedPdf;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order is one page to send, in two languages, too, with all that it has to say. */
class OnePageOrderTest {
  @ParameterizedTest
  @ValueSource(strings = {"pointed", "semicircular"})
  void isOnePageInTwoLanguages(String shape) throws IOException {
    JobMaker m = JobMaker.one();
    m.paper = "a4";
    m.language = Language.EN_ES;
    var o = m.first();
    o.shape = shape;
    o.width = Length.inches(60);
    o.headHeight = Length.inches(9);
    o.key = null;
    o.min = Length.inches(3);
    o.max = Length.inches(6);
    o.target = Length.inches(4);
    o.step = Length.ZERO;
    var work = WorkUp.of(m.make()).value().orElseThrow();
    PageSet set = SheetBook.compose(work, Bundle.ORDER, Frame.plain());
    assertEquals(1, set.pages().size());
    assertEquals(List.of(), PageInspector.faults(set.pages().get(0)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(set, "order", out);
    String text =
        FinishedPdf.read(out.toByteArray()).stream()
            .flatMap(Part::all)
            .map(Part::text)
            .collect(Collectors.joining(" "))
            .replaceAll("\\s+", " ");
    for (String language : List.of("en", "es")) {
      Words words = Words.of(language);
      for (String key : List.of("order.caution", "order.batch", "order.spare-text")) {
        assertTrue(text.contains(words.say(key)), key + ": " + text);
      }
    }
  }
}
