package headcourse.stock.pile;

/** Finds the number of a node by what it stands for; made for being emptied often. */
final class NodeTable {
  private long[] keys = new long[64];
  private int[] nodes = new int[64];
  private int[] used = new int[64];
  private int round = 1;
  private int size;

  /** Empties it. */
  void clear() {
    round++;
    size = 0;
  }

  /** The node of a key, or −1. */
  int get(long key) {
    int i = place(key);
    return used[i] == round ? nodes[i] : -1;
  }

  void put(long key, int node) {
    if (2 * ++size > keys.length) {
      grow();
    }
    set(key, node);
  }

  private void set(long key, int node) {
    int i = place(key);
    keys[i] = key;
    nodes[i] = node;
    used[i] = round;
  }

  private int place(long key) {
    long mixed = key * 0x9E3779B97F4A7C15L;
    int i = (int) (mixed >>> 32) & keys.length - 1;
    while (used[i] == round && keys[i] != key) {
      i = i + 1 & keys.length - 1;
    }
    return i;
  }

  private void grow() {
    long[] k = keys;
    int[] n = nodes;
    int[] u = used;
    keys = new long[2 * k.length];
    nodes = new int[keys.length];
    used = new int[keys.length];
    for (int i = 0; i < k.length; i++) {
      if (u[i] == round) {
        set(k[i], n[i]);
      }
    }
  }
}
