package headcourse.sheet.bench;

import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;

/** Shares a ticket out among its panels; each says how much height it needs at a width. */
record TicketPanels(SheetContext c, Ticket ticket, TicketType type) {
  private double side(double width) {
    return Math.min(42 * type.factor(), width * 0.18);
  }

  private double work(double width) {
    return Math.min(112 * type.factor(), width * 0.475);
  }

  // The notch is at 1:1 and takes what it needs; the section has the rest.
  private double notch(double width) {
    return work(width) * 0.58;
  }

  private double figures(double width) {
    TicketSection section = new TicketSection(c, ticket, type);
    return Math.max(
        new TicketNotch(c, ticket, type).height(notch(width)),
        section.height(work(width) - notch(width)));
  }

  /** The least height at a width, mm. */
  double height(double width) {
    double face = width - side(width) - work(width);
    double left =
        Math.max(
                new TicketSide(c, ticket, type).height(side(width)),
                new TicketFace(c, ticket, type).height(face))
            + new TicketBoxes(c, ticket, type).height(width - work(width));
    double right = figures(width) + new TicketCuts(c, ticket, type).height(work(width));
    return Math.max(left, right);
  }

  void draw(Board board, Box box) {
    double left = box.minX() + side(box.width());
    double right = box.maxX() - work(box.width());
    double middle = box.maxX() - notch(box.width());
    double cuts = new TicketCuts(c, ticket, type).height(box.maxX() - right);
    // Spare height goes to the figures, up to half as much again.
    double least = figures(box.width());
    double split = box.minY() + Math.min(least * 1.5, Math.max(least, box.height() - cuts));
    TicketBoxes boxes = new TicketBoxes(c, ticket, type);
    double strip = box.maxY() - boxes.height(right - box.minX());
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          b.stroke(Path.rect(box.minX(), box.minY(), box.width(), box.height()), Pen.CUT);
          b.line(left, box.minY(), left, strip, Pen.EDGE);
          b.line(box.minX(), strip, right, strip, Pen.EDGE);
          b.line(right, box.minY(), right, box.maxY(), Pen.EDGE);
          b.line(right, split, box.maxX(), split, Pen.EDGE);
          b.line(middle, box.minY(), middle, split, Pen.FINE);
        });
    new TicketSide(c, ticket, type).draw(board, new Box(box.minX(), box.minY(), left, strip));
    boxes.draw(board, new Box(box.minX(), strip, right, box.maxY()));
    new TicketFace(c, ticket, type).draw(board, new Box(left, box.minY(), right, strip));
    new TicketSection(c, ticket, type).draw(board, new Box(right, box.minY(), middle, split));
    new TicketNotch(c, ticket, type).draw(board, new Box(middle, box.minY(), box.maxX(), split));
    new TicketCuts(c, ticket, type).draw(board, new Box(right, split, box.maxX(), box.maxY()));
  }
}
