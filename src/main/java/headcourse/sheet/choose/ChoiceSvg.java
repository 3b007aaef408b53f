package headcourse.sheet.choose;

import headcourse.choose.Choices;
import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import headcourse.job.Job;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.text.Words;
import java.util.List;

/** The pictures to choose from on one page of their own, as large as it needs to be. */
public final class ChoiceSvg {
  private static final double MARGIN = 8;
  private static final double HEADER = 26;

  /** Room that scale and columns are chosen for, mm. */
  private static final double WIDTH = 400;

  private static final double HEIGHT = 280;

  private ChoiceSvg() {}

  /** The page; something is there to choose from. */
  public static Page page(Choices choices) {
    Job job = choices.pictured().get(0).job();
    Words words = Words.of(job.language().word());
    ChoiceText text = new ChoiceText(words, job);
    double more = HEIGHT;
    ChoiceGrid grid;
    do {
      grid = ChoiceGrid.of(choices.pictured(), text, job.units(), WIDTH, more, more);
      more *= 1.5;
    } while (grid.count() > 1);
    ChoiceGrid fit = grid;
    double width = fit.width() + 2 * MARGIN;
    double height = HEADER + fit.height(0) + 2 * MARGIN;
    String mark = choices.opening().mark();
    String name =
        choices.opening().label().isEmpty() ? job.info().title() : choices.opening().label();
    String title = words.say("choose.heading", mark + " " + name);
    Board board = new Board();
    board.group(
        Role.NOTES,
        "",
        "",
        b -> {
          b.text(MARGIN, MARGIN + 5, title, new Lettering(5, true), Align.START);
          b.text(MARGIN, MARGIN + 10.5, words.say("choose.how"), Lettering.NOTE, Align.START);
          ScaleBar.draw(b, words, job.units(), fit.scale(), MARGIN, MARGIN + 14, fit.width());
        });
    fit.draw(
        board,
        0,
        Box.of(MARGIN, MARGIN, fit.width(), height),
        MARGIN + HEADER,
        letter -> words.say("choose.picture", letter, mark));
    return new Page(width, height, mark, title, board.marks(), List.of());
  }
}
