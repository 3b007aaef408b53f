package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Label;
import headcourse.drawing.Pen;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.Side;
import headcourse.text.Words;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The dimensions under the running marks: bearing, clear opening, bearing; then the overall. */
final class OpeningChain {
  private static final Lettering FIGURE = new Lettering(5, true);
  private static final Lettering WORD = new Lettering(2.5, false);

  // Figure over a dimension line, the line, and the word under it.
  private static final double ABOVE = 8.2;
  private static final double BELOW = 5.8;

  private final HeadFigures figures;
  private final HeadPart part;
  private final Words words;
  private final double room;
  private final List<Span> spans = new ArrayList<>();

  /** One dimension. */
  private record Span(double from, double to, Length length, String word, Side side) {}

  OpeningChain(HeadFigures figures, HeadPart part, Words words, double room) {
    this.figures = figures;
    this.part = part;
    this.words = words;
    this.room = room;
    bearing(Side.LEFT);
    if (part.whole()) {
      Length width = figures.layout().halfWidth().times(2);
      spans.add(
          new Span(
              -figures.jamb(Side.LEFT),
              figures.jamb(Side.RIGHT),
              width,
              words.say("wall.clear-opening"),
              Side.CENTRE));
    }
    bearing(Side.RIGHT);
  }

  private Length end(Side side) {
    return figures.curved() ? figures.topEnd(side) : figures.end(side);
  }

  private void bearing(Side side) {
    double jamb = side.sign() * figures.jamb(side);
    Length end = end(side);
    double x = side.sign() * end.mm();
    if (part.holdsJamb(figures, side) && end.mm() > figures.jamb(side) + 0.01) {
      Length length = figures.bearing(side);
      String word =
          words.say(
              figures.curved()
                  ? "wall.on-the-wall-top"
                  : figures.bearingExact(side) ? "wall.on-the-wall" : "wall.on-the-wall-rounded");
      spans.add(new Span(Math.min(jamb, x), Math.max(jamb, x), length, word, side));
    }
  }

  private String text(Span span) {
    return span.side == Side.CENTRE
        ? figures.format().building(span.length)
        : figures.format().withUnit(span.length);
  }

  private boolean fits(Span span, double scale) {
    return Dimensions.fits(text(span), FIGURE, (span.to - span.from) * scale);
  }

  // Whether a figure too wide for its place has to go under the line.
  private boolean under(Span span, double scale) {
    return !fits(span, scale) && !beside(span, scale);
  }

  private boolean beside(Span span, double scale) {
    double reach = LabelShape.width(text(span), FIGURE) + 1.8;
    double middle = part.box().centre().x();
    double left = room / 2 + (span.from - middle) * scale - reach;
    double right = room / 2 + (span.to - middle) * scale + reach;
    return span.side == Side.LEFT ? left >= 0 : span.side == Side.RIGHT && right <= room;
  }

  private double out(double scale) {
    return spans.stream().noneMatch(s -> under(s, scale)) ? 0 : ABOVE + BELOW;
  }

  private boolean overallShown() {
    return part.whole() && spans.size() > 1;
  }

  /** How much height it takes at a scale, mm. */
  double height(double scale) {
    if (spans.isEmpty()) {
      return 2;
    }
    return ABOVE + BELOW + out(scale) + (overallShown() ? ABOVE + BELOW : 0);
  }

  /** Draws it; {@code left} is the left end of the room. */
  void draw(Board board, double left, double top, Similarity view) {
    if (spans.isEmpty()) {
      return;
    }
    double line = top + ABOVE;
    double overall = line + BELOW + out(view.scale()) + ABOVE;
    for (Span s : spans) {
      double a = view.apply(new Point(s.from, 0)).x();
      double b = view.apply(new Point(s.to, 0)).x();
      figure(board, s, a, b, line, left);
      rule(board, a, b, line);
    }
    if (overallShown()) {
      double a = view.apply(new Point(-end(Side.LEFT).mm(), 0)).x();
      double b = view.apply(new Point(end(Side.RIGHT).mm(), 0)).x();
      write(board, (a + b) / 2, overall, figures.format().building(figures.overallAnywhere()));
      word(board, words.say("wall.overall"), a, b, overall, left);
      rule(board, a, b, overall);
    }
    for (Span s : spans) {
      word(
          board,
          s.word,
          view.apply(new Point(s.from, 0)).x(),
          view.apply(new Point(s.to, 0)).x(),
          line,
          left);
    }
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      double end = side.sign() * end(side).mm();
      if (part.holdsJamb(figures, side)
          && part.holdsEnd(figures, side)
          && end(side).mm() > figures.jamb(side) + 0.01) {
        Point from = view.apply(new Point(end, endFoot(side)));
        double to = (overallShown() ? overall : line) + 1.5;
        board.lineAround(new Point(from.x(), from.y() + 1.2), new Point(from.x(), to), Pen.FINE);
      }
      double jamb = view.apply(new Point(side.sign() * figures.jamb(side), 0)).x();
      if (part.holdsJamb(figures, side)) {
        board.lineAround(new Point(jamb, top), new Point(jamb, line + 1.5), Pen.FINE);
      }
    }
  }

  private double endFoot(Side side) {
    var joints = figures.joints(side);
    var last = joints.get(joints.size() - 1);
    return figures.curved() ? last.head().y() : last.foot().y();
  }

  private static void rule(Board board, double a, double b, double y) {
    new Dimensions(board).chain(new double[] {a, b}, y - 2, y, List.of(""), FIGURE);
  }

  private static void write(Board board, double x, double line, String text) {
    double base = line - 1 - LabelShape.below(text, FIGURE);
    board.text(x, base, text, FIGURE, Align.MIDDLE);
  }

  // Over the line where it fits; else beside it on the outer side; else under it.
  private void figure(Board board, Span s, double a, double b, double line, double left) {
    String text = text(s);
    double middle = (a + b) / 2;
    if (fits(s, (b - a) / (s.to - s.from))) {
      write(board, middle, line, text);
      return;
    }
    double scale = (b - a) / (s.to - s.from);
    double width = LabelShape.width(text, FIGURE);
    if (beside(s, scale)) {
      boolean toLeft = s.side == Side.LEFT;
      double base = line - 1 - LabelShape.below(text, FIGURE);
      double outer = toLeft ? a - 1.8 : b + 1.8;
      board.text(outer, base, text, FIGURE, toLeft ? Align.END : Align.START);
      return;
    }
    double low = line + BELOW + LabelShape.above(text, FIGURE);
    double x = Math.max(left + width / 2, Math.min(left + room - width / 2, middle));
    board.text(x, low, text, FIGURE, Align.MIDDLE);
  }

  private void word(Board board, String word, double a, double b, double line, double left) {
    double width = LabelShape.width(word, WORD);
    double middle = (a + b) / 2;
    List<Label> places = new ArrayList<>();
    double under = line + BELOW + ABOVE + WORD.height();
    for (double y : new double[] {line + 2.2 + WORD.height(), under}) {
      for (double x : candidates(a, b, width)) {
        double at = Math.max(left + width / 2, Math.min(left + room - width / 2, x));
        places.add(new Label(new Point(at, y), word, WORD, Align.MIDDLE, 0));
      }
    }
    if (!board.firstFree(places, 0.3)) {
      // The same word over the other bearing has its place; the figure alone stands here.
      Collections.reverse(places);
      board.firstFree(places, 0);
    }
  }

  private static double[] candidates(double a, double b, double width) {
    double middle = (a + b) / 2;
    return new double[] {middle, a + width / 2 + 1, b - width / 2 - 1};
  }
}
