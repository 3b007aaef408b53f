package headcourse.sheet.bench;

import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.SheetContext;

/** Shares a ticket out among its panels; each says how much height it needs at a width. */
final class TicketPanels {
  private final double sideWidth;
  private final double workWidth;
  private final double notchWidth;
  private final TicketSide side;
  private final TicketFace face;
  private final TicketBoxes boxes;
  private final TicketSection section;
  private final TicketNotch notch;
  private final TicketCuts cuts;
  private final TicketSoffit soffit;
  private final double soffitHeight;
  private final double figuresHeight;
  private final double cutsHeight;
  private final double height;

  /**
   * A ticket of a width, mm.
   *
   * @param apart whether its soffit piece is drawn on another page
   */
  TicketPanels(SheetContext c, Ticket ticket, TicketType type, double width, boolean apart) {
    sideWidth = Math.min(42 * type.factor(), width * 0.18);
    workWidth = Math.min(112 * type.factor(), width * 0.475);
    // The notch is at 1:1 and takes what it needs; the section has the rest.
    notchWidth = workWidth * 0.58;
    side = new TicketSide(c, ticket, type);
    face = new TicketFace(c, ticket, type, width - sideWidth - workWidth);
    boxes = TicketBoxes.of(c, ticket, type, width - workWidth);
    section = new TicketSection(c, ticket, type, workWidth - notchWidth);
    notch = new TicketNotch(c, ticket, type, notchWidth);
    cuts = new TicketCuts(c, ticket, type);
    soffit = new TicketSoffit(c, ticket, type);
    soffitHeight = apart ? 0 : soffit.height(width);
    figuresHeight = Math.max(notch.height(), section.height());
    cutsHeight = cuts.height(workWidth);
    double left = Math.max(side.height(sideWidth), face.height()) + boxes.height();
    height = Math.max(left, figuresHeight + cutsHeight) + soffitHeight;
  }

  /** The least height, mm. */
  double height() {
    return height;
  }

  void draw(Board board, Box whole) {
    double foot = whole.maxY() - soffitHeight;
    Box box = new Box(whole.minX(), whole.minY(), whole.maxX(), foot);
    if (soffitHeight > 0) {
      soffit.draw(board, new Box(whole.minX(), foot, whole.maxX(), whole.maxY()));
    }
    double left = box.minX() + sideWidth;
    double right = box.maxX() - workWidth;
    double middle = box.maxX() - notchWidth;
    // Spare height goes to the figures, up to half as much again.
    double least = figuresHeight;
    double split = box.minY() + Math.min(least * 1.5, Math.max(least, box.height() - cutsHeight));
    double strip = box.maxY() - boxes.height();
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          b.stroke(Path.rect(whole.minX(), whole.minY(), whole.width(), whole.height()), Pen.CUT);
          b.line(left, box.minY(), left, strip, Pen.EDGE);
          b.line(box.minX(), strip, right, strip, Pen.EDGE);
          b.line(right, box.minY(), right, box.maxY(), Pen.EDGE);
          b.line(right, split, box.maxX(), split, Pen.EDGE);
          b.line(middle, box.minY(), middle, split, Pen.FINE);
        });
    side.draw(board, new Box(box.minX(), box.minY(), left, strip));
    boxes.draw(board, new Box(box.minX(), strip, right, box.maxY()));
    face.draw(board, new Box(left, box.minY(), right, strip));
    section.draw(board, new Box(right, box.minY(), middle, split));
    notch.draw(board, new Box(middle, box.minY(), box.maxX(), split));
    cuts.draw(board, new Box(right, split, box.maxX(), box.maxY()));
  }
}
