package headcourse.bench;

import headcourse.bench.builds.BuildPlan;
import headcourse.bench.builds.BuildSide;
import headcourse.bench.builds.Builds;
import headcourse.bench.builds.Errors;
import headcourse.job.Care;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.layout.Bearing;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts a head in the terms of builds. In a flat head places are measured along the soffit line; in
 * a curved one around the soffit from the crown, where its end closes on the skewback.
 */
public final class Landings {
  /** How many builds are tried. */
  public static final int BUILDS = 10_000;

  /** Widest mortar joint of an arch (Modern Masonry, 2016). */
  private static final Length WIDEST = Length.inches(0.75);

  private final Job job;
  private final HeadLayout head;
  private final MarkChecks checks;
  private final SawSettings settings = new SawSettings();

  private Landings(Job job, HeadLayout head) {
    this.job = job;
    this.head = head;
    this.checks = MarkChecks.of(job, head);
  }

  /**
   * Builds a head {@value #BUILDS} times, the same way each time it is asked, and its mirror image
   * in the mirrored way.
   *
   * @param job the job
   * @param head a head of that job
   */
  public static Lands of(Job job, HeadLayout head) {
    BuildPlan plan = plan(job, head);
    return Movers.of(
        Builds.run(plan, BUILDS), plan, job.setting().care().name(), job.setting().dry());
  }

  /** A head in the terms of builds. */
  static BuildPlan plan(Job job, HeadLayout head) {
    return new Landings(job, head).plan();
  }

  private BuildPlan plan() {
    // Which side is drawn first must not depend on which is left, so that a mirrored head is built
    // in the mirrored way; where both are alike it makes no difference.
    List<Double> left = figures(Side.LEFT);
    List<Double> right = figures(Side.RIGHT);
    Side one = order(left, right) <= 0 ? Side.LEFT : Side.RIGHT;
    Optional<PlacedStone> key =
        head.stones().stream().filter(s -> s.role() == Role.KEY).findFirst();
    int keySetting = key.map(settings::of).orElse(BuildSide.KNOWN);
    BuildSide first = side(one);
    BuildSide second = side(one == Side.LEFT ? Side.RIGHT : Side.LEFT);
    boolean dry = job.setting().dry();
    return new BuildPlan(
        key.isPresent(),
        keySetting,
        settings.count(),
        first,
        second,
        errors(),
        dry ? -1 : job.setting().joint().mm(),
        Care.MOST_MORTAR.mm(),
        head.opening().head().clear().mm(),
        checks.allowed().mm());
  }

  private Errors errors() {
    Care care = job.setting().care();
    Length joint = job.setting().dry() ? care.opens() : Care.MORTAR;
    Length site = site(job, head);
    return new Errors(
        care.cut().mm(),
        care.fence().mm(),
        joint.mm(),
        care.read().mm(),
        care.key().mm(),
        site.mm());
  }

  /**
   * How far the opening is off as a rule: as the job's care says, or, where it was measured on
   * site, as far as a tape is read.
   */
  public static Length site(Job job, HeadLayout head) {
    Measured m = head.opening().measured();
    boolean taped =
        m != null && (m.widthHead() != null || m.widthMiddle() != null || m.widthSill() != null);
    return taped ? job.setting().care().read() : job.setting().care().site();
  }

  private BuildSide side(Side side) {
    List<Double> edges = edges(side);
    List<PlacedStone> stones = stones(side);
    List<BuildSide.Stone> list = new ArrayList<>();
    for (int i = 0; i < stones.size(); i++) {
      list.add(
          new BuildSide.Stone(
              edges.get(2 * i + 1), edges.get(2 * i + 2), settings.of(stones.get(i))));
    }
    double end = edges.get(edges.size() - 1);
    boolean closes = closes(side);
    HeadSpec.Bearing bearing = head.opening().head().bearing();
    return new BuildSide(
        edges.get(0),
        list,
        checks.on(side).stream()
            .map(
                p ->
                    new BuildSide.Check(
                        p.joint().index(),
                        p.trimmed() == null ? 0 : p.trimmed().index(),
                        p.opened()))
            .toList(),
        head.curved() ? end : head.jamb(side).mm(),
        closes ? -gap() : bearing.min().mm(),
        Math.min(bearing.max().mm(), wall(side)),
        closes);
  }

  /** What the wall beside the opening gives, counted where the head runs out farthest. */
  private double wall(Side side) {
    Length wall = side == Side.LEFT ? head.opening().wallLeft() : head.opening().wallRight();
    Bearing bearing = head.bearing(side);
    Length over = bearing.onTop().minus(bearing.onWall()).max(Length.ZERO);
    return wall == null ? Double.POSITIVE_INFINITY : wall.minus(over).mm();
  }

  /**
   * By how much an end may fall short of its skewback, mm: until the mortar joint there is as wide
   * as one in an arch may be; a dry one is taken for a gap where a mortar joint would be off.
   */
  private double gap() {
    Length off = Care.MOST_MORTAR;
    return job.setting().dry() ? off.mm() : off.max(WIDEST.minus(job.setting().joint())).mm();
  }

  private boolean closes(Side side) {
    return head.curved()
        || head.fanned() && head.bearing(side).onWall().abs().compareTo(job.grid().tick()) < 0;
  }

  private List<PlacedStone> stones(Side side) {
    return head.stones().stream()
        .filter(s -> s.side() == side)
        .sorted(Comparator.comparingInt(PlacedStone::index))
        .toList();
  }

  /** The key's edge, then inner and outer edge of each stone outwards, mm along the soffit. */
  private List<Double> edges(Side side) {
    List<JointLine> joints =
        head.joints().stream()
            .filter(j -> j.side() == side)
            .sorted(Comparator.comparingInt(JointLine::index))
            .toList();
    double joint = job.setting().joint().mm();
    List<Double> edges = new ArrayList<>();
    for (JointLine j : joints) {
      boolean end = j.outer().isEmpty();
      boolean middle = j.inner().isEmpty();
      double edge =
          head.curved()
              ? around(side, j.index()) - (end || middle ? 0 : joint / 2)
              : j.soffitMark().mm();
      edges.add(middle ? 0 : edge);
      if (!end) {
        edges.add(head.curved() && middle ? joint / 2 : middle ? edge : edge + joint);
      }
    }
    return edges;
  }

  private double around(Side side, int index) {
    return head.curve().around().stream()
        .filter(a -> a.side() == side && a.index() == index)
        .mapToDouble(a -> a.distance().mm())
        .findFirst()
        .orElseThrow();
  }

  private List<Double> figures(Side side) {
    List<Double> figures = new ArrayList<>(edges(side));
    figures.add(head.jamb(side).mm());
    figures.add(wall(side));
    stones(side).forEach(s -> figures.add(s.fitted() ? 1.0 : 0.0));
    return figures;
  }

  private static int order(List<Double> a, List<Double> b) {
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      int by = Double.compare(a.get(i), b.get(i));
      if (by != 0) {
        return by;
      }
    }
    return Integer.compare(a.size(), b.size());
  }
}
