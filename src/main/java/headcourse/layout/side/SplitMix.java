package headcourse.layout.side;

/** The SplitMix64 generator (Steele, Lea and Flood 2014): the same numbers on every machine. */
public final class SplitMix {
  private long state;

  /** Numbers that follow from a seed. */
  public SplitMix(long seed) {
    state = seed;
  }

  /** The next number. */
  public long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** A whole number from 0 below a bound. */
  int below(int bound) {
    return (int) Math.floorMod(next(), (long) bound);
  }
}
