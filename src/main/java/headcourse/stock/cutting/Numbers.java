package headcourse.stock.cutting;

import java.util.Arrays;

/**
 * Numbers as a key.
 *
 * @param of which; not changed any more
 * @param hash of them, which a map would otherwise work out again and again
 */
record Numbers(int[] of, int hash) {
  Numbers(int[] of) {
    this(of, Arrays.hashCode(of));
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Numbers other && hash == other.hash && Arrays.equals(of, other.of);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
