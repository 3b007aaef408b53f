package headcourse.bench;

import headcourse.job.Care;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Builds heads by a second, plain way, for comparison: from the layout's marks, with the JDK's
 * generator, following the words of the wall sheet.
 */
final class PlainBuilds {
  private static final double EIGHTH = 25.4 / 8;
  private final Job job;
  private final HeadLayout head;
  private final Care care;
  private final boolean curved;
  private final Random random;

  /** Where the end of the side built last stands off its mark. */
  private double end;

  PlainBuilds(Job job, HeadLayout head, long seed) {
    this.job = job;
    this.head = head;
    this.care = job.setting().care();
    this.curved = head.curve() != null && head.curve().striking() == null;
    this.random = new Random(seed * 7919 + 31);
  }

  /** How many of so many builds land. */
  int landed(int builds, boolean checking) {
    int landed = 0;
    for (int i = 0; i < builds; i++) {
      landed += lands(checking) ? 1 : 0;
    }
    return landed;
  }

  /** Where the right end stands off its mark, built so many times without checks; mm. */
  double[] rightEnds(int builds) {
    double[] ends = new double[builds];
    for (int i = 0; i < builds; i++) {
      lands(false);
      ends[i] = end;
    }
    return ends;
  }

  private double off(Length deviation) {
    return deviation.mm() * random.nextGaussian();
  }

  private double joint() {
    return job.setting().dry()
        ? -Math.log(1 - random.nextDouble()) * care.opens().mm()
        : 25.4 / 32 * random.nextGaussian();
  }

  private double held(double joint) {
    if (job.setting().dry()) {
      return joint;
    }
    double least = -Math.min(EIGHTH, job.setting().joint().mm());
    return joint < least ? least : joint > EIGHTH ? EIGHTH : joint;
  }

  private boolean lands(boolean checking) {
    boolean taped =
        head.opening().measured() != null
            && (head.opening().measured().widthHead() != null
                || head.opening().measured().widthMiddle() != null
                || head.opening().measured().widthSill() != null);
    double site = off(taped ? care.read() : care.site()) / 2;
    double key = off(care.key());
    Map<String, Double> fences = new HashMap<>();
    double half = 0;
    boolean keyed = false;
    for (PlacedStone s : head.stones()) {
      if (s.role() == Role.KEY) {
        keyed = true;
        half = width(s, fences) / 2;
      }
    }
    if (!keyed) {
      half = held(joint()) / 2;
    }
    return side(Side.LEFT, half - key, site, keyed, fences, checking)
        & side(Side.RIGHT, half + key, site, keyed, fences, checking);
  }

  /** What a stone's width is out. */
  private double width(PlacedStone s, Map<String, Double> fences) {
    if (s.fitted()) {
      return 0;
    }
    StoneFrame f = StoneFrame.of(s);
    String setting =
        Math.round(f.lowerLeft().distance(f.lowerRight()) * 1e4)
            + "/"
            + tilt(f, Where.LEFT)
            + "/"
            + tilt(f, Where.RIGHT);
    Double fence = fences.get(setting);
    if (fence == null) {
      fence = off(care.fence());
      fences.put(setting, fence);
    }
    return fence + off(care.cut());
  }

  private static long tilt(StoneFrame f, Where side) {
    double x = f.own(f.upward(side)).x();
    return Math.round(Math.toDegrees(Math.asin(x)) * 1e4);
  }

  private double mark(JointLine j) {
    if (!curved) {
      return j.soffitMark().mm();
    }
    return head.curve().around().stream()
        .filter(a -> a.side() == j.side() && a.index() == j.index())
        .findFirst()
        .orElseThrow()
        .distance()
        .mm();
  }

  private boolean side(
      Side side,
      double begin,
      double site,
      boolean keyed,
      Map<String, Double> fences,
      boolean checking) {
    List<JointLine> joints = new ArrayList<>(head.joints());
    joints.removeIf(j -> j.side() != side);
    joints.sort(Comparator.comparingInt(JointLine::index));
    int n = joints.size() - 1;
    double nominal = job.setting().joint().mm();
    double clear = head.opening().head().clear().mm();
    double jamb = (curved ? mark(joints.get(n)) : head.jamb(side).mm()) + site;
    double[] trim = new double[n + 2];
    double[] open = new double[n + 1];
    double off = begin;
    boolean clears = true;
    for (int i = 0; i <= n; i++) {
      JointLine j = joints.get(i);
      if (i > 0) {
        PlacedStone s = head.stone(j.inner());
        off += width(s, fences) - trim[i];
      }
      if (i == n) {
        break;
      }
      if (checking && i % 3 == 0 && !j.inner().isEmpty()) {
        double seen = off + off(care.read());
        double tick = job.grid().tick().mm();
        if (seen > tick) {
          int next = i + 1;
          while (next <= n && head.stone(joints.get(next).inner()).fitted()) {
            next++;
          }
          if (next <= n) {
            trim[next] += seen + off(care.cut());
          }
        } else if (seen < -tick) {
          int many = Math.min(3, n - i);
          for (int k = i; k < i + many; k++) {
            open[k] = -seen / many;
          }
        }
      }
      double edge = mark(j) - (curved && keyed(j) ? nominal / 2 : 0);
      double near = edge + off;
      if (i > 0 || keyed) {
        off += held(joint() + open[i]);
      }
      double far =
          j.inner().isEmpty() ? edge + off + (curved ? nominal / 2 : 0) : edge + nominal + off;
      clears &= far <= jamb - clear + 1e-6 || near >= jamb + clear - 1e-6;
    }
    end = off;
    double bears = mark(joints.get(n)) + off - jamb;
    boolean fan = head.curve() != null && head.curve().striking() != null;
    if (curved || fan && head.bearing(side).onWall().abs().mm() < job.grid().tick().mm()) {
      double gap = job.setting().dry() ? EIGHTH : Math.max(EIGHTH, 19.05 - nominal);
      return clears && off - site >= -gap - 1e-6;
    }
    Length wall = side == Side.LEFT ? head.opening().wallLeft() : head.opening().wallRight();
    Length top = head.bearing(side).onTop();
    double most = head.opening().head().bearing().max().mm();
    if (wall != null) {
      most = Math.min(most, wall.mm() - Math.max(0, top.minus(head.bearing(side).onWall()).mm()));
    }
    return clears
        && bears >= head.opening().head().bearing().min().mm() - 1e-6
        && bears <= most + 1e-6;
  }

  private static boolean keyed(JointLine j) {
    return !j.inner().isEmpty();
  }
}
