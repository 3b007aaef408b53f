package headcourse.sheet.bench;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.TextFlow;
import java.util.List;

/**
 * The sizes of a ticket's lettering.
 *
 * @param note what is read once
 * @param body what is read at the saw
 * @param edge lengths of edges
 * @param size widths
 * @param mark the stone's mark
 * @param aside how far an edge's dimension line stands off, mm
 * @param leading distance of base lines over the height of capitals
 */
record TicketType(
    Lettering note,
    Lettering body,
    Lettering edge,
    Lettering size,
    Lettering mark,
    double aside,
    double leading) {
  /** Two tickets to a sheet of letter or A4. */
  static final TicketType SMALL = of(2.5, 3.5, 3.5, 5, 14, 5.5, TextFlow.LEADING);

  /** Tickets with plenty of paper. */
  static final TicketType LARGE = of(3.5, 5, 5, 7, 20, 7.5, TextFlow.LEADING);

  /**
   * Where two tickets of many words would not stand on a sheet otherwise: small words alone, close.
   */
  static final TicketType TIGHT = of(2.5, 2.5, 3.5, 5, 10, 5.5, 1.5);

  /** The largest first. */
  static final List<TicketType> ALL = List.of(LARGE, SMALL, TIGHT);

  private static TicketType of(
      double note,
      double body,
      double edge,
      double size,
      double mark,
      double aside,
      double leading) {
    return new TicketType(
        new Lettering(note, false),
        new Lettering(body, false),
        new Lettering(edge, true),
        new Lettering(size, true),
        new Lettering(mark, true),
        aside,
        leading);
  }

  /** How much larger than the small one. */
  double factor() {
    return note.height() / SMALL.note.height();
  }

  /** Distance of base lines of notes, mm. */
  double pitch() {
    return note.height() * leading;
  }

  /** Writes a paragraph; see {@link TextFlow#paragraph}. */
  double paragraph(
      Board board, double x, double top, double width, String text, Lettering lettering) {
    return TextFlow.paragraph(board, x, top, width, text, lettering, leading);
  }

  /** The height of a paragraph, mm. */
  double height(String text, double width, Lettering lettering) {
    return TextFlow.lines(text, width, lettering).size() * lettering.height() * leading;
  }
}
