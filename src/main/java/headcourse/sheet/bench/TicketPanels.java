package headcourse.sheet.bench;

import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.SheetContext;
import java.util.List;

/**
 * Shares a ticket out among its panels; each says how much height it needs at a width. Left which
 * stone it is; then face and section over their words, and the notch over its own; below these the
 * passes of the saw, and at the foot the soffit piece.
 */
final class TicketPanels implements TicketPlan {
  /** What the face takes of the width beside the section. */
  private static final double FACE = 0.6;

  /** In less, words would be broken within, mm. */
  private static final double LEAST = 148;

  private final boolean fits;
  private final double sideWidth;
  private final double notchWidth;
  private final double faceWidth;
  private final TicketSide side;
  private final TicketBoxes boxes;
  private final TicketFace face;
  private final TicketSection section;
  private final TicketFaceWords words;
  private final TicketNotch notch;
  private final TicketCuts cuts;
  private final TicketSaw saw;
  private final TicketSoffit soffit;
  private final double soffitHeight;
  private final double sawHeight;
  private final double wordsHeight;
  private final double cutsHeight;
  private final double height;

  /**
   * A ticket of a width, mm.
   *
   * @param apart whether its soffit piece is drawn on another page
   */
  TicketPanels(SheetContext c, Ticket ticket, TicketType type, double width, boolean apart) {
    sideWidth = Math.min(42 * type.factor(), Math.max(width * 0.19, TicketSide.LEAST));
    // The notch is at 1:1 and takes what it needs.
    notchWidth = Math.min(60 * type.factor(), width * 0.31);
    double middle = width - sideWidth - notchWidth;
    faceWidth = middle * FACE;
    side = new TicketSide(c, ticket, type);
    boxes = TicketBoxes.of(c, ticket, type, sideWidth);
    face = new TicketFace(c, ticket, type, faceWidth);
    section = new TicketSection(c, ticket, type, middle - faceWidth);
    notch = new TicketNotch(c, ticket, type, notchWidth);
    saw = new TicketSaw(c, ticket, type);
    soffit = new TicketSoffit(c, ticket, type);
    fits =
        width >= LEAST
            && face.fits(faceWidth)
            && section.fits(middle - faceWidth)
            && notch.fits(notchWidth);
    soffitHeight = apart ? 0 : soffit.height(width);
    sawHeight = saw.height(width - sideWidth);
    double figures = Math.max(face.height(), section.height());
    // How a slot is cut is said under it, or beside where that takes less height.
    TicketCuts under = new TicketCuts(c, ticket, type, false);
    TicketCuts place = new TicketCuts(c, ticket, type, true);
    TicketFaceWords plain = new TicketFaceWords(c, ticket, type, List.of());
    TicketFaceWords more = new TicketFaceWords(c, ticket, type, place.notes());
    double one =
        Math.max(figures + plain.height(middle), notch.height() + under.height(notchWidth));
    double two = Math.max(figures + more.height(middle), notch.height() + place.height(notchWidth));
    cuts = two < one ? place : under;
    words = two < one ? more : plain;
    wordsHeight = words.height(middle);
    cutsHeight = cuts.height(notchWidth);
    double upper = Math.min(one, two);
    height = Math.max(side.height(sideWidth) + boxes.height(), upper + sawHeight) + soffitHeight;
  }

  @Override
  public boolean fits() {
    return fits;
  }

  @Override
  public double height() {
    return height;
  }

  @Override
  public double scale(double high) {
    double told = high - soffitHeight - sawHeight - wordsHeight;
    return face.scale(Box.of(0, 0, faceWidth, told)).factor();
  }

  @Override
  public void draw(Board board, Box whole) {
    double foot = whole.maxY() - soffitHeight;
    Box box = new Box(whole.minX(), whole.minY(), whole.maxX(), foot);
    if (soffitHeight > 0) {
      soffit.draw(board, new Box(whole.minX(), foot, whole.maxX(), whole.maxY()));
    }
    double left = box.minX() + sideWidth;
    double right = box.maxX() - notchWidth;
    double across = left + faceWidth;
    double strip = box.maxY() - boxes.height();
    double table = box.maxY() - sawHeight;
    double told = table - wordsHeight;
    double slots =
        Math.min(
            table - cutsHeight,
            box.minY() + Math.max(notch.height(), (table - cutsHeight - box.minY()) * 0.8));
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          b.stroke(Path.rect(whole.minX(), whole.minY(), whole.width(), whole.height()), Pen.CUT);
          b.line(left, box.minY(), left, box.maxY(), Pen.EDGE);
          b.line(box.minX(), strip, left, strip, Pen.EDGE);
          b.line(right, box.minY(), right, table, Pen.EDGE);
          b.line(left, told, right, told, Pen.FINE);
          b.line(across, box.minY(), across, told, Pen.FINE);
          if (sawHeight > 0) {
            b.line(left, table, box.maxX(), table, Pen.EDGE);
          }
          if (cutsHeight > 0) {
            b.line(right, slots, box.maxX(), slots, Pen.FINE);
          }
        });
    side.draw(board, new Box(box.minX(), box.minY(), left, strip));
    boxes.draw(board, new Box(box.minX(), strip, left, box.maxY()));
    face.draw(board, new Box(left, box.minY(), across, told));
    section.draw(board, new Box(across, box.minY(), right, told));
    words.draw(board, new Box(left, told, right, table));
    notch.draw(board, new Box(right, box.minY(), box.maxX(), slots));
    cuts.draw(board, new Box(right, slots, box.maxX(), table));
    saw.draw(board, new Box(left, table, box.maxX(), box.maxY()));
  }
}
