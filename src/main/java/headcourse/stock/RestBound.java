package headcourse.stock;

/** Something that knows what a rest of parts must cost at least. */
interface RestBound {
  /**
   * A bound, each of its components by itself, on every packing of the rest that is of use. Where
   * it says that parts must be missing, it says no more than that; otherwise it holds for packings
   * that leave none out.
   *
   * @param rest parts of each type
   * @param left blanks of each kind
   * @param spent what the blanks filled before cost
   */
  Cost of(int[] rest, int[] left, Cost spent);
}
