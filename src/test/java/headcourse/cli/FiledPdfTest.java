package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.PdfChecker;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * The bundles of the demo jobs as they would be filed: ISO 19005-2 (PDF/A-2b) and ISO 14289-1
 * (PDF/UA-1) by an independent checker, veraPDF; found by bookmark, label, search and link. Each
 * job has one bundle checked in turn, with {@code -Dheadcourse.everyFile=true} all.
 */
class FiledPdfTest {
  private static final List<String> BUNDLES =
      List.of("bench", "wall", "contractor", "full-size", "order");

  private static final boolean EVERY = Boolean.getBoolean("headcourse.everyFile");

  @TempDir Path folder;

  static Stream<String> jobs() throws IOException {
    return DemoJobsTest.jobs();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void bundlesAreArchivableAndFound(String job) throws Exception {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            List.of("draw", "jobs/" + job, "--out", folder.toString()),
            Path.of(""),
            new PrintStream(new ByteArrayOutputStream()),
            new PrintStream(err));
    assertEquals(Main.DONE, status, err::toString);
    Path out = folder.resolve(job.replace(".yaml", ""));
    List<String> stones = marks(Files.readString(out.resolve("layout.json")));
    assertFalse(stones.isEmpty());
    int turn = jobs().toList().indexOf(job) % BUNDLES.size();
    for (String bundle : BUNDLES) {
      byte[] bytes = Files.readAllBytes(out.resolve(bundle + ".pdf"));
      if (EVERY || BUNDLES.indexOf(bundle) == turn) {
        assertEquals(
            List.of(),
            PdfChecker.failures(bytes, PDFAFlavour.PDFA_2_B, PDFAFlavour.PDFUA_1),
            bundle);
      }
      String raw = new String(bytes, StandardCharsets.ISO_8859_1);
      // An order of nothing says so, and has no sizes and no drawing.
      boolean words = bundle.equals("order") && !raw.contains("/S /TH\n");
      for (String type : List.of("H1", "Table", "TH", "TD", "Figure", "P")) {
        if (words && (type.equals("TH") || type.equals("Figure"))) {
          continue;
        }
        assertTrue(raw.contains("/S /" + type + "\n"), bundle + " has no " + type);
      }
      try (PDDocument pdf = Loader.loadPDF(bytes)) {
        filed(pdf, bundle);
        if (bundle.equals("bench")) {
          tickets(pdf, stones);
        }
      }
    }
  }

  private static List<String> marks(String layout) {
    Matcher m = Pattern.compile("\"mark\": \"([^\"]*)\",\\s*\"role\"").matcher(layout);
    List<String> marks = new ArrayList<>();
    while (m.find()) {
      marks.add(m.group(1));
    }
    return marks;
  }

  private static void filed(PDDocument pdf, String bundle) throws IOException {
    var catalogue = pdf.getDocumentCatalog();
    assertFalse(pdf.getDocumentInformation().getTitle().isBlank(), bundle);
    assertNotNull(catalogue.getLanguage(), bundle);
    assertNotNull(catalogue.getOCProperties(), bundle);
    assertTrue(catalogue.getOCProperties().getOptionalContentGroups().size() >= 3, bundle);
    String[] labels = catalogue.getPageLabels().getLabelsByPageIndices();
    assertEquals(pdf.getNumberOfPages(), labels.length, bundle);
    assertTrue(Stream.of(labels).noneMatch(String::isBlank), bundle);
    assertFalse(entries(catalogue.getDocumentOutline()).isEmpty(), bundle);
  }

  private static List<PDOutlineItem> entries(PDOutlineNode node) {
    List<PDOutlineItem> all = new ArrayList<>();
    if (node != null) {
      for (PDOutlineItem i : node.children()) {
        all.add(i);
        all.addAll(entries(i));
      }
    }
    return all;
  }

  /** Each stone is in the index, its link leads to the page of its ticket. */
  private static void tickets(PDDocument pdf, List<String> stones) throws IOException {
    List<String> pages = new ArrayList<>();
    for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
      PDFTextStripper one = new PDFTextStripper();
      one.setStartPage(i);
      one.setEndPage(i);
      pages.add(one.getText(pdf));
    }
    String text = String.join("\n", pages);
    stones.forEach(s -> assertTrue(text.contains(s), s));
    Set<String> bookmarks = new TreeSet<>();
    entries(pdf.getDocumentCatalog().getDocumentOutline())
        .forEach(i -> bookmarks.add(i.getTitle()));
    for (String s : stones) {
      assertTrue(bookmarks.contains(s.substring(0, s.lastIndexOf('-'))), bookmarks + " " + s);
    }
    int links = 0;
    for (var page : pdf.getPages()) {
      for (var annotation : page.getAnnotations()) {
        if (annotation instanceof PDAnnotationLink link) {
          links++;
          PDPageDestination to = (PDPageDestination) link.getDestination();
          int number = to.retrievePageNumber();
          assertTrue(bookmarks.contains(link.getContents()), link.getContents());
          // A ticket has the opening's mark and the stone's apart.
          for (String part : link.getContents().split("-")) {
            assertTrue(pages.get(number).contains(part), link.getContents());
          }
        }
      }
    }
    assertEquals(stones.size(), links);
  }
}
