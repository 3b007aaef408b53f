package headcourse.stock.fan;

/**
 * A stone that may be set next.
 *
 * @param width its width
 * @param end whether the side ends with it
 * @param types the types of its pieces, one for each copy
 * @param sawn what is sawn off them
 * @param order the least goes first
 */
record FanTrial(long width, boolean end, int[] types, long sawn, long order)
    implements Comparable<FanTrial> {
  @Override
  public int compareTo(FanTrial o) {
    return Long.compare(order, o.order);
  }

  /** Whether it goes before another by width, then by its first piece. */
  boolean before(FanTrial o) {
    return width < o.width || width == o.width && types[0] < o.types[0];
  }
}
