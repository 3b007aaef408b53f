package headcourse.sheet.frame;

import headcourse.drawing.Mark;
import headcourse.drawing.Pen;

/**
 * How an element is drawn, handed down from its parents.
 *
 * @param fill 0xRRGGBB, or −1 for none
 * @param stroke 0xRRGGBB, or −1 for none
 * @param width of the line, user units
 * @param pattern of the line
 * @param evenOdd whether the inside of a path is told by counting crossings
 * @param size of the em, user units
 * @param bold whether bold
 * @param align which part of a text lies at its anchor
 * @param shown whether drawn at all
 * @param map from user units to the reference page, mm
 * @param rigid whether a parent moves as a whole
 */
record Style(
    int fill,
    int stroke,
    double width,
    Pen.Pattern pattern,
    boolean evenOdd,
    double size,
    boolean bold,
    Mark.Align align,
    boolean shown,
    Affine map,
    boolean rigid) {
  static final int NONE = -1;

  /** SVG's initial values; the size of text is a medium of ours, 3.5 mm capitals. */
  static Style initial(Affine map) {
    return new Style(
        0, NONE, 1, Pen.Pattern.SOLID, false, 4.801, false, Mark.Align.START, true, map, false);
  }
}
