package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleConsumer;

/**
 * The best flat head by trying everything, one side, in ticks as doubles: written apart from the
 * solver, as plainly as can be, for small heads whose two sides are alike.
 */
final class BruteForce {
  private final HeadSpec head;
  private final boolean jack;
  private final double tick;
  private final double half;
  private final double near;
  private final double far;
  private final Job job;
  private final double tau;
  private final double opens;
  private final boolean keyed;
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
  private final List<double[]> every = new ArrayList<>();

  BruteForce(Job job) {
    this(job, job.openings().get(0).width().half(), job.openings().get(0).width().half(), null);
  }

  /** Between jamb lines at two distances, with a wall or the shorter of the job's. */
  BruteForce(Job job, Length left, Length right, Length beside) {
    Opening o = job.openings().get(0);
    this.job = job;
    head = o.head();
    jack = head.shape().equals("jack");
    tick = job.grid().tick().picometres();
    near = Math.min(ticks(left), ticks(right));
    far = Math.max(ticks(left), ticks(right));
    half = (near + far) / 2;
    tau = ticks(job.setting().cutTolerance());
    opens = ticks(job.setting().opens());
    keyed = head.key() != null;
    height = Math.round(ticks(head.height()));
    joint = ticks(job.setting().joint());
    min = Math.ceil(ticks(head.stones().min()) - 1e-9);
    max = Math.floor(ticks(head.stones().max()) + 1e-9);
    double leftWall = o.wallLeft() == null ? 1e12 : ticks(o.wallLeft());
    double rightWall = o.wallRight() == null ? 1e12 : ticks(o.wallRight());
    wall = beside == null ? Math.min(leftWall, rightWall) : ticks(beside);
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

  /**
   * The least cost, or null: what is wanting of spare, how many stones fit no blank, and three
   * numbers of the rhythm's own, to be compared in turn.
   */
  double[] best() {
    if (head.stones().rhythm() == Rhythm.MIXED) {
      // What is greatest and what adds up can't be made least in one go.
      double[] least = {Double.POSITIVE_INFINITY};
      ends(end -> mixed(end, 1e12, false, (n, s) -> least[0] = Math.min(least[0], s)));
      double most = least[0] + 1e-3;
      ends(
          end -> mixed(end, most, true, (n, much) -> offer(end, n, least[0], unfit(end, n, much))));
      return best;
    }
    ends(
        end -> {
          for (int n = 1; n < 200; n++) {
            divided(end, n);
          }
        });
    return best;
  }

  /**
   * Every even or graded head that there is: number a side, end on the soffit line, run on the line
   * that widths are counted on, then what it costs.
   */
  List<double[]> all() {
    best();
    return every;
  }

  private void ends(DoubleConsumer at) {
    for (double end = Math.ceil(half - 1e-9); end <= half + ticks(head.bearing().max()); end++) {
      if (end - far < ticks(head.bearing().min()) - 1e-9
          || end - near > ticks(head.bearing().max()) + 1e-9
          || end - near > wall + 1e-9) {
        continue;
      }
      if (!springs(end) && end - far < ticks(head.clear()) - 1e-9) {
        continue;
      }
      key(end);
      if (jack && topEnd(end) - near > wall + 1e-9) {
        continue;
      }
      at.accept(end);
    }
  }

  private boolean springs(double end) {
    return jack && end - far > -1e-9 && end - near < 1 - 1e-9;
  }

  /** What joint i, or with an end the end after i stones, wants of spare at the worst. */
  private double wants(int i, double[] f, boolean end) {
    int cuts = i + (keyed ? 1 : 0);
    boolean dry = job.setting().dry();
    // By ordinary care, in inches: three deviations of what three stones after a check bring.
    int after = Math.min(i, 3);
    double sum = 1 / 1024.0 + 1 / 1024.0 + 1 / 4096.0 + Math.min(cuts, 3) / 4096.0;
    sum += after * after / 4096.0 + (dry ? 0 : after / 1024.0);
    double care = ticks(Length.inches(3 * Math.sqrt(sum)));
    double mean = dry ? 2 * after * ticks(job.setting().care().opens()) : 0;
    double in = Math.max(care, cuts * tau + (dry ? 0 : i * opens));
    double out = Math.max(care + mean, cuts * tau + i * opens);
    double c = ticks(head.clear());
    if (end) {
      double room = Math.min(f[0] - far - c, f[0] - far - ticks(head.bearing().min()));
      double most =
          Math.min(
              ticks(head.bearing().max()) - (f[0] - near), wall - (Math.max(f[0], f[1]) - near));
      return springs(f[0]) ? 0 : Math.max(0, Math.max(in - room, out - most));
    }
    double x = jack ? f[0] : Math.max(f[0], f[1]);
    double inside = near - c - (x + joint + more(f));
    if (inside > -1e-6) {
      return Math.max(0, out - inside);
    }
    double y = jack ? f[0] : Math.min(f[0], f[1]);
    return Math.max(0, in - (y - more(f) - far - c));
  }

  private List<Stock.Item> high() {
    return job.stock().items().stream()
        .filter(i -> i.thickness().equals(job.stone().thickness()))
        .filter(i -> ticks(i.face()) >= height - 1e-9)
        .toList();
  }

  private boolean deep(Stock.Item i) {
    return i.kind() == Stock.Kind.CORNER
        && i.returnLeg().compareTo(job.openings().get(0).reveal()) >= 0;
  }

  private double usable(Stock.Item i) {
    return Math.floor(ticks(i.length()) - 2 * ticks(job.tools().saw().cleanCut()) + 1e-9);
  }

  /** Whether a stone is too long for each of the blanks that are otherwise good for it. */
  private boolean tooLong(double[] in, double[] out, boolean last) {
    boolean returned =
        head.soffit() == HeadSpec.Soffit.RETURNED
            && in[0] + joint < far + ticks(head.seat()) - 1e-6;
    List<Stock.Item> good = high().stream().filter(i -> !returned || deep(i)).toList();
    double to = Math.max(out[0], out[1]) - (last ? 0 : more(out));
    double extent = to - (Math.min(in[0], in[1]) + joint + more(in));
    double ceiling = Math.ceil(extent - 1e-5);
    return !good.isEmpty() && good.stream().allMatch(i -> usable(i) < ceiling);
  }

  private double unfit(double end, int n, double tooLong) {
    int count = job.openings().get(0).count();
    return Math.max(tooLong * 2 * count, lacking(end, n, count));
  }

  private double lacking(double end, int n, int count) {
    boolean returned = head.soffit() == HeadSpec.Soffit.RETURNED;
    List<Stock.Item> good = high().stream().filter(i -> !returned || deep(i)).toList();
    if (good.isEmpty() || good.stream().anyMatch(Stock.Item::toOrder)) {
      return 0;
    }
    double width = (end - keyBottom + topEnd(end) - keyTop) / 2 / n - joint;
    double lean = jack ? Math.abs(topEnd(end) - end + keyTop - keyBottom) / 2 : 0;
    double kerf = ticks(job.tools().saw().kerf());
    List<Stock.Item> lying = new ArrayList<>();
    good.forEach(i -> lying.addAll(Collections.nCopies(i.count(), i)));
    double given = 0;
    for (Stock.Item i : lying) {
      given += row(usable(i) - lean, width, kerf);
    }
    double key = 2 * Math.max(keyBottom, keyTop);
    for (int k = 0; keyed && k < count; k++) {
      Stock.Item best = null;
      double cost = 1e12;
      for (Stock.Item i : lying) {
        double all =
            height + Math.round(ticks(head.key().rise())) + Math.round(ticks(head.key().drop()));
        Length back = job.openings().get(0).reveal().plus(head.key().proud());
        boolean takes =
            usable(i) >= key
                && ticks(i.face()) >= all - 1e-9
                && (!returned || i.returnLeg().compareTo(back) >= 0);
        double loss =
            row(usable(i) - lean, width, kerf) - row(usable(i) - key - kerf - lean, width, kerf);
        if (takes && loss < cost) {
          cost = loss;
          best = i;
        }
      }
      given -= best == null ? 0 : cost;
      lying.remove(best);
    }
    return Math.max(0, 2.0 * n * count - given);
  }

  private static double row(double length, double width, double kerf) {
    return Math.max(0, Math.floor((length + kerf) / (width + kerf) + 1e-9));
  }

  /** What a head costs, by its right side. */
  double[] cost(HeadLayout h) {
    List<double[]> feet = new ArrayList<>();
    double mm = job.grid().tick().mm();
    for (JointLine j : h.joints()) {
      if (j.side() == Side.RIGHT) {
        boolean last = j.outer().isEmpty();
        double slope = (j.head().x() - j.foot().x()) / (j.head().y() - j.foot().y());
        double s = (j.foot().x() - slope * j.foot().y()) / mm - (last ? 0 : joint / 2);
        double t = j.head().x() / mm - (last ? 0 : joint / 2);
        feet.add(new double[] {Math.round(2 * s) / 2.0, Math.round(2 * t) / 2.0});
      }
    }
    int n = feet.size() - 1;
    double end = feet.get(n)[0];
    key(end);
    double wants = 0;
    double tooLong = 0;
    for (int i = 0; i <= n; i++) {
      wants = Math.max(wants, wants(i, feet.get(i), i == n));
      tooLong += i > 0 && tooLong(feet.get(i - 1), feet.get(i), i == n) ? 1 : 0;
    }
    double[] own = cost(end - half, n);
    return new double[] {wants, unfit(end, n, tooLong), own[0], own[1], own[2]};
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
      in &= near - (x + joint + more) >= c;
      out &= x - more - far >= c;
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

  private void offer(double end, int n, double wants, double unfit) {
    double[] own = cost(end - half, n);
    double[] cost = {wants, unfit, own[0], own[1], own[2]};
    every.add(new double[] {n, end, place(end) - place0(), wants, unfit, own[0], own[1], own[2]});
    if (best == null || compare(cost, best) < 0) {
      best = cost;
    }
  }

  static int compare(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      // What is wanting is told apart no finer than a micrometre, or two thousandths of a tick.
      if (Math.abs(a[i] - b[i]) > (i == 0 ? 2e-3 : 1e-7)) {
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
    double wants = wants(0, new double[] {keyBottom, keyTop}, false);
    double tooLong = 0;
    double[] in = {keyBottom, keyTop};
    if (!clear(in) || Math.max(in[0], jack ? 0 : in[1]) > near) {
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
      wants = Math.max(wants, wants(i, out, i == n));
      tooLong += tooLong(in, out, i == n) ? 1 : 0;
      inner = outer;
      in = out;
    }
    offer(end, n, wants, unfit(end, n, tooLong));
  }

  private double byAngle(double exact, double end, int i, int n, double step) {
    if (!jack || step != 0 || !"angle".equals(head.params().word("divide").orElse(""))) {
      return exact;
    }
    double a = Math.atan((keyBottom + joint / 2) / strike);
    double b = Math.atan((end + joint / 2) / strike);
    return strike * Math.tan(a + (b - a) * i / n) - joint / 2;
  }

  private interface Ended {
    void at(int n, double least);
  }

  /**
   * Level by level: which foot, with which last width, once or twice running; the least that joints
   * want on the way there, or the fewest stones too long of those that want no more than so much.
   */
  private void mixed(double end, double most, boolean count, Ended ended) {
    double[] in = {keyBottom, keyTop};
    if (!clear(in) || Math.max(in[0], jack ? 0 : in[1]) > near) {
      return;
    }
    int base = (int) place0();
    int run = (int) place(end) - base;
    int kinds = (int) (max - min + 1);
    double step = Math.ceil(ticks(head.stones().step()) - 1e-9);
    double jump =
        head.stones().jump() == null ? 1e12 : Math.floor(ticks(head.stones().jump()) + 1e-9);
    double start = wants(0, in, false);
    if (start > most) {
      return;
    }
    double[][][] now = never(run, kinds);
    now[0][kinds][0] = count ? 0 : start;
    boolean[] some = new boolean[run + 1];
    some[0] = true;
    for (int n = 1; n * (min + joint) <= run; n++) {
      double[][][] next = never(run, kinds);
      boolean[] more = new boolean[run + 1];
      double ends = Double.POSITIVE_INFINITY;
      for (int at = 0; at <= run; at++) {
        if (!some[at]) {
          continue;
        }
        double[] from = n == 1 ? in : feet(n - 1, base + at);
        for (int w = 0; w < kinds; w++) {
          double outer = base + at + joint + min + w;
          int to = (int) outer - base;
          if (to > run) {
            continue;
          }
          double[] ok = follows(now[at], w, kinds, step, jump);
          if (Math.min(ok[0], ok[1]) == Double.POSITIVE_INFINITY) {
            continue;
          }
          double[] last = {end, topEnd(end)};
          double[] out = to == run ? last : feet(n, outer);
          double wants = wants(n, out, to == run);
          if (wants > most
              || to < run && !clear(out)
              || !stone(base + at, outer, from, out, to == run)) {
            continue;
          }
          double much = count && tooLong(from, out, to == run) ? 1 : 0;
          for (int r = 0; r < 2; r++) {
            double value = count ? ok[r] + much : Math.max(ok[r], wants);
            if (to == run) {
              ends = Math.min(ends, value);
            } else {
              next[to][w][r] = Math.min(next[to][w][r], value);
              more[to] = true;
            }
          }
        }
      }
      if (ends < Double.POSITIVE_INFINITY
          && (head.stones().eachSide() == null || head.stones().eachSide() == n)) {
        ended.at(n, ends);
      }
      now = next;
      some = more;
    }
  }

  private static double[][][] never(int far, int kinds) {
    double[][][] all = new double[far + 1][kinds + 1][2];
    for (double[][] at : all) {
      for (double[] w : at) {
        Arrays.fill(w, Double.POSITIVE_INFINITY);
      }
    }
    return all;
  }

  private static double[] follows(double[][] at, int w, int kinds, double step, double jump) {
    double[] ok = {at[kinds][0], Double.POSITIVE_INFINITY};
    for (int v = 0; v < kinds; v++) {
      double d = Math.abs(v - w);
      if (v != w && d >= step && d <= jump) {
        ok[0] = Math.min(ok[0], Math.min(at[v][0], at[v][1]));
      }
      if (v == w && step == 0) {
        ok[1] = at[v][0];
      }
    }
    return ok;
  }

  @Override
  public String toString() {
    return Arrays.toString(best);
  }
}
