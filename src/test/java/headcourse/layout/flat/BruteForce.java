package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best flat head by trying everything, one side, in ticks as doubles: written apart from the
 * solver, as plainly as can be, for small heads whose two sides are alike.
 */
final class BruteForce {
  private final HeadSpec head;
  private final boolean jack;
  private final double tick;
  private final double half;
  private final double height;
  private final double joint;
  private final double wall;
  private final double usable;
  private final double min;
  private final double max;
  private double strike;
  private double keyBottom;
  private double keyTop;
  private double[] best;

  BruteForce(Job job) {
    Opening o = job.openings().get(0);
    head = o.head();
    jack = head.shape().equals("jack");
    tick = job.grid().tick().picometres();
    half = ticks(o.width()) / 2;
    height = Math.round(ticks(head.height()));
    joint = ticks(job.setting().joint());
    min = Math.ceil(ticks(head.stones().min()) - 1e-9);
    max = Math.floor(ticks(head.stones().max()) + 1e-9);
    double left = o.wallLeft() == null ? 1e12 : ticks(o.wallLeft());
    double right = o.wallRight() == null ? 1e12 : ticks(o.wallRight());
    wall = Math.min(left, right);
    usable =
        job.stock().items().stream()
            .mapToDouble(
                i -> Math.floor(ticks(i.length()) - 2 * ticks(job.tools().saw().cleanCut()) + 1e-9))
            .max()
            .orElse(1e12);
  }

  private double ticks(Length l) {
    return l.picometres() / tick;
  }

  private static double round(double x) {
    return Math.floor(x + 0.5 + 1e-9);
  }

  /** The least cost, or null: three numbers to be compared in turn. */
  double[] best() {
    for (double end = Math.ceil(half - 1e-9); end <= half + ticks(head.bearing().max()); end++) {
      double b = end - half;
      if (b < ticks(head.bearing().min()) - 1e-9
          || b > ticks(head.bearing().max()) + 1e-9
          || b > wall + 1e-9) {
        continue;
      }
      boolean springs = jack && b < 1 - 1e-9;
      if (!springs && b < ticks(head.clear()) - 1e-9) {
        continue;
      }
      key(end);
      if (jack && topEnd(end) - half > wall + 1e-9) {
        continue;
      }
      if (head.stones().rhythm() == Rhythm.MIXED) {
        mixed(end);
      } else {
        for (int n = 1; n < 200; n++) {
          divided(end, n);
        }
      }
    }
    return best;
  }

  /** What an end and a number of stones cost. */
  double[] cost(double bearing, int n) {
    double end = Math.round(half + bearing);
    key(end);
    double mean = (place(end) - place0()) / n - joint;
    double off = Math.abs(mean - ticks(head.stones().target()));
    double b = Math.abs(end - half - ticks(head.bearing().target()));
    return head.stones().rhythm() == Rhythm.MIXED
        ? new double[] {b, off, 0}
        : new double[] {off, b, n};
  }

  private boolean onTop() {
    return jack && "top".equals(head.params().word("divide").orElse(""));
  }

  private double place0() {
    return onTop() ? keyTop : keyBottom;
  }

  private double place(double end) {
    return onTop() ? topEnd(end) : end;
  }

  private double topEnd(double end) {
    return jack ? round(end * (strike + height) / strike) : end;
  }

  private void key(double end) {
    HeadSpec.Key k = head.key();
    strike = 1e18;
    if (jack) {
      Angle skew = head.params().angle("skewback").orElse(null);
      double foot = ticks(Length.inches(12));
      double rate = head.params().angle("rake").map(Angle::tan).orElse(1 / 8.0);
      strike =
          skew != null
              ? end * skew.tan()
              : head.params().length("striking").map(this::ticks).orElse(foot / 2 / rate);
    }
    if (k == null) {
      keyBottom = -joint / 2;
      keyTop = -joint / 2;
    } else if (jack) {
      double y = k.bottom() != null ? -ticks(k.drop()) : height + ticks(k.rise());
      double w = ticks(k.bottom() != null ? k.bottom() : k.top());
      keyBottom = round((w / 2 + joint / 2) * strike / (strike + y) - joint / 2);
      keyTop = round((keyBottom + joint / 2) * (strike + height) / strike - joint / 2);
    } else {
      double drop = Math.round(ticks(k.drop()));
      double all = drop + height + Math.round(ticks(k.rise()));
      double slope = (ticks(k.top()) - ticks(k.bottom())) / all;
      keyBottom = round((ticks(k.bottom()) + slope * drop) / 2);
      keyTop = round((ticks(k.bottom()) + slope * (drop + height)) / 2);
    }
  }

  /** Soffit and top foot of joint i whose foot on the dividing line is known. */
  private double[] feet(int i, double foot) {
    if (jack) {
      double g = (strike + height) / strike;
      return onTop()
          ? new double[] {round((foot + joint / 2) / g - joint / 2), foot}
          : new double[] {foot, round((foot + joint / 2) * g - joint / 2)};
    }
    int ease = head.params().count("ease").orElse(1);
    if (i >= ease) {
      return new double[] {foot, foot};
    }
    double rake = Math.atan((keyTop - keyBottom) / height) * (ease - i) / ease;
    double lean = Math.tan(rake) * height;
    return new double[] {foot, foot + Math.signum(lean) * Math.round(Math.abs(lean))};
  }

  private double more(double[] f) {
    double m = (f[1] - f[0]) / height;
    return joint / 2 * (Math.hypot(1, m) - 1);
  }

  private boolean clear(double[] f) {
    double c = ticks(head.clear()) - 1e-7;
    double more = more(f);
    double[] xs = jack ? new double[] {f[0]} : f;
    boolean in = true;
    boolean out = true;
    for (double x : xs) {
      in &= half - (x + joint + more) >= c;
      out &= x - more - half >= c;
    }
    return in || out;
  }

  private boolean stone(double inner, double outer, double[] in, double[] out, boolean last) {
    double w = outer - inner - joint;
    double lost = more(in) + (last ? 0 : more(out));
    return w >= min
        && w <= max
        && (lost == 0 || Math.round(w - lost) >= min)
        && out[0] - in[0] - joint - lost > 1e-9
        && out[1] - in[1] - joint - lost > 1e-9
        && Math.max(out[0], out[1]) - Math.min(in[0], in[1]) - joint <= usable;
  }

  private void offer(double end, int n) {
    double[] cost = cost(end - half, n);
    if (best == null || compare(cost, best) < 0) {
      best = cost;
    }
  }

  static int compare(double[] a, double[] b) {
    for (int i = 0; i < 3; i++) {
      if (Math.abs(a[i] - b[i]) > 1e-7) {
        return a[i] < b[i] ? -1 : 1;
      }
    }
    return 0;
  }

  private void divided(double end, int n) {
    Integer each = head.stones().eachSide();
    if (each != null && each != n) {
      return;
    }
    boolean graded = head.stones().rhythm() == Rhythm.GRADED;
    double step = graded ? Math.round(ticks(head.stones().step())) : 0;
    double mean = (place(end) - place0()) / n - joint;
    List<Double> places = new ArrayList<>();
    double exact = place0();
    for (int i = 1; i < n; i++) {
      double w = mean + step * ((n + 1) / 2.0 - i);
      exact += w + joint;
      if (!jack && Math.abs(w - Math.rint(w)) > 1e-7) {
        return;
      }
      places.add(round(byAngle(exact, end, i, n, step)));
    }
    if (!jack && Math.abs(mean * n - Math.rint(mean * n)) > 1e-7) {
      return;
    }
    double inner = place0();
    double[] in = {keyBottom, keyTop};
    if (!clear(in) || Math.max(in[0], jack ? 0 : in[1]) > half) {
      return;
    }
    for (int i = 1; i <= n; i++) {
      double outer = i == n ? place(end) : places.get(i - 1);
      double[] out = i == n ? new double[] {end, topEnd(end)} : feet(i, outer);
      double w = outer - inner - joint;
      if (!jack && step == 0 && Math.abs(w - mean) > 1e-7) {
        return;
      }
      if (!stone(inner, outer, in, out, i == n) || i < n && !clear(out)) {
        return;
      }
      inner = outer;
      in = out;
    }
    offer(end, n);
  }

  private double byAngle(double exact, double end, int i, int n, double step) {
    if (!jack || step != 0 || !"angle".equals(head.params().word("divide").orElse(""))) {
      return exact;
    }
    double a = Math.atan((keyBottom + joint / 2) / strike);
    double b = Math.atan((end + joint / 2) / strike);
    return strike * Math.tan(a + (b - a) * i / n) - joint / 2;
  }

  /** Level by level: which foot, with which last width, once or twice running. */
  private void mixed(double end) {
    double[] in = {keyBottom, keyTop};
    if (!clear(in) || Math.max(in[0], jack ? 0 : in[1]) > half) {
      return;
    }
    int base = (int) place0();
    int far = (int) place(end) - base;
    int kinds = (int) (max - min + 1);
    double step = Math.ceil(ticks(head.stones().step()) - 1e-9);
    double jump =
        head.stones().jump() == null ? 1e12 : Math.floor(ticks(head.stones().jump()) + 1e-9);
    boolean[][][] now = new boolean[far + 1][kinds + 1][2];
    now[0][kinds][0] = true;
    boolean[] some = new boolean[far + 1];
    some[0] = true;
    for (int n = 1; n * (min + joint) <= far; n++) {
      boolean[][][] next = new boolean[far + 1][kinds + 1][2];
      boolean[] more = new boolean[far + 1];
      boolean ends = false;
      for (int at = 0; at <= far; at++) {
        if (!some[at]) {
          continue;
        }
        double[] from = n == 1 ? in : feet(n - 1, base + at);
        for (int w = 0; w < kinds; w++) {
          double outer = base + at + joint + min + w;
          int to = (int) outer - base;
          if (to > far) {
            continue;
          }
          boolean[] ok = follows(now[at], w, kinds, step, jump);
          if (!ok[0] && !ok[1]) {
            continue;
          }
          double[] out = feet(n, outer);
          if (to == far && stone(base + at, outer, from, new double[] {end, topEnd(end)}, true)) {
            ends = true;
          }
          if (to < far && clear(out) && stone(base + at, outer, from, out, false)) {
            next[to][w][0] |= ok[0];
            next[to][w][1] |= ok[1];
            more[to] = true;
          }
        }
      }
      if (ends && (head.stones().eachSide() == null || head.stones().eachSide() == n)) {
        offer(end, n);
      }
      now = next;
      some = more;
    }
  }

  private static boolean[] follows(boolean[][] at, int w, int kinds, double step, double jump) {
    boolean[] ok = new boolean[2];
    if (at[kinds][0]) {
      ok[0] = true;
    }
    for (int v = 0; v < kinds; v++) {
      double d = Math.abs(v - w);
      if (v != w && d >= step && d <= jump && (at[v][0] || at[v][1])) {
        ok[0] = true;
      }
      if (v == w && step == 0 && at[v][0]) {
        ok[1] = true;
      }
    }
    return ok;
  }

  @Override
  public String toString() {
    return Arrays.toString(best);
  }
}
