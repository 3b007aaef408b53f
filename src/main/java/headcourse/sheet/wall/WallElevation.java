package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.elevation.ElevationChoice;
import headcourse.sheet.elevation.ElevationFigure;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.sheet.elevation.HeadPart;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.sheet.solid.SolidFigure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One large elevation a page, to be read from the scaffold. */
public final class WallElevation implements SheetComposer {
  private static final Lettering TITLE = new Lettering(5, true);
  private static final Lettering SMALL = Lettering.NOTE;
  private static final Lettering LINE = new Lettering(3.5, false);

  /** Air above what stands across the foot of a page, mm. */
  private static final double STRIP_GAP = 3;

  /** An elevation may lose so much of its size to what stands beside it. */
  private static final double SMALLER = 0.7;

  /** The elevations of a wall bundle. */
  public WallElevation() {}

  @Override
  public Bundle bundle() {
    return Bundle.WALL;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    List<PageDraft> pages = new ArrayList<>();
    for (HeadWork head : context.work().heads()) {
      pages.addAll(pages(context.of(head), head));
    }
    return pages;
  }

  /** The elevation of one head, on as many pages as it takes. */
  static List<PageDraft> pages(SheetContext context, HeadWork head) {
    HeadFigures figures = new HeadFigures(head, context.format());
    ElevationChoice choice = choose(context, figures, 0);
    List<PageDraft> pages = pages(context, figures, choice, 0);
    if (pages.stream().anyMatch(page -> SolidFigure.inMargin(context, head, page))) {
      return pages;
    }
    Box area = context.area(choice.turn());
    SolidFigure strip = SolidFigure.strip(context, head, area.width());
    double high = strip.height() + STRIP_GAP;
    Optional<ElevationChoice> less = noLess(context, figures, choice, high);
    if (less.isPresent()) {
      pages = pages(context, figures, less.get(), high);
      PageDraft page = pages.get(0);
      strip.draw(page.board(), page.area().minX(), page.area().maxY() - strip.height());
      return pages;
    }
    Opening opening = head.layout().opening();
    String title = context.say("wall.elevation-of", opening.mark(), opening.label());
    PageDraft own = context.page(choice.turn(), opening.mark(), title);
    double below =
        TextFlow.paragraph(own.board(), area.minX(), area.minY(), area.width(), title, TITLE);
    SolidFigure.alone(context, head, area.width()).draw(own.board(), area.minX(), below + 2);
    pages.add(own);
    return pages;
  }

  private static ElevationChoice choose(SheetContext context, HeadFigures figures, double less) {
    List<ElevationChoice.Room> rooms = new ArrayList<>();
    for (Turn turn : List.of(Turn.LANDSCAPE, Turn.PORTRAIT)) {
      Box area = context.area(turn);
      HeadPart whole = new HeadPart(1, 1, figures.layout().stones());
      double bare = area.maxY() - 3 - less;
      double high = bare - tallest(context, figures, area, whole);
      double parts = bare - tallest(context, figures, area, null);
      rooms.add(new ElevationChoice.Room(turn, area.width(), high, parts));
    }
    return ElevationChoice.choose(figures, context.job().units(), context.words(), rooms);
  }

  /** The elevation in so much less height, if that costs no sheet more and little size. */
  private static Optional<ElevationChoice> noLess(
      SheetContext context, HeadFigures figures, ElevationChoice full, double height) {
    try {
      ElevationChoice less = choose(context, figures, height);
      ElevationFigure one = full.figures().get(0);
      ElevationFigure other = less.figures().get(0);
      return less.turn() == full.turn()
              && less.figures().size() == full.figures().size()
              && other.scale().factor() >= SMALLER * one.scale().factor()
              && other.lettering() >= SMALLER * one.lettering()
          ? Optional.of(less)
          : Optional.empty();
    } catch (NoRoom e) {
      return Optional.empty();
    }
  }

  private static List<PageDraft> pages(
      SheetContext context, HeadFigures figures, ElevationChoice choice, double kept) {
    Opening opening = figures.layout().opening();
    List<PageDraft> pages = new ArrayList<>();
    for (ElevationFigure figure : choice.figures()) {
      HeadPart part = figure.part();
      String label = opening.mark() + (part.whole() ? "" : "-" + part.number());
      String title = context.say("wall.elevation-of", opening.mark(), opening.label());
      PageDraft page = context.page(choice.turn(), label, title);
      page.scale(figure.scale().name());
      if (part.number() == 1) {
        page.bookmark(1, title, "wall-" + opening.mark(), page.area().minY());
      }
      Box all = page.area();
      double to = all.maxY() - (part.number() == 1 ? kept : 0);
      Box area = new Box(all.minX(), all.minY(), all.maxX(), to);
      draw(context, figures, figure, page.board(), area, title);
      pages.add(page);
    }
    return pages;
  }

  // Where the header ends at the worst: what it says of the scale may take one line more.
  private static double tallest(
      SheetContext context, HeadFigures figures, Box area, HeadPart part) {
    Columns columns = Columns.of(figures, area);
    Set<Taken> known = new HashSet<>();
    double most = 0;
    for (Scale scale : Scale.ladder(context.job().units())) {
      int lines = TextFlow.lines(seen(context, scale), columns.width, columns.small).size();
      double bar = bar(new Board(), context, scale, area, columns, 0);
      if (known.add(new Taken(lines, bar))) {
        most = Math.max(most, header(new Board(), context, figures, area, scale, part));
      }
    }
    return most;
  }

  /** What a scale changes of a header's height: lines that name it, and height of its bar, mm. */
  private record Taken(int lines, double bar) {}

  /**
   * How a header's width is shared out, mm.
   *
   * @param wide whether there is a column at the right
   * @param right its width, or 0
   * @param cap height of the opening's mark
   * @param indent width of the mark
   * @param width of the text beside the mark
   * @param small lettering of the lesser lines
   */
  private record Columns(
      boolean wide, double right, double cap, double indent, double width, Lettering small) {
    static Columns of(HeadFigures figures, Box area) {
      boolean wide = area.width() > 235;
      double right = wide ? Math.max(area.width() * 0.36, 96) : 0;
      double cap = area.width() > 350 ? 20 : 14;
      String mark = figures.layout().opening().mark();
      double indent = LabelShape.width(mark, new Lettering(cap, true)) + 5;
      double width = area.width() - indent - right - (wide ? 6 : 0);
      return new Columns(wide, right, cap, indent, width, area.width() > 350 ? LINE : SMALL);
    }
  }

  private static String seen(SheetContext context, Scale scale) {
    return context.say("wall.seen-from-outside") + " · " + scale.name();
  }

  private static double bar(
      Board b, SheetContext context, Scale scale, Box area, Columns columns, double y) {
    double room = columns.wide ? area.width() - columns.right - 6 : area.width();
    return ScaleBar.draw(b, context.words(), context.job().units(), scale, area.minX(), y, room);
  }

  private static void draw(
      SheetContext context,
      HeadFigures figures,
      ElevationFigure figure,
      Board board,
      Box area,
      String title) {
    double[] top = {0};
    board.group(
        Role.NOTES,
        "",
        "",
        b -> top[0] = header(b, context, figures, area, figure.scale(), figure.part()));
    double slack = area.maxY() - top[0] - 3 - figure.height();
    double[] bottom = {0};
    board.group(
        Role.FIGURE,
        "",
        title,
        b -> bottom[0] = figure.draw(b, area.minX(), top[0] + 3 + Math.max(0, slack) * 0.35));
    String note = context.say("wall.veneer-carries-nothing");
    double height = TextFlow.height(note, area.width(), SMALL);
    if (!figure.part().whole()) {
      KeyPlan.draw(board, figures, figure.part(), area, bottom[0], area.maxY() - height - 3);
    }
    if (bottom[0] + height + 3 <= area.maxY()) {
      TextFlow.paragraph(board, area.minX(), area.maxY() - height, area.width(), note, SMALL);
    }
  }

  // Draws the header and says where it ends; a null part stands for any.
  private static double header(
      Board b, SheetContext context, HeadFigures figures, Box area, Scale scale, HeadPart part) {
    Opening opening = figures.layout().opening();
    Columns columns = Columns.of(figures, area);
    Lettering small = columns.small;
    double cap = columns.cap;
    double width = columns.width;
    double x = area.minX();
    double y = area.minY();
    double at = x + columns.indent;
    String label = opening.label().isEmpty() ? context.job().info().title() : opening.label();
    String name =
        opening.count() > 1 ? label + " · " + context.say("wall.alike", opening.count()) : label;
    double[] below = {y};
    b.group(
        Role.TITLE,
        "",
        "",
        g -> {
          g.text(x, y + cap, opening.mark(), new Lettering(cap, true), Align.START);
          below[0] = TextFlow.paragraph(g, at, y, width, name, TITLE);
        });
    double line = below[0] - 1.5;
    if (part == null || !part.whole()) {
      int number = part == null ? 8 : part.number();
      int of = part == null ? 8 : part.of();
      String first = part == null ? "L88" : part.stones().get(0).mark();
      String last = part == null ? "R88" : part.stones().get(part.stones().size() - 1).mark();
      if (part != null) {
        String text = context.say("wall.part", number, of, first, last);
        line = TextFlow.paragraph(b, at, line, width, text, LINE.inBold());
      } else {
        line += LINE.height() * TextFlow.LEADING;
      }
    }
    line = TextFlow.paragraph(b, at, line, width, seen(context, scale), small);
    boolean mortar = !context.job().setting().dry();
    String marks =
        context.say(
            figures.curved()
                ? "wall.marks-around"
                : mortar ? "wall.marks-run-mortar" : "wall.marks-run");
    if (figures.cambered()) {
      marks += " " + context.say("wall.rises");
    }
    if (figures.heightsAtEnds()) {
      marks += " " + context.say("wall.heights-at-ends");
    }
    line = TextFlow.paragraph(b, at, line, width, marks, small);
    line = Math.max(line + 1, y + cap + 3);
    line = bar(b, context, scale, area, columns, line);
    if (columns.wide) {
      double right = columns.right;
      return Math.max(line, orders(b, context, area.maxX() - right, y, right, small));
    }
    return orders(b, context, x, line + 4, area.width(), small);
  }

  private static double orders(
      Board b, SheetContext context, double x, double y, double width, Lettering small) {
    String title = context.say("wall.set-in-order");
    Lettering set = TextFlow.lines(title, width, TITLE).size() > 1 ? LINE.inBold() : TITLE;
    double line = TextFlow.paragraph(b, x, y, width, title, set);
    String screw =
        context.say(context.job().setting().dry() ? "wall.screw-dry" : "wall.screw-mortar");
    line = TextFlow.paragraph(b, x, line - 1, width, screw, small);
    return TextFlow.paragraph(b, x, line, width, context.say("wall.level-after-three"), small);
  }
}
