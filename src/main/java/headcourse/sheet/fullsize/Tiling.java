package headcourse.sheet.fullsize;

import headcourse.sheet.SheetContext.Turn;

/**
 * How an outline is spread over pages.
 *
 * @param turn how the pages are turned
 * @param rotated whether the outline lies a quarter turn over
 * @param columns tiles side by side
 * @param rows tiles one above the other
 */
record Tiling(Turn turn, boolean rotated, int columns, int rows) {
  /** How far neighbouring tiles overlap, mm. */
  static final double OVERLAP = 10;

  int tiles() {
    return columns * rows;
  }

  /** The fewest tiles for an outline: every turn of page and outline is tried. */
  static Tiling fewest(double width, double height, Room portrait, Room landscape) {
    Tiling best = null;
    for (Turn turn : Turn.values()) {
      Room room = turn == Turn.PORTRAIT ? portrait : landscape;
      for (boolean rotated : new boolean[] {false, true}) {
        double w = rotated ? height : width;
        double h = rotated ? width : height;
        Tiling t = new Tiling(turn, rotated, count(w, room.width()), count(h, room.height()));
        if (best == null || t.tiles() < best.tiles()) {
          best = t;
        }
      }
    }
    return best;
  }

  /** Tiles along one direction: the first covers the room, each further one less the overlap. */
  static int count(double length, double room) {
    return length <= room ? 1 : 1 + (int) Math.ceil((length - room) / (room - OVERLAP) - 1e-9);
  }

  /** The name of a tile: rows by letter from the top, columns by number from the left. */
  static String name(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int r = row; r >= 0; r = r / 26 - 1) {
      letters.insert(0, (char) ('A' + r % 26));
    }
    return letters + Integer.toString(column + 1);
  }

  /** The room for a tile on a page. */
  record Room(double width, double height) {}
}
