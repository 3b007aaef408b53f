package headcourse.drawing;

import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.Locale;
import java.util.zip.CRC32;

/** Writes marks as text, one a line, for comparing drawings. Millimetres to three decimals. */
public final class MarkDump {
  private final StringBuilder out = new StringBuilder();

  private MarkDump() {}

  /** A bundle, page by page. */
  public static String of(PageSet set) {
    MarkDump d = new MarkDump();
    d.out.append("bundle ").append(set.bundle().word()).append(' ').append(quoted(set.title()));
    d.out.append(' ').append(set.language()).append(' ').append(set.date()).append('\n');
    for (Page p : set.pages()) {
      d.page(p);
    }
    return d.out.toString();
  }

  /** One page. */
  public static String of(Page page) {
    MarkDump d = new MarkDump();
    d.page(page);
    return d.out.toString();
  }

  private void page(Page p) {
    out.append("page ").append(p.label()).append(' ').append(number(p.width())).append(" x ");
    out.append(number(p.height())).append(' ').append(quoted(p.title())).append('\n');
    for (Page.Bookmark b : p.bookmarks()) {
      out.append("bookmark ").append(b.level()).append(' ').append(quoted(b.text()));
      out.append(" #").append(b.anchor()).append(' ').append(number(b.y())).append('\n');
    }
    for (Mark m : p.marks()) {
      mark(m, 1);
    }
  }

  private void mark(Mark mark, int depth) {
    out.append(" ".repeat(depth));
    if (mark instanceof Mark.Group g) {
      out.append("group ").append(word(g.role()));
      out.append(g.id().isEmpty() ? "" : " #" + g.id());
      out.append(g.title().isEmpty() ? "" : " " + quoted(g.title())).append('\n');
      for (Mark m : g.marks()) {
        mark(m, depth + 1);
      }
    } else if (mark instanceof Mark.Coloured c) {
      out.append("colour ").append(Integer.toHexString(c.rgb() & 0xFFFFFF | 0x1000000), 1, 7);
      out.append('\n');
      mark(c.mark(), depth + 1);
    } else if (mark instanceof Mark.Stroke s) {
      out.append("stroke ").append(number(s.pen().width())).append(' ');
      line(word(s.pen().pattern()), s.path());
    } else if (mark instanceof Mark.Fill f) {
      out.append("fill ");
      line(word(f.shade()), f.path());
    } else if (mark instanceof Mark.Label l) {
      out.append("label ").append(point(l.at())).append(' ');
      out.append(number(l.lettering().height())).append(l.lettering().bold() ? " bold " : " ");
      out.append(word(l.align())).append(l.degrees() == 0 ? "" : " @" + number(l.degrees()));
      out.append(' ').append(quoted(l.text())).append('\n');
    } else if (mark instanceof Mark.Picture p) {
      CRC32 sum = new CRC32();
      sum.update(p.data());
      out.append("picture ").append(box(p.box())).append(' ').append(p.type()).append(' ');
      out.append(Long.toHexString(sum.getValue())).append('\n');
    } else if (mark instanceof Mark.Link l) {
      out.append("link ").append(box(l.box())).append(" #").append(l.target()).append('\n');
    }
  }

  private void line(String before, Path path) {
    out.append(before).append(' ').append(point(path.start()));
    for (Edge e : path.edges()) {
      if (e instanceof Arc a) {
        out.append(" arc r").append(number(a.radius())).append(a.sweep() > 0 ? "+" : "-");
      } else if (e instanceof EllipticArc a) {
        out.append(" ellipse ").append(number(a.rx())).append('/').append(number(a.ry()));
        out.append(a.sweep() > 0 ? "+" : "-");
      } else if (e instanceof Cubic c) {
        out.append(" cubic ").append(point(c.control1())).append(' ').append(point(c.control2()));
      }
      out.append(' ').append(point(e.to()));
    }
    out.append(path.closed() ? " closed\n" : "\n");
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static String box(Box b) {
    return number(b.minX())
        + ","
        + number(b.minY())
        + " "
        + number(b.maxX())
        + ","
        + number(b.maxY());
  }

  private static String point(Point p) {
    return number(p.x()) + "," + number(p.y());
  }

  private static String number(double v) {
    long n = Math.round(v * 1000);
    String sign = n < 0 ? "-" : "";
    n = Math.abs(n);
    StringBuilder s = new StringBuilder(sign).append(n / 1000);
    if (n % 1000 != 0) {
      s.append('.').append(String.valueOf(1000 + n % 1000), 1, 4);
      while (s.charAt(s.length() - 1) == '0') {
        s.setLength(s.length() - 1);
      }
    }
    return s.toString();
  }

  private static String quoted(String s) {
    return '"' + s.replace("\\", "\\\\").replace("\n", "\\n").replace("\"", "\\\"") + '"';
  }
}
