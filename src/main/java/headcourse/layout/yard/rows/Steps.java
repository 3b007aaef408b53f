package headcourse.layout.yard.rows;

/** How many steps the whole search took so far, whoever took them. */
final class Steps {
  /** How many cells of a programme are a step. */
  static final int CELLS = 64;

  private long cells;

  void count() {
    cells += CELLS;
  }

  /** Counts what is less than a step. */
  void cells(long more) {
    cells += more;
  }

  long taken() {
    return cells / CELLS;
  }
}
