package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * A sum of measures of widths (see {@link Widths}): what parts take and how far they lean in it. On
 * each blank the inner widths and the difference between the greatest and the least lean go into
 * its room.
 */
final class SpanMix {
  private final Widths widths;
  private final int measures;
  private final long[] inner;
  private final long[] low;
  private final long[] high;

  private SpanMix(Widths widths, int types, int... measures) {
    this.widths = widths;
    this.measures = measures.length;
    inner = new long[types];
    low = new long[types];
    high = new long[types];
    for (int t = 0; t < types; t++) {
      for (int k : measures) {
        inner[t] += widths.inner(k, t);
        low[t] += widths.low(k, t);
        high[t] += widths.high(k, t);
      }
    }
  }

  /** The measures, and the sums of two. */
  static List<SpanMix> of(Widths widths, int types) {
    List<SpanMix> mixes = new ArrayList<>();
    for (int k = 0; k < widths.measures(); k++) {
      mixes.add(new SpanMix(widths, types, k));
      for (int l = 0; l < k; l++) {
        mixes.add(new SpanMix(widths, types, l, k));
      }
    }
    return mixes;
  }

  long inner(int t) {
    return inner[t];
  }

  /** How far a type leans to the left at most, no more than upright. */
  long low(int t) {
    return low[t];
  }

  /** How far a type leans to the right at most, no less than upright. */
  long high(int t) {
    return high[t];
  }

  long room(Bin bin) {
    return measures * widths.room(bin);
  }

  /** Some types in the order of how far they lean to the right. */
  int[] rightwards(IntPredicate some) {
    return IntStream.range(0, inner.length)
        .filter(some)
        .boxed()
        .sorted(Comparator.comparingLong((Integer t) -> high[t]).thenComparing(t -> t))
        .mapToInt(t -> t)
        .toArray();
  }

  /** How far types lean to the left, each once. */
  long[] lows(int[] types) {
    return IntStream.of(types).mapToLong(t -> low[t]).sorted().distinct().toArray();
  }
}
