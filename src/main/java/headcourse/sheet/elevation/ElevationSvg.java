package headcourse.sheet.elevation;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Page;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.sheet.Scale;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import java.util.List;
import java.util.Optional;

/** The elevation of an opening as a page of its own, to scale, as large as it needs to be. */
public final class ElevationSvg {
  private static final double MARGIN = 8;
  private static final double HEADER = 24;

  /** Width of paper that the scale is chosen for, mm. */
  private static final double WIDTH = 420;

  /** Wider ones are not tried for larger lettering, mm. */
  private static final double WIDEST = 4 * WIDTH;

  /**
   * From this width on whatever can be drawn is, though a mark may stand without its number, mm.
   */
  private static final double HARD = 32 * WIDTH;

  private ElevationSvg() {}

  /** The page; its size follows from the drawing. */
  public static Page page(ShopWork work, HeadWork head) {
    return page(work.job(), head);
  }

  /** The same before the job is worked out. */
  public static Page page(Job job, HeadWork head) {
    Words words = Words.of(job.language().word()).ofArch(head.layout().curved());
    HeadFigures figures = new HeadFigures(head, new LengthFormat(job.units(), job.grid()));
    ElevationFigure figure = figure(figures, job.units(), words);
    Opening opening = head.layout().opening();
    double width = figure.room() + 2 * MARGIN;
    double height = HEADER + figure.height() + 2 * MARGIN;
    String title = words.say("wall.elevation-of", opening.mark(), opening.label());
    Board board = new Board();
    board.group(Role.NOTES, "", "", b -> header(b, job, opening, words, figure));
    board.group(Role.FIGURE, "", title, b -> figure.draw(b, MARGIN, MARGIN + HEADER));
    return new Page(width, height, opening.mark(), title, board.marks(), List.of());
  }

  private static void header(
      Board b, Job job, Opening opening, Words words, ElevationFigure figure) {
    Lettering mark = new Lettering(14, true);
    b.text(MARGIN, MARGIN + 14, opening.mark(), mark, Align.START);
    double x = MARGIN + headcourse.drawing.LabelShape.width(opening.mark(), mark) + 5;
    String label = opening.label().isEmpty() ? job.info().title() : opening.label();
    b.text(x, MARGIN + 5, label, new Lettering(5, true), Align.START);
    String seen = words.say("wall.seen-from-outside") + " · " + figure.scale().name();
    b.text(x, MARGIN + 10.5, seen, Lettering.NOTE, Align.START);
    ScaleBar.draw(
        b, words, job.units(), figure.scale(), x, MARGIN + 17, figure.room() - x + MARGIN);
  }

  private static ElevationFigure figure(HeadFigures figures, Units units, Words words) {
    HeadPart whole = new HeadPart(1, 1, figures.layout().stones());
    ElevationFigure best = null;
    for (double width = WIDTH; width < WIDEST || best == null; width *= 1.25) {
      for (Scale scale : Scale.ladder(units)) {
        Optional<ElevationBands> bands = ElevationBands.of(figures, whole, scale, words, width);
        for (double cap : new double[] {7, 5}) {
          Optional<ElevationFigure> f = bands.flatMap(b -> ElevationFigure.of(b, cap));
          if (f.isEmpty() || width < HARD && !f.get().readable()) {
            continue;
          }
          if (f.get().lettering() >= cap) {
            return f.get();
          }
          if (best == null || f.get().lettering() > best.lettering()) {
            best = f.get();
          }
        }
      }
    }
    return best;
  }
}
