package headcourse.cli;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.List;
import java.util.Locale;

/**
 * The marks of a bundle's pages as a golden keeps them, one a line: what is lettered and where, how
 * lines run. To a tenth of a millimetre, because that is what shows; the frame, alike on every
 * page, is left out but for its words on the first.
 */
final class MarkLines {
  private final StringBuilder out = new StringBuilder();

  private MarkLines() {}

  static String of(PageSet set) {
    MarkLines lines = new MarkLines();
    boolean first = true;
    for (Page p : set.pages()) {
      lines.out.append("page ").append(p.label()).append(' ').append(tenths(p.width()));
      lines.out.append(" x ").append(tenths(p.height())).append(' ').append(p.title()).append('\n');
      for (Mark m : p.marks()) {
        lines.mark(m, "", first);
      }
      first = false;
    }
    return lines.out.toString();
  }

  private void mark(Mark mark, String role, boolean frame) {
    if (mark instanceof Mark.Group g) {
      if (g.role() != Mark.Role.FRAME || frame) {
        String inner = g.role().name().toLowerCase(Locale.ROOT) + " ";
        if (!g.id().isEmpty() || !g.title().isEmpty()) {
          out.append(inner).append('#').append(g.id()).append(' ').append(one(g.title()));
          out.append('\n');
        }
        g.marks().forEach(m -> mark(m, inner, frame));
      }
    } else if (mark instanceof Mark.Coloured c) {
      mark(c.mark(), role, frame);
    } else if (mark instanceof Mark.Label l) {
      out.append(role).append(place(l.at())).append(' ').append(tenths(l.lettering().height()));
      out.append(l.lettering().bold() ? "b" : "").append(l.align().name().charAt(0));
      out.append(l.degrees() == 0 ? "" : "@" + tenths(l.degrees()));
      out.append(' ').append(one(l.text())).append('\n');
    } else if (mark instanceof Mark.Stroke s) {
      out.append(role).append(s.pen().width()).append(s.pen().pattern().name().charAt(0));
      line(s.path());
    } else if (mark instanceof Mark.Link l) {
      out.append("link ").append(l.target()).append('\n');
    }
  }

  // Fills lie under strokes of their own, except arrow heads and dots.
  private void line(Path path) {
    List<Edge> edges = path.edges();
    out.append(' ').append(place(path.start()));
    for (Edge e : edges) {
      out.append(' ').append(place(e.to()));
    }
    out.append(path.closed() ? " o\n" : "\n");
  }

  private static String one(String text) {
    return text.replace("\n", "\\n");
  }

  private static String place(Point p) {
    return tenths(p.x()) + "," + tenths(p.y());
  }

  // Half way between two tenths a sum may fall either way; a hundredth of a tenth decides.
  private static String tenths(double mm) {
    long n = Math.round(mm * 10 + 1e-3);
    return (n < 0 ? "-" : "") + Math.abs(n) / 10 + (n % 10 == 0 ? "" : "." + Math.abs(n) % 10);
  }
}
