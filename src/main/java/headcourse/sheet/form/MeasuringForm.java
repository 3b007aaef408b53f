package headcourse.sheet.form;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Path;
import headcourse.job.Bundle;
import headcourse.job.Paper;
import headcourse.text.Words;
import java.util.List;

/**
 * The blank measuring sheet: one page for one opening, to be filled in on site, in every language.
 * Its boxes are named as the keys of the job file and stand in its order, so that it can be typed
 * in from the top.
 */
public final class MeasuringForm {
  private static final Lettering TITLE = new Lettering(4, true);
  private static final Lettering KEY = new Lettering(2.5, true);
  private static final Lettering NOTE = Lettering.NOTE;
  private static final double MARGIN = 10;
  private static final double ROW = 22.5;
  private static final int COLUMNS = 12;

  /** Width of the picture alone, mm. */
  private static final double PICTURE = 190;

  private final Board board = new Board();
  private final Paper paper;
  private final List<Words> tongues;

  private MeasuringForm(Paper paper, Words words) {
    this.paper = paper;
    this.tongues = words.singly();
  }

  /**
   * The sheet.
   *
   * @param paper letter, A4 or larger
   * @param words the words of two languages, the first leads
   */
  public static PageSet of(Paper paper, Words words) {
    MeasuringForm form = new MeasuringForm(paper, words);
    String title = form.tongues.get(0).say("form.heading");
    form.draw();
    Page page =
        new Page(
            paper.width().mm(),
            paper.height().mm(),
            "form",
            title,
            form.board.marks(),
            List.of(new Page.Bookmark(1, title, "form", MARGIN)));
    return new PageSet(Bundle.WALL, title, "", words.tag(), words.secondTag(), "", List.of(page));
  }

  /** Where to measure, alone: the numbers of the boxes on an opening. */
  public static Page picture() {
    Board board = new Board();
    new FormPicture(board, 1, 1).draw(PICTURE);
    return new Page(PICTURE + 2, FormPicture.HEIGHT + 2, "form", "form", board.marks(), List.of());
  }

  private void draw() {
    double width = paper.width().mm() - 2 * MARGIN;
    double[] y = {MARGIN};
    board.group(
        Role.TITLE,
        "",
        "",
        b -> {
          for (Words w : tongues) {
            b.text(MARGIN, y[0] + 4, w.say("form.heading"), TITLE, Align.START);
            y[0] = TextFlow.paragraph(b, MARGIN, y[0] + 6, width, w.say("form.how"), NOTE);
          }
        });
    double top = y[0];
    new FormPicture(board, MARGIN, top).draw(width);
    boxes(top + FormPicture.HEIGHT + 2, width / COLUMNS);
  }

  private String both(String key) {
    return String.join(" / ", tongues.stream().map(w -> w.say(key)).toList());
  }

  private void boxes(double from, double column) {
    double y = from;
    int used = 0;
    for (FormField f : FormField.ALL) {
      if (used + f.columns() > COLUMNS) {
        used = 0;
        y += ROW;
      }
      box(f, MARGIN + used * column, y, f.columns() * column);
      used += f.columns();
    }
  }

  private void box(FormField f, double x, double y, double width) {
    board.stroke(Path.rect(x, y, width, ROW), Pen.DIMENSION);
    double at = x + 1.5;
    if (f.place() > 0) {
      FormPicture.circled(board, f.place(), x + 3.6, y + 3.5);
      at = x + 7.6;
    }
    String section = f.section().startsWith("openings") ? "" : f.section();
    String name = section.isEmpty() ? f.name() : section + ": " + f.name();
    board.text(at, y + 4.6, name.isEmpty() ? both("form.check") : name, KEY, Align.START);
    double line = y + 9.6;
    for (Words w : tongues) {
      board.text(x + 1.5, line, w.say("form." + f.words()), NOTE, Align.START);
      line += 4;
    }
  }
}
