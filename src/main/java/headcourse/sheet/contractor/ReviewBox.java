package headcourse.sheet.contractor;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Path;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.TextFlow;
import java.util.List;

/** The box that whoever reviews the drawings fills in and signs. */
final class ReviewBox {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering SMALL = Lettering.NOTE;
  private static final double PAD = 3;
  private static final double LINE = 11;

  private ReviewBox() {}

  static void draw(SheetFlow flow, SheetContext context) {
    double width = Math.min(flow.width(), 190);
    String text = context.say("contractor.review-text");
    double words = TextFlow.height(text, width - 2 * PAD, SMALL);
    List<String> ticks =
        List.of(
            "contractor.review-as-drawn", "contractor.review-as-noted", "contractor.review-again");
    List<String> lines =
        List.of(
            "contractor.review-verified",
            "contractor.review-name",
            "contractor.review-firm",
            "contractor.review-date",
            "contractor.review-signature");
    double height = PAD + words + ticks.size() * 7 + lines.size() * LINE + PAD;
    flow.heading(context.say("contractor.review"), height);
    flow.figure(height + 2, (b, x, y) -> box(b, context, x, y, width, height, text, ticks, lines));
  }

  private static void box(
      Board b,
      SheetContext context,
      double x,
      double top,
      double width,
      double height,
      String text,
      List<String> ticks,
      List<String> lines) {
    b.stroke(Path.rect(x, top, width, height), Pen.CUT);
    double y = TextFlow.paragraph(b, x + PAD, top + PAD, width - 2 * PAD, text, SMALL);
    for (String key : ticks) {
      b.stroke(Path.rect(x + PAD, y, 4.5, 4.5), Pen.EDGE);
      b.text(x + PAD + 7, y + 4, context.say(key), TEXT, Align.START);
      y += 7;
    }
    for (String key : lines) {
      String name = context.say(key);
      b.text(x + PAD, y + LINE - 3, name, SMALL, Align.START);
      double from = x + PAD + Math.max(28, LabelShape.width(name, SMALL) + 3);
      b.line(from, y + LINE - 2.6, x + width - PAD, y + LINE - 2.6, Pen.DIMENSION);
      y += LINE;
    }
  }
}
