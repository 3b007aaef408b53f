package headcourse.sheet;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Headings, paragraphs, tables and figures set one under the other, in as many columns as the paper
 * has room for, on as many pages as it takes.
 */
public final class SheetFlow {
  /** Narrowest column, mm; a paper with room for two has two. */
  private static final double COLUMN = 170;

  private static final double GUTTER = 10;

  private final SheetContext context;
  private final Turn turn;
  private final String label;
  private final String title;
  private final String mark;
  private final int most;
  private final double least;
  private final Air air;
  private final List<PageDraft> pages = new ArrayList<>();
  private PageDraft page;
  private int column;
  private double top;
  private double y;

  /**
   * A flow.
   *
   * @param label label of its first page; further ones are numbered
   * @param title title of its pages
   * @param mark an opening's mark that is set large before the title, or empty
   */
  public SheetFlow(SheetContext context, Turn turn, String label, String title, String mark) {
    this(context, turn, label, title, mark, Integer.MAX_VALUE);
  }

  /** A flow in at most so many columns. */
  public SheetFlow(
      SheetContext context, Turn turn, String label, String title, String mark, int most) {
    this(context, turn, label, title, mark, most, Air.MUCH);
  }

  private SheetFlow(
      SheetContext context, Turn turn, String label, String title, String mark, int most, Air air) {
    this(context, turn, label, title, mark, most, air, COLUMN);
  }

  /** A flow in columns that are no narrower than so much, mm. */
  public SheetFlow(SheetContext context, Turn turn, String title, double least) {
    this(context, turn, "", title, "", Integer.MAX_VALUE, Air.MUCH, least);
  }

  private SheetFlow(
      SheetContext context,
      Turn turn,
      String label,
      String title,
      String mark,
      int most,
      Air air,
      double least) {
    this.least = least;
    this.most = most;
    this.air = air;
    this.context = context;
    this.turn = turn;
    this.label = label;
    this.title = title;
    this.mark = mark;
    newPage();
  }

  /**
   * What is between lines and paragraphs.
   *
   * @param leading distance of base lines over the height of capitals
   * @param paragraph below a paragraph, over the height of its capitals
   * @param heading above a heading, mm
   * @param table below a table, mm
   */
  private record Air(double leading, double paragraph, double heading, double table) {
    static final Air MUCH = new Air(TextFlow.LEADING, 0.3, 3, 2);
    static final Air LITTLE = new Air(1.6, 0.15, 2, 1);
    static final Air LEAST = new Air(1.52, 0.1, 1.5, 0.6);
  }

  /** The pages of a flow in at most so many columns, set closer where that saves a page. */
  public static List<PageDraft> pages(
      SheetContext context,
      Turn turn,
      String label,
      String title,
      String mark,
      int most,
      Consumer<SheetFlow> content) {
    SheetFlow flow = new SheetFlow(context, turn, label, title, mark, most, Air.MUCH);
    content.accept(flow);
    if (flow.pages.size() == 1) {
      return flow.pages();
    }
    for (Air air : List.of(Air.LITTLE, Air.LEAST)) {
      SheetFlow close = new SheetFlow(context, turn, label, title, mark, most, air);
      content.accept(close);
      flow = close.pages.size() < flow.pages.size() ? close : flow;
    }
    return flow.pages();
  }

  /** The same in as many columns as there is room for, none narrower than so much, mm. */
  public static List<PageDraft> pages(
      SheetContext context, Turn turn, String title, double least, Consumer<SheetFlow> content) {
    SheetFlow best = null;
    for (Air air : List.of(Air.MUCH, Air.LITTLE, Air.LEAST)) {
      SheetFlow flow = new SheetFlow(context, turn, "", title, "", Integer.MAX_VALUE, air, least);
      content.accept(flow);
      best = best == null || flow.pages.size() < best.pages.size() ? flow : best;
    }
    return best.pages();
  }

  /** The same in as many columns as there is room for. */
  public static List<PageDraft> pages(
      SheetContext context,
      Turn turn,
      String label,
      String title,
      String mark,
      Consumer<SheetFlow> content) {
    return pages(context, turn, label, title, mark, Integer.MAX_VALUE, content);
  }

  /** The turn that gives the most length of columns on the bundle's paper. */
  public static Turn bestTurn(SheetContext context) {
    return length(context.area(Turn.LANDSCAPE)) > length(context.area(Turn.PORTRAIT)) + 1
        ? Turn.LANDSCAPE
        : Turn.PORTRAIT;
  }

  private static double length(Box area) {
    return columns(area, COLUMN) * (area.height() - 20);
  }

  private static int columns(Box area, double least) {
    return Math.max(1, (int) Math.floor((area.width() + GUTTER) / (least + GUTTER)));
  }

  private int columnsHere() {
    return Math.min(most, columns(page.area(), least));
  }

  private void newPage() {
    String name = pages.isEmpty() ? label : label + "-" + (pages.size() + 1);
    page = pages.isEmpty() ? context.first(turn, name, title) : context.page(turn, name, title);
    pages.add(page);
    Box area = page.area();
    page.board().group(Role.TITLE, "", "", b -> top = title(b, area));
    column = 0;
    y = top;
  }

  private double title(Board board, Box area) {
    double x = area.minX();
    if (!mark.isEmpty()) {
      Lettering big = new Lettering(14, true);
      board.text(x, area.minY() + 14, mark, big, Align.START);
      x += LabelShape.width(mark, big) + 5;
    }
    Lettering name7 = new Lettering(7, true);
    double room = area.maxX() - x;
    List<String> lines = TextFlow.lines(title, room, name7);
    Lettering set = lines.size() > 1 ? new Lettering(5, true) : name7;
    double at = mark.isEmpty() || lines.size() > 1 ? area.minY() : area.minY() + 7;
    double below = TextFlow.paragraph(board, x, at, room, title, set) + 2 - set.height() * 0.5;
    return Math.max(below, mark.isEmpty() ? area.minY() : area.minY() + 18);
  }

  /** Width of a column, mm. */
  public double width() {
    int n = columnsHere();
    return (page.area().width() - (n - 1) * GUTTER) / n;
  }

  private double x() {
    return page.area().minX() + column * (width() + GUTTER);
  }

  private double bottom() {
    return page.area().maxY();
  }

  /** Height that is left in this column, mm. */
  public double left() {
    return bottom() - y;
  }

  /** Height of an empty column, mm. */
  public double tallest() {
    return bottom() - top;
  }

  /** The page being set. */
  public PageDraft page() {
    return page;
  }

  /** Goes on in the next column, or on the next page. */
  public void next() {
    if (column + 1 < columnsHere()) {
      column++;
      y = top;
    } else {
      newPage();
    }
  }

  /** Makes sure of so much height, or as much as a column has. */
  public void need(double height) {
    if (height > left() + 1e-9 && y > top + 1e-9) {
      next();
    }
  }

  /** Leaves some air, unless a column begins. */
  public void space(double height) {
    if (y > top) {
      y += height;
    }
  }

  /** A heading, kept with at least so much of what follows it, mm. */
  public void heading(String text, double with) {
    Lettering l = new Lettering(5, true);
    double h = TextFlow.height(text, width(), l);
    space(air.heading);
    need(h + with);
    page.board()
        .group(
            Role.HEADING,
            "",
            text,
            b -> y = TextFlow.paragraph(b, x(), y, width(), text, l) - l.height() * 0.2);
  }

  /** A paragraph; it may run over into the next column. */
  public void paragraph(String text, Lettering lettering) {
    List<String> lines = TextFlow.lines(text, width(), lettering);
    double pitch = lettering.height() * air.leading;
    int parted = parted(lines.size(), (left() - lettering.height() * 1.4) / pitch + 1);
    for (int i = 0; i < lines.size(); i++) {
      need(i == parted ? left() + 1 : lettering.height() * 1.4);
      page.board().text(x(), y + lettering.height(), lines.get(i), lettering, Align.START);
      y += pitch;
    }
    y += lettering.height() * air.paragraph;
  }

  // The line that a column breaks before: neither the first line nor the last stands alone.
  private static int parted(int lines, double room) {
    int here = (int) Math.floor(room + 1e-9);
    if (here >= lines) {
      return -1;
    }
    int before = here == lines - 1 ? here - 1 : here;
    return before < 2 ? 0 : before;
  }

  /** A paragraph by its key, each language of the job by itself. */
  public void say(String key, Lettering lettering, Object... values) {
    context.words().each(key, values).forEach(text -> paragraph(text, lettering));
  }

  /** A paragraph with a number or a sign before it; its lines are kept together. */
  public void item(String sign, String text, Lettering lettering) {
    double indent = lettering.height() * 2.4;
    List<String> lines = TextFlow.lines(text, width() - indent, lettering);
    double pitch = lettering.height() * air.leading;
    need(lines.size() * pitch);
    page.board().text(x(), y + lettering.height(), sign, lettering.inBold(), Align.START);
    for (String line : lines) {
      page.board().text(x() + indent, y + lettering.height(), line, lettering, Align.START);
      y += pitch;
    }
    y += lettering.height() * air.paragraph;
  }

  /** A table under a heading of its own, which never stands without the first row. */
  public void table(
      String heading, List<Table.Column> weighted, List<List<String>> rows, Lettering lettering) {
    Table all = ColumnShares.table(weighted, rows, lettering, width());
    double first = all.part(0, Math.min(1, rows.size())).height();
    heading(heading, Math.min(first, tallest() / 2) + 1);
    table(weighted, rows, lettering);
  }

  /**
   * A table over the whole width of a column, its own columns shared out by weight and need; it
   * runs over into the next column with its heading repeated.
   */
  public void table(List<Table.Column> weighted, List<List<String>> rows, Lettering lettering) {
    Table table = ColumnShares.table(weighted, rows, lettering, width()).cut(tallest() / 2);
    int next = 0;
    while (next < table.rows().size()) {
      need(table.part(next, next + 1).height());
      Table.Drawn drawn = table.draw(page.board(), x(), y, bottom(), next);
      if (drawn.nextRow() == next && y <= top + 1e-9) {
        throw new NoRoom("a row of " + title);
      }
      y = drawn.bottom();
      next = drawn.nextRow();
      if (next < table.rows().size()) {
        next();
      }
    }
    y += air.table;
  }

  /** What draws a figure: its place is given by the left end and the upper edge. */
  public interface Figure {
    /** Draws it. */
    void draw(Board board, double x, double y);
  }

  /** A figure of a known height. */
  public void figure(double height, Figure figure) {
    need(height);
    figure.draw(page.board(), x(), y);
    y += height;
  }

  /** The pages. */
  public List<PageDraft> pages() {
    return List.copyOf(pages);
  }
}
