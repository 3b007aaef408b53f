package headcourse.layout.side;

/**
 * For every width the union of the rows whose width differs by {@code near … far}. Prefixes and
 * suffixes within blocks of the window's length make it linear in the number of rows.
 */
final class SlidingUnion {
  private final long[][] rows;
  private final int words;
  private final int block;
  private final long[][] prefix;
  private final long[][] suffix;

  private SlidingUnion(long[][] rows, int block) {
    this.rows = rows;
    this.words = rows[0].length;
    this.block = block;
    int n = rows.length;
    prefix = new long[n][];
    suffix = new long[n][];
    for (int i = 0; i < n; i++) {
      prefix[i] = i % block == 0 ? rows[i] : or(prefix[i - 1], rows[i]);
    }
    for (int i = n - 1; i >= 0; i--) {
      suffix[i] = i == n - 1 || (i + 1) % block == 0 ? rows[i] : or(suffix[i + 1], rows[i]);
    }
  }

  static long[][] around(long[][] rows, long near, long far) {
    int n = rows.length;
    long[][] result = new long[n][rows[0].length];
    long length = Math.min(far, n) - near + 1;
    if (length < 1) {
      return result;
    }
    SlidingUnion or = new SlidingUnion(rows, (int) length);
    for (int w = 0; w < n; w++) {
      long low = w - Math.min(far, n);
      or.add(Math.max(0, low), w - near, result[w]);
      or.add(w + near, Math.min(n - 1, w + Math.min(far, n)), result[w]);
    }
    return result;
  }

  /** Adds the rows from one to another; never more of them than the window is long. */
  private void add(long from, long to, long[] into) {
    if (from > to || to < 0 || from >= rows.length) {
      return;
    }
    int a = (int) from;
    int b = (int) to;
    if (a / block != b / block) {
      orInto(suffix[a], into);
      orInto(prefix[b], into);
    } else if (a % block == 0) {
      orInto(prefix[b], into);
    } else {
      // Within one block only at the far edge, where the block ends with the rows.
      orInto(suffix[a], into);
    }
  }

  private void orInto(long[] row, long[] into) {
    for (int k = 0; k < words; k++) {
      into[k] |= row[k];
    }
  }

  private long[] or(long[] a, long[] b) {
    long[] sum = new long[words];
    for (int k = 0; k < words; k++) {
      sum[k] = a[k] | b[k];
    }
    return sum;
  }
}
