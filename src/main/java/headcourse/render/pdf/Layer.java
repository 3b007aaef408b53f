package headcourse.render.pdf;

import headcourse.drawing.Mark;

/** The layers that a reader can switch off. */
enum Layer {
  /** Stones, walls, screws, whatever is drawn. */
  OUTLINES,
  /** Dimensions and running marks. */
  DIMENSIONS,
  /** Words and tables. */
  NOTES;

  /** The layer of a group, or {@code outer} where its role says nothing. */
  static Layer of(Mark.Role role, Layer outer) {
    return switch (role) {
      case FRAME -> null;
      case STONE, WALL, SCREWS, LINES, FIGURE -> OUTLINES;
      case DIMENSIONS -> DIMENSIONS;
      case NOTES, TABLE, ROW, HEAD_CELL, CELL, TITLE, HEADING -> outer == null ? NOTES : outer;
    };
  }
}
