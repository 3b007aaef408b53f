package headcourse.bench.builds;

/** The SplitMix64 generator (Steele, Lea and Flood 2014): the same numbers on every machine. */
final class SplitMix {
  /** The odd number nearest to 2⁶⁴ over the golden ratio. */
  static final long STEP = 0x9E3779B97F4A7C15L;

  private long state;

  SplitMix(long seed) {
    state = seed;
  }

  long next() {
    state += STEP;
    return mix(state);
  }

  static long mix(long state) {
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
