package headcourse.render.pdf;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.geom.Box;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes a bundle as a PDF/A-2b and PDF/UA-1 file: real text, tags, layers, bookmarks, page labels
 * and links. The same pages and seed give the same bytes.
 */
public final class PdfRenderer {
  private PdfRenderer() {}

  /**
   * Writes a bundle.
   *
   * @param set its pages
   * @param seed what the file's identifier is made of: another job, another seed
   * @param out where to; not closed
   * @throws IOException if {@code out} does
   */
  public static void render(PageSet set, String seed, OutputStream out) throws IOException {
    render(set, seed, out, page -> {});
  }

  /**
   * Writes a bundle, and asks for the marks of each page once, in order.
   *
   * @param at is told the number of the page that comes, from 1
   */
  public static void render(PageSet set, String seed, OutputStream out, IntConsumer at)
      throws IOException {
    try (PDDocument file = new PDDocument()) {
      Document document = Document.of(file, set);
      PDDocumentCatalog catalogue = file.getDocumentCatalog();
      pages(document, set, at);
      Metadata.write(file, set);
      PDMarkInfo marked = new PDMarkInfo();
      marked.setMarked(true);
      catalogue.setMarkInfo(marked);
      catalogue.setStructureTreeRoot(document.structure().finished());
      catalogue.setViewerPreferences(preferences());
      file.getDocument().setVersion(1.7f);
      file.setDocumentId(id(seed));
      file.save(out, CompressParameters.NO_COMPRESSION);
    }
  }

  /** FNV-1a, 64 bits (draft-eastlake-fnv), of the seed. */
  private static long id(String seed) {
    long h = 0xcbf29ce484222325L;
    for (int i = 0; i < seed.length(); i++) {
      h = (h ^ seed.charAt(i)) * 0x100000001b3L;
    }
    return h;
  }

  private static void pages(Document document, PageSet set, IntConsumer at) throws IOException {
    List<PDPage> sheets = new ArrayList<>();
    List<Page> blank = set.blank();
    for (Page page : blank) {
      PDPage sheet = sheet(page);
      sheet.setResources(document.resources());
      document.file().addPage(sheet);
      sheets.add(sheet);
    }
    Navigation navigation = new Navigation(blank, sheets);
    for (int i = 0; i < sheets.size(); i++) {
      at.accept(i + 1);
      Page page = set.pages().get(i);
      try (PagePainter painter = new PagePainter(document, page, sheets.get(i), navigation::has)) {
        painter.paint(page.marks());
        sheets.get(i).setStructParents(document.structure().register(painter.parents()));
        navigation.link(i, painter.links(), document.structure());
      }
    }
    PDDocumentCatalog catalogue = document.file().getDocumentCatalog();
    PDDocumentOutline outline = navigation.outline();
    if (outline != null) {
      catalogue.setDocumentOutline(outline);
      catalogue.setPageMode(PageMode.USE_OUTLINES);
    }
    catalogue.setPageLabels(navigation.labels(document.file()));
  }

  private static PDPage sheet(Page page) {
    PaperSpace space = PaperSpace.of(page);
    PDRectangle box = space.box(Box.of(0, 0, page.width(), page.height()));
    PDPage sheet = new PDPage(box);
    if (space.unit() > 1) {
      sheet.setUserUnit(space.unit());
    }
    sheet.setCropBox(box);
    sheet.setTrimBox(box);
    // Readers that go from field to field follow the structure (ISO 14289-1, 7.18.3).
    sheet.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    return sheet;
  }

  private static PDViewerPreferences preferences() {
    PDViewerPreferences preferences = new PDViewerPreferences();
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    preferences.setDisplayDocTitle(true);
    preferences.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
    return preferences;
  }
}
