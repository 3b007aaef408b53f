package headcourse.sheet;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Point;
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
  /** Air at either side of a cell, mm. */
  static final double PAD = 1.4;

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

  /**
   * The same with rows that are taller than {@code tallest} mm, but for one line, cut in several: a
   * list of hundreds of stones goes on over the page instead of finding room on none.
   */
  public Table cut(double tallest) {
    double line = lettering.height() * TextFlow.LEADING;
    double single = height(List.of(List.of("")), false);
    int most = 1 + (int) Math.max(0, Math.floor((tallest - single) / line + 1e-9));
    List<List<String>> all = new ArrayList<>();
    for (List<String> row : rows) {
      List<List<String>> lines = wrapped(row, false);
      int tall = lines.stream().mapToInt(List::size).max().orElse(0);
      if (tall <= most) {
        all.add(row);
        continue;
      }
      for (int from = 0; from < tall; from += most) {
        int at = from;
        all.add(lines.stream().map(c -> part(c, at, at + most)).toList());
      }
    }
    return new Table(columns, all, lettering);
  }

  private static String part(List<String> lines, int from, int to) {
    return from >= lines.size()
        ? ""
        : String.join(" ", lines.subList(from, Math.min(to, lines.size())));
  }

  /** Its rows from one to before another, under the same heading. */
  public Table part(int from, int to) {
    return new Table(columns, rows.subList(from, to), lettering);
  }

  /** What was drawn: how far down it reaches, and the first row left for the next page. */
  public record Drawn(double bottom, int nextRow) {}

  /** Its width. */
  public double width() {
    return columns.stream().mapToDouble(Column::width).sum();
  }

  /** The row that is left for the next page; never the last alone, if more than two stand here. */
  private int until(double room, int first) {
    double left = room - (headed() ? height(wrapped(headings(), true), true) : 0);
    int next = first;
    while (next < rows.size()) {
      left -= height(wrapped(rows.get(next), false), false);
      if (left < -1e-9) {
        break;
      }
      next++;
    }
    return next == rows.size() - 1 && next - first > 2 ? next - 1 : next;
  }

  /** Draws the heading and as many rows from {@code first} on as fit above {@code limit}. */
  public Drawn draw(Board board, double x, double top, double limit, int first) {
    int until = until(limit - top, first);
    int[] next = {first};
    double[] y = {top};
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          if (headed()) {
            y[0] = row(b, x, y[0], wrapped(headings(), true), true);
            b.line(x, y[0], x + width(), y[0], Pen.EDGE);
          }
          while (next[0] < until) {
            y[0] = row(b, x, y[0], wrapped(rows.get(next[0]), false), false);
            b.line(x, y[0], x + width(), y[0], Pen.FINE);
            next[0]++;
          }
        });
    return new Drawn(y[0], next[0]);
  }

  /** The height of the whole table. */
  public double height() {
    double h = 0;
    if (headed()) {
      h += height(wrapped(headings(), true), true);
    }
    for (List<String> r : rows) {
      h += height(wrapped(r, false), false);
    }
    return h;
  }

  private List<String> headings() {
    List<String> headings = new ArrayList<>();
    for (Column c : columns) {
      headings.add(c.heading);
    }
    return headings;
  }

  private boolean headed() {
    for (Column c : columns) {
      if (!c.heading.isEmpty()) {
        return true;
      }
    }
    return false;
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

  private double height(List<List<String>> cells, boolean heading) {
    int most = columns.isEmpty() ? 1 : 0;
    for (List<String> lines : cells) {
      most = Math.max(most, lines.size());
    }
    double cap = heading ? Lettering.LEAST : lettering.height();
    return most * cap * TextFlow.LEADING - cap * (TextFlow.LEADING - 1) + 2 * pad(cap);
  }

  // Tall lettering reaches farther below its base line.
  private static double pad(double cap) {
    return Math.max(PAD, cap * 0.37);
  }

  private double row(Board board, double x, double top, List<List<String>> cells, boolean heading) {
    double left = x;
    List<Mark> row = new ArrayList<>();
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
      List<Mark> cell = new ArrayList<>();
      for (String line : cells.get(i)) {
        if (!line.isEmpty()) {
          cell.add(new Mark.Label(new Point(at, y), line, l, c.align, 0));
        }
        y += l.height() * TextFlow.LEADING;
      }
      row.add(new Mark.Group(heading ? Role.HEAD_CELL : Role.CELL, "", "", cell));
      left += c.width;
    }
    board.add(new Mark.Group(Role.ROW, "", "", row));
    return top + height(cells, heading);
  }
}
