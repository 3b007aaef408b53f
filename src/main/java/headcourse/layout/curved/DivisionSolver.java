package headcourse.layout.curved;

import headcourse.layout.Change;
import headcourse.layout.Proof;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Chooses how many stones a side has: least difference of the mean soffit width from the target,
 * then fewest stones. The mean only shrinks as the number grows, so numbers are tried away from the
 * target on both sides until one fits or none can; what is left out is worse, and the answer is
 * proved best.
 */
final class DivisionSolver {
  /** No side has more stones than this. */
  private static final int MOST = 600;

  private final Given given;
  private final Divider divider;
  private int tried;

  DivisionSolver(Given given, Divider divider) {
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

  /** What one number of stones gives. */
  private record Trial(Division division, double least, double most, double mean) {
    static Trial of(Division d, boolean keyIsOne) {
      double[] c = d.chords();
      double key = keyIsOne ? d.keyChord() : c[0];
      return new Trial(
          d,
          Math.min(key, Arrays.stream(c).min().orElse(key)),
          Math.max(key, Arrays.stream(c).max().orElse(key)),
          Arrays.stream(c).average().orElse(key));
    }
  }

  private double min() {
    return given.head().stones().min().mm() - 1e-6;
  }

  private double max() {
    return given.head().stones().max().mm() + 1e-6;
  }

  private boolean fits(Trial t) {
    return t.least > 0 && t.least >= min() && t.most <= max() && isClear(t);
  }

  private boolean isClear(Trial t) {
    return t.division.clear() >= given.head().clear().mm() - 1e-6;
  }

  Best solve() throws NoHead {
    Integer asked = given.head().stones().eachSide();
    Trial best = asked == null ? nearest() : trial(asked);
    if (best == null || !fits(best)) {
      throw asked != null ? refuseNumber(trials()) : refuseAny(trials());
    }
    double cost = off(best);
    return new Best(best.division, new Proof(Proof.Status.OPTIMAL, cost, cost, Math.max(1, tried)));
  }

  private double off(Trial t) {
    return Math.abs(t.mean - given.head().stones().target().mm());
  }

  private Trial trial(int n) {
    tried++;
    Division d = divider.divide(n);
    return d == null ? null : Trial.of(d, Double.isNaN(divider.keyHalf()));
  }

  /** The nearest number that fits on either side of the target, whichever is better. */
  private Trial nearest() {
    double target = given.head().stones().target().mm();
    int start = (int) Math.max(1, Math.min(MOST, divider.guess(target)));
    Trial best = null;
    for (int n = start; n >= 1; n--) {
      Trial t = trial(n);
      if (t != null && fits(t) && (best == null || off(t) <= off(best) + 1e-9)) {
        best = t;
      }
      if (t != null && (t.mean > max() || best != null && t.mean >= target)) {
        break;
      }
    }
    for (int n = start + 1; n <= MOST; n++) {
      Trial t = trial(n);
      if (t == null || t.mean < min() || best != null && t.mean < target && off(t) >= off(best)) {
        break;
      }
      if (fits(t) && (best == null || off(t) < off(best) - 1e-9)) {
        best = t;
      }
    }
    return best;
  }

  private List<Trial> trials() {
    Integer asked = given.head().stones().eachSide();
    List<Trial> trials = new ArrayList<>();
    for (int n = 1; n <= MOST; n++) {
      Division d = divider.divide(n);
      if (d == null) {
        continue;
      }
      Trial t = Trial.of(d, Double.isNaN(divider.keyHalf()));
      trials.add(t);
      if (t.mean < min() && (asked == null || n >= asked)) {
        break;
      }
    }
    return trials;
  }

  private NoHead refuseNumber(List<Trial> trials) {
    int n = given.head().stones().eachSide();
    Trial asked = trials.stream().filter(t -> t.division.each() == n).findFirst().orElse(null);
    List<Change> changes = new ArrayList<>();
    double target = given.head().stones().target().mm();
    trials.stream()
        .filter(this::fits)
        .min((a, b) -> Double.compare(Math.abs(a.mean - target), Math.abs(b.mean - target)))
        .ifPresent(
            t ->
                changes.add(
                    given.change(
                        "stones.each-side",
                        Integer.toString(t.division.each()),
                        "the number that comes nearest to the target width")));
    if (asked == null || asked.least <= 0) {
      return given.refuse(
          List.of("stones.each-side"), n + " stones a side leave nothing of them", changes);
    }
    widen(asked, changes);
    return given.refuse(keys(asked, "stones.each-side"), complaint(asked), changes);
  }

  private NoHead refuseAny(List<Trial> trials) {
    // The two numbers between which the answer would have to lie.
    Trial wide = null;
    Trial narrow = null;
    for (Trial t : trials) {
      if (t.least > 0 && (t.most > max() || !isClear(t) || t.least >= min())) {
        wide = t;
      } else if (t.least > 0 && narrow == null) {
        narrow = t;
      }
    }
    List<Change> changes = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (Trial t : new Trial[] {wide, narrow}) {
      if (t != null) {
        widen(t, changes);
        keys(t, null).stream().filter(k -> !keys.contains(k)).forEach(keys::add);
        text.append(text.isEmpty() ? "" : "; ").append(complaint(t));
      }
    }
    if (text.isEmpty()) {
      keys.add("key");
      text.append("the key and the joints leave no room for stones beside them");
    }
    return given.refuse(keys, text.toString(), changes);
  }

  /** The one change that would let a trial pass, where one is enough. */
  private void widen(Trial t, List<Change> changes) {
    int n = t.division.each();
    boolean over = t.most > max();
    boolean under = t.least < min();
    boolean near = !isClear(t);
    if (over && !under && !near) {
      changes.add(
          given.higher("stones.max", t.most, "lets " + n + " a side be as wide as they come"));
    } else if (under && !over && !near) {
      changes.add(
          given.lower("stones.min", t.least, "lets " + n + " a side be as narrow as they come"));
    } else if (near && !over && !under) {
      changes.add(
          given.lower("clear", t.division.clear(), "lets the last joint stand where it comes"));
    }
  }

  private List<String> keys(Trial t, String first) {
    List<String> keys = new ArrayList<>();
    if (first != null) {
      keys.add(first);
    }
    if (t.most > max()) {
      keys.add("stones.max");
    }
    if (t.least < min()) {
      keys.add("stones.min");
    }
    if (!isClear(t)) {
      keys.add("clear");
    }
    return keys;
  }

  private String complaint(Trial t) {
    List<String> parts = new ArrayList<>();
    if (t.most > max()) {
      parts.add(
          "are " + given.say(t.most) + " wide, more than the " + given.say(max()) + " allowed");
    }
    if (t.least < min()) {
      parts.add(
          "are " + given.say(t.least) + " wide, less than the " + given.say(min()) + " allowed");
    }
    if (!isClear(t)) {
      parts.add(
          "put a joint "
              + given.say(t.division.clear())
              + " from the jamb's corner, nearer than "
              + given.say(given.head().clear().mm()));
    }
    return t.division.each() + " stones a side " + String.join(" and ", parts);
  }
}
