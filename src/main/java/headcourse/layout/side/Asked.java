package headcourse.layout.side;

/**
 * What is asked of a side with mixed widths besides its hard constraints.
 *
 * @param check its constraints, with what joints may want of spare
 * @param blanks what the yard gives
 * @param tooLong how many stones may be too long for every blank; {@link #ANY} for any number
 */
record Asked(SideCheck check, Blanks blanks, int tooLong) {
  /** Any number of stones. */
  static final int ANY = Integer.MAX_VALUE;

  /** Whether stones that are too long are counted. */
  boolean counts() {
    return tooLong != ANY && blanks.matter();
  }
}
