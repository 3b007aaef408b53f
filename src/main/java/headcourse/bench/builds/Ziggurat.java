package headcourse.bench.builds;

/**
 * Draws from a falling density by stacking 256 layers of equal area (Marsaglia and Tsang, The
 * Ziggurat Method for Generating Random Variables, Journal of Statistical Software 5, 2000; their
 * constants for 256 layers). Layer and place come from different bits of one number, as Doornik
 * (2005) asks. Only {@link StrictMath} and plain arithmetic, so every machine draws the same.
 */
abstract class Ziggurat {
  /** The right half of the normal density, without its factor. */
  static final Ziggurat NORMAL =
      new Ziggurat(3.6541528853610088, 0.00492867323399) {
        @Override
        double density(double x) {
          return StrictMath.exp(-x * x / 2);
        }

        @Override
        double inverse(double y) {
          return StrictMath.sqrt(-2 * StrictMath.log(y));
        }

        @Override
        double tail(SplitMix from) {
          double x;
          double y;
          do {
            x = -StrictMath.log(open(from)) / start;
            y = -StrictMath.log(open(from));
          } while (y + y < x * x);
          return start + x;
        }
      };

  /** The exponential density of mean 1. */
  static final Ziggurat EXPONENTIAL =
      new Ziggurat(7.69711747013104972, 0.0039496598225815571993) {
        @Override
        double density(double x) {
          return StrictMath.exp(-x);
        }

        @Override
        double inverse(double y) {
          return -StrictMath.log(y);
        }

        @Override
        double tail(SplitMix from) {
          return start - StrictMath.log(open(from));
        }
      };

  private static final int LAYERS = 256;
  private static final double UNIT = 1.0 / (1L << 53);

  /** Where the tail begins. */
  final double start;

  /** Right ends of the layers, the bottom one's as wide as its area over its height. */
  private final double[] ends = new double[LAYERS + 1];

  private final double[] heights = new double[LAYERS + 1];

  /**
   * The stack.
   *
   * @param start where the tail begins
   * @param area of each layer, the tail with the bottom one
   */
  Ziggurat(double start, double area) {
    this.start = start;
    ends[0] = area / density(start);
    ends[1] = start;
    for (int i = 2; i < LAYERS; i++) {
      ends[i] = inverse(area / ends[i - 1] + density(ends[i - 1]));
    }
    for (int i = 0; i <= LAYERS; i++) {
      heights[i] = density(ends[i]);
    }
  }

  abstract double density(double x);

  abstract double inverse(double y);

  abstract double tail(SplitMix from);

  /** A number above 0 and not above 1. */
  static double open(SplitMix from) {
    return ((from.next() >>> 11) + 1) * UNIT;
  }

  /** A draw, never negative. */
  double draw(SplitMix from) {
    return draw(from, from.next());
  }

  /** A draw that is as often negative. */
  double either(SplitMix from) {
    long bits = from.next();
    double x = draw(from, bits);
    return (bits & LAYERS) == 0 ? x : -x;
  }

  private double draw(SplitMix from, long first) {
    long bits = first;
    while (true) {
      int layer = (int) bits & (LAYERS - 1);
      double x = (bits >>> 11) * UNIT * ends[layer];
      if (x < ends[layer + 1]) {
        return x;
      }
      if (layer == 0) {
        return tail(from);
      }
      double y = heights[layer] + open(from) * (heights[layer + 1] - heights[layer]);
      if (y < density(x)) {
        return x;
      }
      bits = from.next();
    }
  }
}
