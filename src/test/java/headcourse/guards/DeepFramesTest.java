package headcourse.guards;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.sheet.frame.FrameReader;
import headcourse.testing.DemoJobs;
import headcourse.testing.FinishedPdf;
import headcourse.testing.PageInspector;
import headcourse.testing.Seeds;
import headcourse.work.ShopWork;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A frame that takes much of a page doesn't send the saw's sheets to paper that the shop's printer
 * doesn't take: read back from the finished pages, with every figure of the tickets.
 */
class DeepFramesTest {
  /** Frames of one's own: room left and right of the drawing together, above and below it, mm. */
  private static final Map<String, double[]> OWN =
      Map.of(
          "a column beside", new double[] {106, 20},
          "a border all round", new double[] {70, 70},
          "a block below", new double[] {40, 80});

  static Stream<String> jobs() throws IOException {
    return DemoJobs.names().stream();
  }

  private static Map<String, Frame> frames() throws IOException {
    Map<String, Frame> frames = new LinkedHashMap<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of("templates"), "*.svg")) {
      for (Path file : files) {
        frames.put(file.getFileName().toString(), frame(Files.readAllBytes(file)));
      }
    }
    assertTrue(frames.size() > 1, "no templates");
    for (String name : new TreeSet<>(OWN.keySet())) {
      double[] taken = OWN.get(name);
      String svg =
          "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 600 600'><rect id='drawing-area'"
              + " x='10' y='10' width='%s' height='%s'/></svg>";
      frames.put(name, frame(svg.formatted(600 - taken[0], 600 - taken[1]).getBytes(UTF_8)));
    }
    return frames;
  }

  private static Frame frame(byte[] svg) {
    return FrameReader.read("frame.svg", svg).value().orElseThrow();
  }

  /**
   * Every template on both papers; of one's own frames one a job in turn. What is read back whole,
   * with its figures, takes turns, too, unless all is asked for.
   */
  @ParameterizedTest
  @MethodSource("jobs")
  void theBenchKeepsItsPaper(String name) throws IOException {
    ShopWork job = DemoJobs.work(name);
    int turn = DemoJobs.names().indexOf(name);
    boolean all = Seeds.of(1) > 1;
    List<String> faults = new ArrayList<>();
    int n = 0;
    for (var frame : frames().entrySet()) {
      for (String size : List.of("letter", "a4")) {
        boolean own = OWN.containsKey(frame.getKey());
        int of = own ? 2 * OWN.size() : 2;
        boolean inTurn = all || n++ % of == turn % of;
        if (own && !inTurn) {
          continue;
        }
        Paper paper = PaperSizes.named(size).orElseThrow();
        ShopWork work = job.on(Bundle.BENCH, paper);
        PageSet set = SheetBook.compose(work, Bundle.BENCH, frame.getValue());
        List<String> seen = new ArrayList<>(others(set, paper));
        if (inTurn && !frame.getKey().equals("plain.svg")) {
          seen.addAll(whole(work, set, paper));
        }
        String where = frame.getKey() + ", " + size + ": ";
        faults.addAll(seen.stream().map(where::concat).toList());
      }
    }
    assertEquals(List.of(), faults);
  }

  /** Thirteen columns of the schedule beside a column of notes: no figure is broken for them. */
  @Test
  void theContractorsFiguresStayWhole() throws IOException {
    for (String language : List.of("en", "es+en")) {
      ShopWork work = DemoJobs.work("cart-door", "letter", language);
      Frame frame = frames().get("notes.svg");
      for (Page page : SheetBook.compose(work, Bundle.CONTRACTOR, frame).pages()) {
        // In two languages the frame's own captions touch what is filled in under them.
        List<String> faults =
            PageInspector.faults(page).stream()
                .filter(f -> language.equals("en") || f.matches(".*(broken|a picture).*"))
                .toList();
        assertEquals(List.of(), faults, language);
      }
    }
  }

  private static List<String> others(PageSet set, Paper paper) {
    return set.pages().stream()
        .filter(p -> other(p.width(), p.height(), paper))
        .map(p -> p.label() + " on other paper")
        .toList();
  }

  private static boolean other(double w, double h, Paper paper) {
    return Math.abs(Math.min(w, h) - paper.width().mm()) > 0.1
        || Math.abs(Math.max(w, h) - paper.height().mm()) > 0.1;
  }

  private static List<String> whole(ShopWork work, PageSet set, Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(set, "frame", out);
    List<String> faults = new ArrayList<>(others(out.toByteArray(), paper));
    for (Page page : set.pages()) {
      faults.addAll(PageInspector.faults(page));
    }
    Printed p =
        new Printed(
            work.job(),
            LayoutJson.write(work),
            Map.of(Bundle.BENCH, FinishedPdf.read(out.toByteArray())));
    TicketGuard.hold(p);
    faults.addAll(p.faults);
    if (p.held < 50) {
      faults.add("only " + p.held + " figures held");
    }
    return faults;
  }

  // Pages of another size than the job's own, in points.
  private static List<String> others(byte[] file, Paper paper) throws IOException {
    List<String> others = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(file)) {
      for (PDPage page : pdf.getPages()) {
        double w = page.getMediaBox().getWidth() * 25.4 / 72;
        double h = page.getMediaBox().getHeight() * 25.4 / 72;
        if (other(w, h, paper)) {
          others.add("a page of " + Math.round(w) + " x " + Math.round(h));
        }
      }
    }
    return others;
  }
}
