package headcourse.stock;

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
}
