package headcourse.sheet.contractor;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Path;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import java.util.List;

/**
 * The box that whoever reviews the drawings fills in and signs: boxes to tick, and lines to fill in
 * beside them, or under them where the words are long.
 */
final class ReviewBox {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering SMALL = Lettering.NOTE;
  private static final double PAD = 3;
  private static final double TICK = 6.5;
  private static final double LINE = 7.5;

  /** How far the lines beside the ticks begin above the first of them, mm. */
  private static final double RAISED = 2;

  /** Width of the room for a stamp, mm. */
  private static final double STAMP = 68;

  /** Its height where it stands under the words, mm. */
  private static final double STAMP_HEIGHT = 34;

  /** Air between the boxes to tick and what stands beside them, mm. */
  private static final double AIR = 10;

  /** The shortest line to write on, mm. */
  private static final double SHORTEST = 55;

  private final String text;
  private final List<String> ticks;
  private final List<String> lines;
  private final double width;
  private final double words;
  private final double ticksWidth;
  private final boolean beside;
  private final String stamp;
  private final double stamped;

  private ReviewBox(SheetFlow flow, SheetContext context) {
    // A stamp of usual size beside the words, where the paper is wide enough for both.
    stamp = context.say("contractor.review-stamp");
    stamped = flow.width() >= 170 + STAMP ? STAMP : 0;
    width = Math.min(flow.width() - stamped, 190);
    text = context.say("contractor.review-text");
    words = TextFlow.height(text, width - 2 * PAD, SMALL);
    ticks =
        List.of(
            context.say("contractor.review-as-drawn"),
            context.say("contractor.review-as-noted"),
            context.say("contractor.review-again"));
    lines =
        List.of(
            context.say("contractor.review-verified"),
            context.say("contractor.review-name"),
            context.say("contractor.review-firm"),
            context.say("contractor.review-date"),
            context.say("contractor.review-signature"));
    ticksWidth = PAD + TICK + widest(ticks, TEXT) + AIR;
    beside = ticksWidth + widest(lines, SMALL) + 3 + SHORTEST + PAD <= width;
  }

  private static double widest(List<String> texts, Lettering lettering) {
    double most = 0;
    for (String t : texts) {
      most = Math.max(most, LabelShape.width(t, lettering));
    }
    return most;
  }

  static void draw(SheetFlow flow, SheetContext context) {
    ReviewBox box = new ReviewBox(flow, context);
    flow.heading(context.say("contractor.review"), box.height());
    flow.figure(box.height() + 2, box::draw);
  }

  private double height() {
    double ticked = ticks.size() * TICK;
    double filled = lines.size() * LINE;
    double under = stamped > 0 ? 0 : STAMP_HEIGHT;
    return PAD
        + words
        + (beside ? Math.max(ticked, filled - RAISED) : ticked + filled)
        + PAD
        + under;
  }

  private void draw(Board b, double x, double top) {
    b.stroke(Path.rect(x, top, width, height()), Pen.CUT);
    if (stamped > 0) {
      b.stroke(Path.rect(x + width, top, stamped, height()), Pen.CUT);
      TextFlow.paragraph(b, x + width + PAD, top + PAD, stamped - 2 * PAD, stamp, SMALL);
    } else {
      double under = top + height() - STAMP_HEIGHT;
      b.line(x, under, x + width, under, Pen.EDGE);
      TextFlow.paragraph(b, x + PAD, under + PAD, width - 2 * PAD, stamp, SMALL);
    }
    double first = TextFlow.paragraph(b, x + PAD, top + PAD, width - 2 * PAD, text, SMALL);
    double y = first;
    for (String tick : ticks) {
      b.stroke(Path.rect(x + PAD, y, 4.5, 4.5), Pen.EDGE);
      b.text(x + PAD + TICK, y + 4, tick, TEXT, Align.START);
      y += TICK;
    }
    double left = x + (beside ? ticksWidth : PAD);
    // Beside the ticks the first line stands level with the first of them.
    double line = beside ? first - RAISED : y;
    for (String name : lines) {
      b.text(left, line + LINE - 3, name, SMALL, Align.START);
      double from = left + Math.max(22, LabelShape.width(name, SMALL) + 3);
      b.line(from, line + LINE - 2.6, x + width - PAD, line + LINE - 2.6, Pen.DIMENSION);
      line += LINE;
    }
  }
}
