package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.choose.Choices;
import headcourse.choose.Criterion;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.PageSet;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.job.Vary;
import headcourse.layout.Side;
import headcourse.sheet.Binder;
import headcourse.sheet.FitLine;
import headcourse.sheet.PageDraft;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.Table.Column;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.text.Words;
import headcourse.units.Decimals;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;

/**
 * The sheets to choose a head from: pictures to one scale with a letter and a box to tick, their
 * order, room to sign; overleaf all others, and what to write into the job.
 */
public final class ChoiceSheets {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final double TITLE = 18;

  /** Air above the scale bar, and under it, mm. */
  private static final double BAR = 4;

  private static final double SIGN = 22;

  /** Of the others no more than these are listed. */
  private static final int LISTED = 60;

  private final Choices choices;
  private final SheetContext context;
  private final ChoiceText text;

  private ChoiceSheets(Choices choices, SheetFrame frame) {
    this.choices = choices;
    ShopWork work = choices.pictured().get(0).worked().orElseThrow();
    this.context =
        new SheetContext(
            work,
            Bundle.CONTRACTOR,
            Words.of(work.job().language().word()).withTongues(),
            new LengthFormat(work.job().units(), work.job().grid()),
            frame);
    this.text = new ChoiceText(context.words(), work.job());
  }

  /**
   * The sheets of one document.
   *
   * @param all what there is to choose from, opening by opening; each has something
   */
  public static PageSet compose(List<Choices> all, SheetFrame frame) {
    List<PageDraft> drafts = new ArrayList<>();
    for (Choices c : all) {
      drafts.addAll(new ChoiceSheets(c, frame).pages());
    }
    return Binder.bind(new ChoiceSheets(all.get(0), frame).context, drafts, "choose");
  }

  private List<PageDraft> pages() {
    ChoiceGrid portrait = grid(Turn.PORTRAIT);
    ChoiceGrid landscape = grid(Turn.LANDSCAPE);
    boolean wide =
        landscape.count() < portrait.count()
            || landscape.count() == portrait.count()
                && landscape.scale().reduction() < portrait.scale().reduction();
    Turn turn = wide ? Turn.LANDSCAPE : Turn.PORTRAIT;
    ChoiceGrid grid = wide ? landscape : portrait;
    List<PageDraft> pages = new ArrayList<>();
    for (int i = 0; i < grid.count(); i++) {
      pages.add(pictures(grid, i, turn));
    }
    pages.addAll(overleaf());
    pages.addAll(ChoicesInWall.pages(context, choices));
    return pages;
  }

  private ChoiceGrid grid(Turn turn) {
    Box area = context.area(turn);
    double room = area.height() - TITLE - bar(area);
    return ChoiceGrid.of(
        choices.pictured(),
        text,
        context.job().units(),
        area.width(),
        room,
        room - foot(area.width()));
  }

  /** What the scale bar takes with its words, which may need lines of their own, mm. */
  private double bar(Box area) {
    return bar(new Board(), Scale.FULL, 0, 0, area.width());
  }

  private double bar(Board board, Scale scale, double x, double y, double width) {
    return ScaleBar.draw(board, context.words(), context.job().units(), scale, x, y, width) + 1;
  }

  private Opening opening() {
    return choices.opening();
  }

  private PageDraft pictures(ChoiceGrid grid, int number, Turn turn) {
    String label = opening().mark() + (number == 0 ? "" : "-" + (number + 1));
    PageDraft page = context.page(turn, label, context.say("choose.title"));
    Box area = page.area();
    page.scale(grid.scale().name());
    if (number == 0) {
      page.bookmark(1, opening().mark(), "choose-" + opening().mark(), area.minY());
    }
    Board board = page.board();
    board.group(Role.TITLE, "", "", b -> title(b, area));
    double y = area.minY() + TITLE;
    bar(board, grid.scale(), area.minX(), y - BAR, area.width());
    grid.draw(board, number, area, y + bar(area), this::pictureTitle);
    if (number == grid.count() - 1) {
      sign(board, area);
    }
    return page;
  }

  private String pictureTitle(String letter) {
    return context.say("choose.picture", letter, opening().mark());
  }

  private void title(Board board, Box area) {
    Lettering big = new Lettering(10, true);
    board.text(area.minX(), area.minY() + 10, opening().mark(), big, Align.START);
    double x = area.minX() + LabelShape.width(opening().mark(), big) + 4;
    String name = opening().label().isEmpty() ? context.job().info().title() : opening().label();
    // Without a name the mark, or the heading would end in its colon.
    String title = context.say("choose.heading", name.isEmpty() ? opening().mark() : name);
    FitLine.draw(board, x, area.minY() + 5, area.maxX() - x, title, new Lettering(5, true));
    FitLine.draw(
        board, x, area.minY() + 10, area.maxX() - x, context.say("choose.how"), Lettering.NOTE);
  }

  /** What order and signatures take at the foot of a page, mm. */
  private double foot(double width) {
    return TextFlow.height(order(), width, Lettering.NOTE) + SIGN + 2;
  }

  /** The order, as it was compared. */
  private String order() {
    List<String> steps = new ArrayList<>();
    for (Criterion c : Criterion.values()) {
      steps.add(
          c == Criterion.PROPORTION
              ? context.say("choose.order-proportion", ratio(true), ratio(false))
              : context.say("choose.order-" + c.word()));
    }
    StringBuilder all = new StringBuilder(context.say("choose.order"));
    for (int i = 0; i < steps.size(); i++) {
      all.append(i == 0 ? " " : "; ").append(i + 1).append(' ').append(steps.get(i));
    }
    return all + ". " + context.say("choose.veneer");
  }

  private String ratio(boolean least) {
    Vary vary = opening().choosing().vary();
    return Decimals.fixed(least ? vary.least() : vary.most(), 2);
  }

  private void sign(Board board, Box area) {
    double top = area.maxY() - foot(area.width()) + 2;
    double y =
        TextFlow.paragraph(board, area.minX(), top, area.width(), order(), Lettering.NOTE) + 1;
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          double height = area.maxY() - y;
          b.stroke(Path.rect(area.minX(), y, area.width(), height), Pen.EDGE);
          List<String> lines =
              List.of(
                  context.say("choose.sign-letter"),
                  context.say("choose.sign-date"),
                  context.say("choose.sign-client"),
                  context.say("choose.sign-mason"));
          double[] share = {0.16, 0.2, 0.32, 0.32};
          double x = area.minX();
          for (int i = 0; i < lines.size(); i++) {
            double w = share[i] * area.width();
            if (i > 0) {
              b.line(x, y, x, y + height, Pen.DIMENSION);
            }
            TextFlow.paragraph(b, x + 1.5, y + 1.5, w - 3, lines.get(i), Lettering.NOTE);
            x += w;
          }
        });
  }

  private List<PageDraft> overleaf() {
    return SheetFlow.pages(
        context,
        Turn.PORTRAIT,
        opening().mark() + "-R",
        context.say("choose.rest-title"),
        opening().mark(),
        1,
        this::overleaf);
  }

  private void overleaf(SheetFlow flow) {
    flow.paragraph(
        context.say(
            "choose.counted",
            choices.all(),
            choices.outdone(),
            choices.pictured().size(),
            choices.rest().size()),
        TEXT);
    if (choices.faulty() > 0) {
      flow.paragraph(
          context.say("choose.faulty", choices.faulty(), String.join(", ", choices.faults())),
          TEXT);
    }
    List<Choice> rest = choices.rest();
    List<Choice> listed = rest.subList(0, Math.min(LISTED, rest.size()));
    if (!listed.isEmpty()) {
      flow.table(
          context.say("choose.rest"),
          columns(),
          listed.stream().map(this::row).toList(),
          Lettering.NOTE);
    }
    if (rest.size() > LISTED) {
      flow.paragraph(context.say("choose.more", rest.size() - LISTED), Lettering.NOTE);
    }
    flow.table(
        context.say("choose.settings"),
        List.of(
            new Column("", 8, Align.START, true),
            new Column(context.say("choose.settings-line"), 100, Align.START, false)),
        choices.pictured().stream()
            .map(c -> List.of(c.letter(), "chosen: " + c.settings().text()))
            .toList(),
        Lettering.NOTE);
    flow.say("choose.settings-how", Lettering.NOTE, opening().mark());
  }

  private List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("", 8, Align.START, true));
    for (String name : List.of("seen", "passes", "nearest", "wants", "ratio", "blanks-used")) {
      boolean long1 = name.equals("seen");
      columns.add(
          new Column(
              context.say("choose.column-" + name),
              long1 ? 60 : 18,
              long1 ? Align.START : Align.END,
              false));
    }
    return columns;
  }

  private List<String> row(Choice c) {
    LengthFormat f = context.format();
    Length left = c.head().bearing(Side.LEFT).onWall(f.grid());
    Length right = c.head().bearing(Side.RIGHT).onWall(f.grid());
    String passes =
        left.equals(right) ? f.withUnit(left) : f.withUnit(left) + " / " + f.withUnit(right);
    return List.of(
        c.letter(),
        text.seen(c),
        passes,
        Limit.MOST.withUnit(f, c.lap()),
        Limit.LEAST.withUnit(f, c.shortfall()),
        c.proportion() == 0 ? "" : ChoiceText.proportion(c),
        Integer.toString(c.blanks()));
  }
}
