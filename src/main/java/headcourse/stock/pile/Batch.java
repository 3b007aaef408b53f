package headcourse.stock.pile;

/** The pieces for one stone: as many as there are copies of its head, the shortest first. */
final class Batch {
  final int[] types;
  final long usable;
  private int filled = 1;

  /**
   * @param first type of the shortest
   * @param usable its length
   */
  Batch(int copies, int first, long usable) {
    this.types = new int[copies];
    this.types[0] = first;
    this.usable = usable;
  }

  boolean full() {
    return filled == types.length;
  }

  int missing() {
    return types.length - filled;
  }

  long length(PileTypes of) {
    long sum = 0;
    for (int t : types) {
      sum += of.usable[t];
    }
    return sum;
  }

  void add(int type) {
    types[filled++] = type;
  }

  void remove() {
    filled--;
  }
}
