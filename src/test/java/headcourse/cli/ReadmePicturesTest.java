package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.choose.Choices;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.PaperSizes;
import headcourse.render.svg.SvgRenderer;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.choose.ChoiceSheets;
import headcourse.sheet.form.MeasuringForm;
import headcourse.text.Words;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The README's pictures are sheets as they are drawn now: one of every bundle. With {@code
 * -Dheadcourse.refresh=true} they are drawn anew.
 */
class ReadmePicturesTest {
  static final Path KEPT = Path.of("out", "pictures");
  private static final Pattern PICTURE = Pattern.compile("out/pictures/([a-z-]+\\.svg)");

  /** Which page of a bundle shows best what it is. */
  private static final Map<Bundle, Integer> PAGES =
      Map.of(
          Bundle.BENCH, 2,
          Bundle.WALL, 0,
          Bundle.CONTRACTOR, 0,
          Bundle.FULL_SIZE, 1,
          Bundle.ORDER, 0);

  private static final Sheets CART_DOOR = Sheets.of("cart-door");
  private static final Sheets FORGE = Sheets.of("forge-arch");

  private record Sheets(Job job, SheetFrame frame) {
    static Sheets of(String name) {
      JobFile file = new JobFile(Path.of(""), "jobs/" + name + ".yaml");
      Job job = file.read().value().orElseThrow();
      return new Sheets(job, Frames.of(job, file).value().orElseThrow());
    }
  }

  @Test
  void thePicturesAreTheProgramsOwn() throws IOException {
    Map<String, String> drawn = new TreeMap<>();
    for (Bundle b : Bundle.values()) {
      // The cart door's stones lie in the yard: nothing is ordered for them.
      Sheets sheets = b == Bundle.ORDER ? FORGE : CART_DOOR;
      PageSet set = SheetBook.compose(WorkUp.of(sheets.job).value().orElseThrow(), b, sheets.frame);
      drawn.put(b.word() + ".svg", svg(set, PAGES.get(b)));
    }
    Choices choices = Choices.checked(FORGE.job, 0).value().orElseThrow();
    drawn.put("choose.svg", svg(ChoiceSheets.compose(List.of(choices), FORGE.frame), 0));
    Words words = Words.of("en+es").withTongues();
    drawn.put(
        "form.svg", svg(MeasuringForm.of(PaperSizes.named("letter").orElseThrow(), words), 0));

    if (Boolean.getBoolean("headcourse.refresh")) {
      Files.createDirectories(KEPT);
      for (Map.Entry<String, String> e : drawn.entrySet()) {
        Files.writeString(KEPT.resolve(e.getKey()), e.getValue());
      }
    }
    Matcher shown = PICTURE.matcher(Files.readString(Path.of("README.md")));
    assertEquals(
        drawn.keySet().stream().toList(),
        shown.results().map(r -> r.group(1)).distinct().sorted().toList());
    for (Map.Entry<String, String> e : drawn.entrySet()) {
      assertTrue(e.getValue().length() < 100_000, e.getKey() + " is large for a README");
      assertEquals(Files.readString(KEPT.resolve(e.getKey())), e.getValue(), e.getKey());
    }
  }

  private static String svg(PageSet set, int number) {
    Page page = set.pages().get(number);
    return new String(SvgRenderer.render(page, page.title()), StandardCharsets.UTF_8);
  }
}
