package headcourse.layout.curved;

import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.layout.Proof;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Chooses how many stones a side has: least difference of the mean soffit width from the target,
 * then fewest stones. The mean only shrinks as the number grows, so numbers are tried away from the
 * target on both sides until one fits or none can; what is left out is worse, and the answer is
 * proved best.
 */
final class DivisionSolver {
  /** No side has more stones than this. */
  private static final int MOST = 600;

  /** Steps that striking a joint counts for. */
  private static final long JOINT = 10;

  /** A width given on the grid is not broken by less, mm. */
  private static final double SLACK = 1e-6;

  private final CurvedSpec given;
  private final Divider divider;
  private int tried;

  DivisionSolver(CurvedSpec given, Divider divider) {
    this.given = given;
    this.divider = divider;
  }

  /**
   * The best division.
   *
   * @param division the joints
   * @param proof how good
   */
  record Best(Division division, Proof proof) {}

  private boolean fits(DivisionMeasures t) {
    return t.least() > 0 && broken(t).isEmpty();
  }

  Best solve() throws NoHead {
    Integer asked = given.head().stones().eachSide();
    if (asked != null && asked > MOST) {
      throw given.refuse("stones.each-side", "no side of a head has more than " + MOST + " stones");
    }
    DivisionMeasures best = asked == null ? nearest() : trial(asked);
    if (best == null || !fits(best)) {
      throw asked != null ? refuseNumber(trials()) : refuseAny(trials());
    }
    double cost = off(best);
    return new Best(
        best.division(), new Proof(Proof.Status.OPTIMAL, cost, cost, Math.max(1, tried)));
  }

  /** All numbers that fit; the one asked for alone where there is one. */
  List<Integer> counts() {
    Integer asked = given.head().stones().eachSide();
    List<Integer> counts = new ArrayList<>();
    for (int n = asked == null ? 1 : asked; n <= (asked == null ? MOST : asked); n++) {
      DivisionMeasures t = trial(n);
      if (t != null && fits(t)) {
        counts.add(n);
      }
      if (t != null && tooNarrow(t)) {
        break;
      }
    }
    return counts;
  }

  private double off(DivisionMeasures t) {
    return Math.abs(t.mean() - given.head().stones().target().mm());
  }

  private DivisionMeasures trial(int n) {
    tried++;
    Division d = divide(n);
    return d == null ? null : DivisionMeasures.of(d, Double.isNaN(divider.keyHalf()));
  }

  private Division divide(int n) {
    given.took(JOINT * n);
    return divider.divide(n);
  }

  private boolean tooNarrow(DivisionMeasures t) {
    return t.mean() < given.head().stones().min().mm() - SLACK;
  }

  /** The nearest number that fits on either side of the target, whichever is better. */
  private DivisionMeasures nearest() {
    double target = given.head().stones().target().mm();
    int start = (int) Math.max(1, Math.min(MOST, divider.guess(target)));
    DivisionMeasures best = null;
    for (int n = start; n >= 1; n--) {
      DivisionMeasures t = trial(n);
      if (t != null && fits(t) && (best == null || off(t) <= off(best) + 1e-9)) {
        best = t;
      }
      if (t != null
          && (t.mean() > given.head().stones().max().mm() + SLACK
              || best != null && t.mean() >= target)) {
        break;
      }
    }
    for (int n = start + 1; n <= MOST; n++) {
      DivisionMeasures t = trial(n);
      if (t == null || tooNarrow(t) || best != null && t.mean() < target && off(t) >= off(best)) {
        break;
      }
      if (fits(t) && (best == null || off(t) < off(best) - 1e-9)) {
        best = t;
      }
    }
    return best;
  }

  private List<DivisionMeasures> trials() {
    Integer asked = given.head().stones().eachSide();
    List<DivisionMeasures> trials = new ArrayList<>();
    for (int n = 1; n <= MOST; n++) {
      Division d = divide(n);
      if (d == null) {
        continue;
      }
      DivisionMeasures t = DivisionMeasures.of(d, Double.isNaN(divider.keyHalf()));
      trials.add(t);
      if (tooNarrow(t) && (asked == null || n >= asked)) {
        break;
      }
    }
    return trials;
  }

  private NoHead refuseNumber(List<DivisionMeasures> trials) {
    int n = given.head().stones().eachSide();
    List<Change> changes = new ArrayList<>();
    trials.stream()
        .filter(this::fits)
        .min(Comparator.comparingDouble(this::off))
        .ifPresent(
            t ->
                changes.add(
                    given.change(
                        "stones.each-side",
                        Integer.toString(t.division().each()),
                        "the number that comes nearest to the target width")));
    DivisionMeasures asked =
        trials.stream().filter(t -> t.division().each() == n).findFirst().orElse(null);
    if (asked == null || asked.least() <= 0) {
      return given.refuse(
          List.of("stones.each-side"), n + " stones a side leave nothing of them", changes);
    }
    List<String> keys = new ArrayList<>(List.of("stones.each-side"));
    broken(asked).forEach(l -> keys.add(l.key()));
    return given.refuse(keys, complaint(asked), changes);
  }

  private NoHead refuseAny(List<DivisionMeasures> trials) {
    List<DivisionMeasures> real = trials.stream().filter(t -> t.least() > 0).toList();
    if (real.isEmpty()) {
      return given.refuse(keyAt(), "the key and the joints leave no room for stones beside them");
    }
    // For each limit the number of stones that breaks it least, and no other.
    List<DivisionMeasures> near = new ArrayList<>();
    for (Limit limit : Limit.values()) {
      real.stream()
          .filter(t -> broken(t).equals(List.of(limit)))
          .min(Comparator.comparingDouble(t -> limit.excess(given, t)))
          .ifPresent(near::add);
    }
    if (near.isEmpty()) {
      real.stream().min(Comparator.comparingDouble(this::off)).ifPresent(near::add);
    }
    near.sort(Comparator.comparingInt(t -> t.division().each()));
    List<String> keys =
        near.stream().flatMap(t -> broken(t).stream()).map(l -> l.key()).distinct().toList();
    return given.refuse(
        keys, String.join("; ", near.stream().map(this::complaint).toList()), List.of());
  }

  private String keyAt() {
    HeadSpec.Key key = given.head().key();
    return key == null || key.bottom() == null && key.top() == null
        ? "key"
        : key.bottom() != null ? "key.bottom" : "key.top";
  }

  private String complaint(DivisionMeasures t) {
    List<String> parts = broken(t).stream().map(l -> l.complaint(given, t)).toList();
    int n = t.division().each();
    return n + (n == 1 ? " stone a side " : " stones a side ") + String.join(" and ", parts);
  }

  private List<Limit> broken(DivisionMeasures t) {
    return Stream.of(Limit.values()).filter(l -> l.excess(given, t) > SLACK).toList();
  }
}
