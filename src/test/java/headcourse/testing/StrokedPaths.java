package headcourse.testing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;

/** The stroked paths of a finished PDF page, in millimetres on paper, read from its operators. */
public final class StrokedPaths {
  private static final double MM = 25.4 / 72;

  private StrokedPaths() {}

  /** The paths in painting order; each subpath by itself. */
  public static List<Path2D> of(PDPage page) throws IOException {
    List<Path2D> all = new ArrayList<>();
    read(page, (mark, path) -> all.add(path));
    return all;
  }

  /** The same by the number of the marked content that they belong to; -1 where none. */
  public static Map<Integer, List<Path2D>> byMark(PDPage page) throws IOException {
    Map<Integer, List<Path2D>> all = new TreeMap<>();
    read(page, (mark, path) -> all.computeIfAbsent(mark, k -> new ArrayList<>()).add(path));
    return all;
  }

  private static void read(PDPage page, BiConsumer<Integer, Path2D> stroked) throws IOException {
    Deque<Integer> marks = new ArrayDeque<>();
    int next = -1;
    AffineTransform now = AffineTransform.getScaleInstance(MM, MM);
    Deque<AffineTransform> saved = new ArrayDeque<>();
    List<Double> numbers = new ArrayList<>();
    List<Path2D> open = new ArrayList<>();
    PDFStreamParser parser = new PDFStreamParser(page);
    for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
      if (token instanceof COSNumber n) {
        numbers.add((double) n.floatValue());
        continue;
      }
      if (token instanceof COSDictionary properties) {
        next = properties.getInt(COSName.MCID, -1);
      }
      if (!(token instanceof Operator op)) {
        continue;
      }
      double[] v = numbers.stream().mapToDouble(Double::doubleValue).toArray();
      Path2D last = open.isEmpty() ? null : open.get(open.size() - 1);
      switch (op.getName()) {
        case "BDC", "BMC" -> {
          marks.push(next >= 0 || marks.isEmpty() ? next : marks.peek());
          next = -1;
        }
        case "EMC" -> marks.pop();
        case "q" -> saved.push(new AffineTransform(now));
        case "Q" -> now = saved.pop();
        case "cm" -> now.concatenate(new AffineTransform(v));
        case "m" -> {
          Path2D p = new Path2D.Double();
          p.moveTo(v[0], v[1]);
          open.add(p);
        }
        case "l" -> last.lineTo(v[0], v[1]);
        case "c" -> last.curveTo(v[0], v[1], v[2], v[3], v[4], v[5]);
        case "h" -> last.closePath();
        case "re" -> {
          Path2D p = new Path2D.Double();
          p.moveTo(v[0], v[1]);
          p.lineTo(v[0] + v[2], v[1]);
          p.lineTo(v[0] + v[2], v[1] + v[3]);
          p.lineTo(v[0], v[1] + v[3]);
          p.closePath();
          open.add(p);
        }
        case "S", "s", "B" -> {
          for (Path2D p : open) {
            if (op.getName().equals("s")) {
              p.closePath();
            }
            p.transform(now);
            stroked.accept(marks.isEmpty() ? -1 : marks.peek(), p);
          }
          open.clear();
        }
        case "f", "f*", "n" -> open.clear();
        default -> {}
      }
      numbers.clear();
    }
  }

  /** Its vertices; curves in chords a thousandth of a millimetre off. */
  public static List<double[]> vertices(Path2D path, boolean flatten) {
    List<double[]> points = new ArrayList<>();
    double[] c = new double[6];
    PathIterator it = flatten ? path.getPathIterator(null, 1e-3) : path.getPathIterator(null);
    for (; !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind != PathIterator.SEG_CLOSE) {
        int k = kind == PathIterator.SEG_CUBICTO ? 4 : 0;
        points.add(new double[] {c[k], c[k + 1]});
      }
    }
    int n = points.size();
    if (n > 1 && distance(points.get(0), points.get(n - 1)) < 1e-3) {
      points.remove(n - 1);
    }
    return points;
  }

  /** The distance of two places, mm. */
  public static double distance(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  }
}
