package headcourse.testing;

import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** A finished PDF as it is read: its structure with the text and the lines of each part. */
public final class FinishedPdf {
  private static final double MM = 25.4 / 72;

  private FinishedPdf() {}

  /**
   * A text as it was written in one go; millimetres from the page's lower left corner.
   *
   * @param x where its base line begins
   * @param y height of its base line there
   * @param width along the base line
   * @param degrees turned counter-clockwise
   */
  public record Run(String text, double x, double y, double width, double degrees) {
    /** The middle of its base line, across the page. */
    public double middleX() {
      return x + width / 2 * Math.cos(Math.toRadians(degrees));
    }

    /** The middle of its base line, up the page. */
    public double middleY() {
      return y + width / 2 * Math.sin(Math.toRadians(degrees));
    }
  }

  /**
   * A part of the structure, with what is in it.
   *
   * @param type as in {@code Table}, {@code TR}, {@code Figure}
   * @param alt the alternate text of a figure, the title of a sheet, or empty
   * @param page from 0
   * @param runs texts in the order of painting, those of its kids not among them
   * @param paths stroked paths, likewise
   */
  public record Part(
      String type, String alt, int page, List<Run> runs, List<Path2D> paths, List<Part> kids) {
    /** This part and all under it, in order. */
    public Stream<Part> all() {
      return Stream.concat(Stream.of(this), kids.stream().flatMap(Part::all));
    }

    /** All texts of it and of what is under it. */
    public List<Run> texts() {
      return all().flatMap(p -> p.runs.stream()).toList();
    }

    /** The same as one line. */
    public String text() {
      return texts().stream().map(Run::text).collect(Collectors.joining(" "));
    }

    /** The cells of a table, row by row. */
    public List<List<String>> rows() {
      return kids.stream().map(row -> row.kids.stream().map(Part::text).toList()).toList();
    }
  }

  /** The parts of a file; those that are pages first in their order. */
  public static List<Part> read(byte[] file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file)) {
      Reader reader = new Reader();
      reader.getText(pdf);
      List<Map<Integer, List<Path2D>>> paths = new ArrayList<>();
      Map<COSDictionary, Integer> pages = new LinkedHashMap<>();
      for (PDPage page : pdf.getPages()) {
        pages.put(page.getCOSObject(), pages.size());
        paths.add(StrokedPaths.byMark(page));
      }
      List<Part> parts = new ArrayList<>();
      for (Object kid : pdf.getDocumentCatalog().getStructureTreeRoot().getKids()) {
        parts.add(part((PDStructureElement) kid, 0, pages, reader.pages, paths));
      }
      return parts;
    }
  }

  private static Part part(
      PDStructureElement e,
      int above,
      Map<COSDictionary, Integer> pages,
      List<Map<Integer, List<Run>>> texts,
      List<Map<Integer, List<Path2D>>> paths) {
    int page = e.getPage() == null ? above : pages.get(e.getPage().getCOSObject());
    List<Run> runs = new ArrayList<>();
    List<Path2D> strokes = new ArrayList<>();
    List<Part> kids = new ArrayList<>();
    for (Object kid : e.getKids()) {
      if (kid instanceof PDStructureElement inner) {
        kids.add(part(inner, page, pages, texts, paths));
      } else if (kid instanceof Integer id) {
        runs.addAll(texts.get(page).getOrDefault(id, List.of()));
        strokes.addAll(paths.get(page).getOrDefault(id, List.of()));
      }
    }
    String alt = e.getAlternateDescription() == null ? e.getTitle() : e.getAlternateDescription();
    return new Part(e.getStructureType(), alt == null ? "" : alt, page, runs, strokes, kids);
  }

  /** Texts by marked content, page by page. */
  private static final class Reader extends PDFTextStripper {
    private final List<Map<Integer, List<Run>>> pages = new ArrayList<>();
    private final Deque<Integer> marks = new ArrayDeque<>();
    private final List<TextPosition> open = new ArrayList<>();

    Reader() throws IOException {
      setSuppressDuplicateOverlappingText(false);
    }

    @Override
    protected void startPage(PDPage page) {
      pages.add(new TreeMap<>());
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
      int id = properties == null ? -1 : properties.getInt(COSName.MCID, -1);
      marks.push(id >= 0 || marks.isEmpty() ? id : marks.peek());
    }

    @Override
    public void endMarkedContentSequence() {
      marks.pop();
    }

    @Override
    protected void processTextPosition(TextPosition position) {
      open.add(position);
    }

    @Override
    public void endText() throws IOException {
      super.endText();
      if (open.isEmpty()) {
        return;
      }
      Matrix m = open.get(0).getTextMatrix();
      double degrees = Math.toDegrees(Math.atan2(m.getShearY(), m.getScaleX()));
      StringBuilder text = new StringBuilder();
      open.forEach(p -> text.append(p.getUnicode()));
      Matrix last = open.get(open.size() - 1).getTextMatrix();
      double width =
          Math.hypot(
                  last.getTranslateX() - m.getTranslateX(),
                  last.getTranslateY() - m.getTranslateY())
              + open.get(open.size() - 1).getWidthDirAdj();
      pages
          .get(pages.size() - 1)
          .computeIfAbsent(marks.isEmpty() ? -1 : marks.peek(), k -> new ArrayList<>())
          .add(
              new Run(
                  Tape.raised(text.toString()),
                  m.getTranslateX() * MM,
                  m.getTranslateY() * MM,
                  width * MM,
                  degrees));
      open.clear();
    }
  }
}
