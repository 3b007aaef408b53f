package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Lands;
import headcourse.bench.Piece;
import headcourse.bench.SoffitBed;
import headcourse.bench.StackUp;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Job;
import headcourse.job.Limits;
import headcourse.job.Opening;
import headcourse.job.Wall;
import headcourse.layout.Drift;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Proof;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.statics.AsSolid;
import headcourse.stock.StockPlan;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A job with heads made by hand, to be changed field by field: a key and upright stones of one
 * width, set out from the centre. By default a 96 in door, six stones of 8 in a side, dry.
 */
final class Scene {
  final JobMaker job = JobMaker.one();
  Length key = Length.inches(10);
  Length stone = Length.inches(8);
  int left = 6;
  int right = 6;

  /** Both bearings, or null as they come out. */
  Length bearing;

  /** Both stack-ups, or null for a quarter inch either way. */
  StackUp stackUp;

  /** How often each head lands, or null where nobody asked. */
  Lands lands;

  AsSolid asSolid;

  /** Rise of a curved soffit, or null for a flat one. */
  Length rise;

  /** The setting bed and the scratch coat, or null for the maker's. */
  Length bed;

  Length scratch;
  boolean worked = true;

  /** What whoever set the heads out has to say. */
  final List<HeadLayout.Remark> remarks = new ArrayList<>();

  final List<StockPlan.Saving> savings = new ArrayList<>();
  final List<StockPlan.CutBlank> blanks = new ArrayList<>();
  final List<StockPlan.OrderLine> order = new ArrayList<>();
  final List<StockPlan.Unfit> unfit = new ArrayList<>();
  private final List<Consumer<PieceMaker>> changes = new ArrayList<>();

  /** Changes every stone. */
  Scene each(Consumer<PieceMaker> change) {
    changes.add(change);
    return this;
  }

  /** Changes the stone with a mark in its opening. */
  Scene change(String mark, Consumer<PieceMaker> change) {
    return each(
        p -> {
          if (p.mark.equals(mark)) {
            change.accept(p);
          }
        });
  }

  /** Sets a threshold. */
  Scene limit(String name, Object value) {
    Map<String, Object> values = new HashMap<>(job.limits.values());
    values.put(name, value);
    job.limits = new Limits(job.limits.edition(), values);
    return this;
  }

  /** What all rules say. */
  List<Finding> check() {
    Job made = make();
    return RuleBook.check(made, heads(made), plan());
  }

  /** What one rule says. */
  List<Finding> check(String rule) {
    return check().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** The job. */
  Job make() {
    Job j = job.make();
    Wall w = j.wall();
    Wall wall =
        new Wall(
            bed != null ? bed : w.bed(),
            scratch != null ? scratch : w.scratch(),
            w.sheathing(),
            w.framing(),
            w.jambs(),
            w.courses(),
            w.above(),
            w.backing());
    return new Job(
        j.name(),
        j.info(),
        j.units(),
        j.grid(),
        j.printing(),
        j.stone(),
        wall,
        j.setting(),
        j.tools(),
        j.fastener(),
        j.props(),
        j.openings(),
        j.stock(),
        j.report(),
        j.checks(),
        j.steps(),
        j.spans());
  }

  StockPlan plan() {
    return new StockPlan(blanks, order, unfit, 0, true).saving(savings);
  }

  List<HeadWork> heads(Job made) {
    return worked ? made.openings().stream().map(o -> head(made, o)).toList() : List.of();
  }

  private HeadWork head(Job made, Opening opening) {
    List<PieceMaker> makers = new ArrayList<>();
    List<JointLine> joints = new ArrayList<>();
    double h = opening.head().height().mm();
    boolean keyed = opening.head().key() != null;
    double half = keyed ? key.mm() / 2 : 0;
    if (keyed) {
      makers.add(new PieceMaker(made, opening, "K", Side.CENTRE, 0, -half, half, h));
    }
    double end = 0;
    Length[] ends = new Length[2];
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      int n = side == Side.LEFT ? left : right;
      String letter = side == Side.LEFT ? "L" : "R";
      double j = made.setting().joint().mm();
      double at = half;
      for (int i = 1; i <= n; i++) {
        String inner = i > 1 ? letter + (i - 1) : keyed ? "K" : "";
        joints.add(joint(side, i - 1, at, at + j / 2, h, inner, letter + i));
        at += j;
        double a = side.sign() < 0 ? -at - stone.mm() : at;
        makers.add(new PieceMaker(made, opening, letter + i, side, i, a, a + stone.mm(), h));
        at += stone.mm();
      }
      joints.add(joint(side, n, at, at + j / 2, h, letter + n, ""));
      ends[side == Side.LEFT ? 0 : 1] = Length.mm(at - opening.width().mm() / 2);
      end = Math.max(end, at);
    }
    for (PieceMaker p : makers) {
      p.last = p.index == (p.side == Side.LEFT ? left : right) && p.side != Side.CENTRE;
      changes.forEach(c -> c.accept(p));
    }
    makers.sort(java.util.Comparator.comparingDouble(p -> p.x0));
    if (bearing != null) {
      makers.stream()
          .filter(p -> p.last)
          .forEach(p -> p.end = opening.width().half().plus(bearing));
    }
    List<Piece> pieces = makers.stream().map(PieceMaker::make).toList();
    Length bl = bearing != null ? bearing : ends[0];
    Length br = bearing != null ? bearing : ends[1];
    return new HeadWork(
        new HeadLayout(
            opening,
            opening.width().half(),
            pieces.stream().map(Piece::stone).toList(),
            joints,
            rise == null ? null : curve(opening.width().mm() / 2, rise.mm(), h),
            new Proof(Proof.Status.OPTIMAL, 0, 0, 1),
            remarks),
        pieces,
        List.of(stack(Side.LEFT, left, bl), stack(Side.RIGHT, right, br)),
        SoffitBed.UNKNOWN,
        lands,
        asSolid);
  }

  private StackUp stack(Side side, int n, Length bears) {
    Length off = Length.inches(0.25);
    return stackUp != null
        ? new StackUp(side, n, stackUp.drift(), stackUp.bearing(), stackUp.shortfall())
        : new StackUp(side, n, new Drift(off, off, Length.ZERO, off.half()), bears, Shortfall.SURE);
  }

  private static JointLine joint(
      Side side, int index, double mark, double x, double h, String inner, String outer) {
    return new JointLine(
        side,
        index,
        new Point(side.sign() * x, 0),
        new Point(side.sign() * x, h),
        Length.mm(mark),
        Length.mm(mark),
        inner,
        outer);
  }

  private static HeadLayout.Curve curve(double half, double rise, double h) {
    return new HeadLayout.Curve(
        Path.through(new Point(-half, 0), new Point(0, rise), new Point(half, 0)),
        Path.through(new Point(-half, h), new Point(0, rise + h), new Point(half, h)),
        List.of(),
        (half * half + rise * rise) / (2 * rise),
        null);
  }
}
