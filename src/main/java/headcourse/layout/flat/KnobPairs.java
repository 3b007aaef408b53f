package headcourse.layout.flat;

import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;

/**
 * Two values of a job that may be turned together where no single one helps: one gives way far, the
 * other is turned as little as then helps, and then the first as little as helps with that.
 */
final class KnobPairs {
  /** With so many pairs in hand no more are looked for. */
  private static final int ENOUGH = 8;

  private final FlatShape shape;
  private final LengthFormat format;
  private final Knob.Trier trier;
  private final BooleanSupplier tired;
  private final List<Pair> found = new ArrayList<>();
  private final TreeSet<String> seen = new TreeSet<>();

  /**
   * @param tired whether trying has taken long enough
   */
  KnobPairs(FlatShape shape, LengthFormat format, Knob.Trier trier, BooleanSupplier tired) {
    this.shape = shape;
    this.format = format;
    this.trier = trier;
    this.tired = tired;
  }

  /** Two values that help together. */
  record Pair(Knob.Turned first, Knob.Turned second) {
    double size() {
      return first.size() + second.size();
    }
  }

  /** Those that were found, smallest first. */
  List<Pair> of(FlatTerms terms) {
    List<Knob> knobs = Knobs.of(terms, format);
    // What has an easier way needs but one trial; the others come after.
    List<Knob> first = new ArrayList<>(knobs);
    first.sort(Comparator.comparingInt(k -> k.way() == 0 ? 1 : 0));
    for (Knob a : first) {
      for (long value : a.wide()) {
        if (found.size() < ENOUGH && !tired.getAsBoolean()) {
          beside(terms, a, value);
        }
      }
    }
    found.sort(Comparator.comparingDouble(Pair::size));
    return found;
  }

  private FlatTerms terms(Knob.Asked asked) {
    FlatReading reading = asked == null ? null : shape.read(asked.job(), asked.opening());
    return reading == null || reading.head() == null ? null : reading.head().terms();
  }

  private void beside(FlatTerms terms, Knob a, long value) {
    FlatTerms wide = terms(a.with().apply(value));
    if (wide == null) {
      return;
    }
    for (Knob b : Knobs.of(wide, format)) {
      boolean known = seen.contains(a.path() + b.path()) || seen.contains(b.path() + a.path());
      if (b.path().equals(a.path()) || known || tired.getAsBoolean()) {
        continue;
      }
      Knob.Turned second = b.turned(trier);
      Pair pair = second == null ? null : least(terms, a, second);
      if (pair != null) {
        seen.add(a.path() + b.path());
        found.add(pair);
      }
    }
  }

  /** With the second turned the first is turned as little as helps. */
  private Pair least(FlatTerms terms, Knob a, Knob.Turned second) {
    for (Knob b : Knobs.of(terms, format)) {
      if (!b.path().equals(second.knob().path())) {
        continue;
      }
      FlatTerms with = terms(b.with().apply(second.value()));
      for (Knob k : with == null ? List.<Knob>of() : Knobs.of(with, format)) {
        Knob.Turned first = k.path().equals(a.path()) ? k.turned(trier) : null;
        if (first != null) {
          return new Pair(first, new Knob.Turned(b, second.value(), first.head()));
        }
      }
    }
    return null;
  }
}
