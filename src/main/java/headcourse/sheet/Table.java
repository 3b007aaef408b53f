package headcourse.sheet;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * A table with rules between rows; cells wrap.
 *
 * @param columns from left to right
 * @param rows cells as printed
 * @param lettering of the cells; the heading is set one weight bolder
 */
public record Table(List<Column> columns, List<List<String>> rows, Lettering lettering) {
  private static final double PAD = 1.4;

  /** Copies the lists. */
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(r -> List.copyOf(r)).toList();
  }

  /**
   * A column.
   *
   * @param heading its heading
   * @param width mm
   * @param align how its cells lie
   * @param bold whether its cells are bold
   */
  public record Column(String heading, double width, Align align, boolean bold) {}

  /** What was drawn: how far down it reaches, and the first row left for the next page. */
  public record Drawn(double bottom, int nextRow) {}

  /** Its width. */
  public double width() {
    return columns.stream().mapToDouble(Column::width).sum();
  }

  /** Draws the heading and as many rows from {@code first} on as fit above {@code limit}. */
  public Drawn draw(Board board, double x, double top, double limit, int first) {
    int[] next = {first};
    double[] y = {top};
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          List<String> heads = columns.stream().map(Column::heading).toList();
          if (heads.stream().anyMatch(h -> !h.isEmpty())) {
            y[0] = row(b, x, y[0], heads, true);
            b.line(x, y[0], x + width(), y[0], Pen.EDGE);
          }
          while (next[0] < rows.size() && y[0] + height(rows.get(next[0]), false) <= limit) {
            y[0] = row(b, x, y[0], rows.get(next[0]), false);
            b.line(x, y[0], x + width(), y[0], Pen.FINE);
            next[0]++;
          }
        });
    return new Drawn(y[0], next[0]);
  }

  /** The height of the whole table. */
  public double height() {
    double h = 0;
    List<String> heads = columns.stream().map(Column::heading).toList();
    if (heads.stream().anyMatch(s -> !s.isEmpty())) {
      h += height(heads, true);
    }
    for (List<String> r : rows) {
      h += height(r, false);
    }
    return h;
  }

  private Lettering letteringOf(Column c, boolean heading) {
    if (heading) {
      return new Lettering(Lettering.LEAST, true);
    }
    return new Lettering(lettering.height(), lettering.bold() || c.bold);
  }

  private List<List<String>> wrapped(List<String> cells, boolean heading) {
    List<List<String>> all = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column c = columns.get(i);
      all.add(TextFlow.lines(cells.get(i), c.width - 2 * PAD, letteringOf(c, heading)));
    }
    return all;
  }

  private double height(List<String> cells, boolean heading) {
    int most = wrapped(cells, heading).stream().mapToInt(List::size).max().orElse(1);
    double cap = heading ? Lettering.LEAST : lettering.height();
    return most * cap * TextFlow.LEADING - cap * (TextFlow.LEADING - 1) + 2 * pad(cap);
  }

  // Tall lettering reaches farther below its base line.
  private static double pad(double cap) {
    return Math.max(PAD, cap * 0.37);
  }

  private double row(Board board, double x, double top, List<String> cells, boolean heading) {
    List<List<String>> lines = wrapped(cells, heading);
    double left = x;
    for (int i = 0; i < columns.size(); i++) {
      Column c = columns.get(i);
      Lettering l = letteringOf(c, heading);
      double at =
          switch (c.align) {
            case START -> left + PAD;
            case MIDDLE -> left + c.width / 2;
            case END -> left + c.width - PAD;
          };
      double y = top + pad(l.height()) + l.height();
      for (String line : lines.get(i)) {
        board.text(at, y, line, l, c.align);
        y += l.height() * TextFlow.LEADING;
      }
      left += c.width;
    }
    return top + height(cells, heading);
  }
}
