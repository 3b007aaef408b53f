package headcourse.sheet.bench;

import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.SheetContext;
import java.util.List;

/**
 * A ticket's panels where a page is narrow: which stone it is beside its face and what is said of
 * it, section and notch below, then the passes of the saw, the boxes to tick, the soffit piece.
 */
final class TicketStack implements TicketPlan {
  private static final double SIDE = 0.36;
  private static final double SECTION = 0.42;

  /** What the face takes of height to spare, against section and notch. */
  private static final double FACE = 0.6;

  private final double sideWidth;
  private final double sectionWidth;
  private final double faceWidth;
  private final TicketSide side;
  private final TicketBoxes boxes;
  private final TicketFace face;
  private final TicketFaceWords words;
  private final TicketSection section;
  private final TicketNotch notch;
  private final TicketCuts cuts;
  private final TicketSaw saw;
  private final TicketSoffit soffit;
  private final boolean fits;

  /** Whether how slots are cut is said under the section, not under the notch. */
  private final boolean underSection;

  private final double wordsHeight;
  private final double cutsHeight;
  private final double upper;
  private final double lower;
  private final double sawHeight;
  private final double soffitHeight;

  /**
   * A ticket of a width, mm.
   *
   * @param apart whether its soffit piece is drawn on another page
   */
  TicketStack(SheetContext c, Ticket ticket, TicketType type, double width, boolean apart) {
    sideWidth = Math.min(42 * type.factor(), Math.max(width * SIDE, TicketSide.LEAST));
    sectionWidth = width * SECTION;
    faceWidth = width - sideWidth;
    double notchWidth = width - sectionWidth;
    side = new TicketSide(c, ticket, type);
    boxes = TicketBoxes.of(c, ticket, type, width);
    face = new TicketFace(c, ticket, type, faceWidth);
    words = new TicketFaceWords(c, ticket, type, List.of());
    section = new TicketSection(c, ticket, type, sectionWidth);
    notch = new TicketNotch(c, ticket, type, notchWidth);
    cuts = new TicketCuts(c, ticket, type, false);
    saw = new TicketSaw(c, ticket, type);
    soffit = new TicketSoffit(c, ticket, type);
    fits = face.fits(faceWidth) && section.fits(sectionWidth) && notch.fits(notchWidth);
    wordsHeight = words.height(faceWidth);
    double beside = Math.max(section.height() + cuts.height(sectionWidth), notch.height());
    double under = Math.max(section.height(), notch.height() + cuts.height(notchWidth));
    underSection = beside < under;
    cutsHeight = cuts.height(underSection ? sectionWidth : notchWidth);
    upper = Math.max(side.height(sideWidth), face.height() + wordsHeight);
    lower = Math.min(beside, under);
    sawHeight = saw.height(width);
    soffitHeight = apart ? 0 : soffit.height(width);
  }

  @Override
  public boolean fits() {
    return fits;
  }

  @Override
  public double height() {
    return upper + lower + sawHeight + boxes.height() + soffitHeight;
  }

  @Override
  public double scale(double high) {
    double told = upper + FACE * Math.max(0, high - height()) - wordsHeight;
    return face.scale(Box.of(0, 0, faceWidth, told)).factor();
  }

  @Override
  public void draw(Board board, Box box) {
    double spare = Math.max(0, box.height() - height());
    double left = box.minX() + sideWidth;
    double across = box.minX() + sectionWidth;
    double middle = box.minY() + upper + FACE * spare;
    double told = middle - wordsHeight;
    double table = middle + lower + (1 - FACE) * spare;
    double strip = table + sawHeight;
    double foot = strip + boxes.height();
    double slots = table - cutsHeight;
    Box cut =
        underSection
            ? new Box(box.minX(), slots, across, table)
            : new Box(across, slots, box.maxX(), table);
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          b.stroke(Path.rect(box.minX(), box.minY(), box.width(), box.height()), Pen.CUT);
          b.line(left, box.minY(), left, middle, Pen.EDGE);
          b.line(left, told, box.maxX(), told, Pen.FINE);
          b.line(across, middle, across, table, Pen.EDGE);
          for (double y : sawHeight > 0 ? List.of(middle, table, strip) : List.of(middle, strip)) {
            b.line(box.minX(), y, box.maxX(), y, Pen.EDGE);
          }
          if (cutsHeight > 0) {
            b.line(cut.minX(), slots, cut.maxX(), slots, Pen.FINE);
          }
        });
    side.draw(board, new Box(box.minX(), box.minY(), left, middle));
    face.draw(board, new Box(left, box.minY(), box.maxX(), told));
    words.draw(board, new Box(left, told, box.maxX(), middle));
    section.draw(board, new Box(box.minX(), middle, across, underSection ? slots : table));
    notch.draw(board, new Box(across, middle, box.maxX(), underSection ? table : slots));
    cuts.draw(board, cut);
    saw.draw(board, new Box(box.minX(), table, box.maxX(), strip));
    boxes.draw(board, new Box(box.minX(), strip, box.maxX(), foot));
    if (soffitHeight > 0) {
      soffit.draw(board, new Box(box.minX(), foot, box.maxX(), box.maxY()));
    }
  }
}
