package headcourse.sheet.fullsize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.PageSet;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.job.Papers;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.SheetCases;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.StrokedPaths;
import headcourse.units.Length;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import java.awt.geom.Path2D;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 1:1 is 1:1: outlines and check bars measured in the finished PDF. One point is 25.4/72 mm (ISO
 * 32000-1, 8.3.2.3); an inch is 25.4 mm (the international yard of 1959).
 */
class FullSizeMeasureTest {
  private static final double WITHIN = 0.05;

  @ParameterizedTest
  @CsvSource({
    "DOOR_8,arch-c",
    "DOOR_8,arch-d",
    "TINY_STONES,letter",
    "MORTAR_METRIC,a3",
    "JACK,arch-c",
    "SEGMENTAL,a3",
    "SEMICIRCULAR,tabloid",
    "MIXED,arch-c"
  })
  void everyOutlineIsOnPaperAtFullSize(SheetCases head, String paper) throws Exception {
    ShopWork work = head.work(paper, Language.EN);
    List<Path2D> drawn = new ArrayList<>();
    try (PDDocument pdf = pdf(work)) {
      for (PDPage page : pdf.getPages()) {
        List<Path2D> paths = StrokedPaths.of(page);
        bars(paths);
        drawn.addAll(paths);
      }
    }
    for (HeadWork h : work.heads()) {
      for (Piece p : h.pieces()) {
        Path outline = p.stone().outline();
        assertTrue(
            drawn.stream().anyMatch(d -> same(outline, d)), p.mark() + " is nowhere at full size");
      }
    }
  }

  /** A stone of 8 by 12 in takes two tiles: its long sides less the overlap are 304.8 mm. */
  @Test
  void aLargeOutlineIsWholeOverItsTiles() throws Exception {
    List<Double> parts = new ArrayList<>();
    try (PDDocument pdf = pdf(SheetCases.DOOR_8.work("letter", Language.EN))) {
      for (PDPage page : pdf.getPages()) {
        List<Path2D> paths = StrokedPaths.of(page);
        bars(paths);
        for (Path2D p : paths) {
          List<double[]> v = StrokedPaths.vertices(p, false);
          if (v.size() == 4
              && Math.abs(StrokedPaths.distance(v.get(1), v.get(2)) - 203.2) < WITHIN) {
            double one = StrokedPaths.distance(v.get(0), v.get(1));
            // A raked stone has two different sides; the others are square.
            if (Math.abs(one - StrokedPaths.distance(v.get(2), v.get(3))) < WITHIN) {
              parts.add(one);
            }
          }
        }
      }
    }
    assertTrue(parts.size() >= 2, "no stone over two tiles");
    for (int i = 0; i + 1 < parts.size(); i += 2) {
      assertEquals(304.8 + Tiling.OVERLAP, parts.get(i) + parts.get(i + 1), WITHIN);
    }
  }

  @Test
  void aRollHasAllOutlinesOnOnePage() throws Exception {
    ShopWork made = SheetCases.DOOR_8.work("arch-d", Language.EN);
    var roll = PaperSizes.roll(Length.inches(24), Units.INCH);
    Map<Bundle, Paper> papers = new EnumMap<>(Bundle.class);
    for (Bundle b : Bundle.values()) {
      papers.put(b, roll);
    }
    ShopWork work =
        new ShopWork(
            made.job().withPapers(new Papers(papers)),
            made.heads(),
            made.stock(),
            made.materials(),
            made.findings(),
            made.changes());
    try (PDDocument pdf = pdf(work)) {
      long with = 0;
      List<Path> outlines = new ArrayList<>();
      work.heads().forEach(h -> h.pieces().forEach(p -> outlines.add(p.stone().outline())));
      for (PDPage page : pdf.getPages()) {
        List<Path2D> paths = StrokedPaths.of(page);
        bars(paths);
        double w = page.getMediaBox().getWidth() * 25.4 / 72;
        double h = page.getMediaBox().getHeight() * 25.4 / 72;
        assertTrue(Math.abs(w - 609.6) < 0.01 || Math.abs(h - 609.6) < 0.01, w + " × " + h);
        if (outlines.stream().allMatch(o -> paths.stream().anyMatch(p -> same(o, p)))) {
          with++;
        }
      }
      assertEquals(1, with, "one page holds every outline");
    }
  }

  private static void bars(List<Path2D> paths) {
    for (double length : new double[] {100, 101.6}) {
      for (int axis : new int[] {0, 1}) {
        assertTrue(
            paths.stream().anyMatch(p -> bar(p, length, axis)),
            "no bar of " + length + " mm along axis " + axis);
      }
    }
  }

  private static boolean bar(Path2D path, double length, int axis) {
    List<double[]> v = StrokedPaths.vertices(path, false);
    return v.size() == 2
        && Math.abs(v.get(0)[1 - axis] - v.get(1)[1 - axis]) < 1e-3
        && Math.abs(Math.abs(v.get(0)[axis] - v.get(1)[axis]) - length) < WITHIN;
  }

  // The same figure, turned as it may be: all distances of corners, and the area within.
  private static boolean same(Path outline, Path2D drawn) {
    List<double[]> corners = new ArrayList<>();
    for (Edge e : outline.edges()) {
      corners.add(new double[] {e.from().x(), e.from().y()});
    }
    List<double[]> all = StrokedPaths.vertices(drawn, true);
    if (all.size() < 3
        || Math.abs(area(all) - Math.abs(outline.area())) > WITHIN * outline.length()) {
      return false;
    }
    // A curve may be drawn in several pieces: corners of the outline are among the path's joints.
    List<double[]> joints = StrokedPaths.vertices(drawn, false);
    return joints.size() == corners.size()
        ? close(distances(corners), distances(joints))
        : joints.size() > corners.size()
            && curved(outline)
            && close(ends(distances(corners)), ends(distances(joints)));
  }

  private static boolean curved(Path outline) {
    return outline.edges().stream().anyMatch(e -> !(e instanceof headcourse.geom.Straight));
  }

  private static double[] ends(double[] sorted) {
    return new double[] {sorted[sorted.length - 1]};
  }

  private static boolean close(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      if (Math.abs(a[i] - b[i]) > WITHIN) {
        return false;
      }
    }
    return true;
  }

  private static double[] distances(List<double[]> v) {
    List<Double> d = new ArrayList<>();
    for (int i = 0; i < v.size(); i++) {
      for (int j = i + 1; j < v.size(); j++) {
        d.add(StrokedPaths.distance(v.get(i), v.get(j)));
      }
    }
    double[] sorted = d.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted;
  }

  private static double area(List<double[]> v) {
    double sum = 0;
    for (int i = 0; i < v.size(); i++) {
      double[] a = v.get(i);
      double[] b = v.get((i + 1) % v.size());
      sum += a[0] * b[1] - a[1] * b[0];
    }
    return Math.abs(sum) / 2;
  }

  private static PDDocument pdf(ShopWork work) throws Exception {
    PageSet set = SheetBook.compose(work, Bundle.FULL_SIZE, Frame.plain());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(set, "measure", out);
    return Loader.loadPDF(out.toByteArray());
  }
}
