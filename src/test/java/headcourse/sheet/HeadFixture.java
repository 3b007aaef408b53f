package headcourse.sheet;

import headcourse.bench.Anchor;
import headcourse.bench.EdgeName;
import headcourse.bench.HeadWork;
import headcourse.bench.Mass;
import headcourse.bench.Measures;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.bench.ReturnLeg;
import headcourse.bench.StackUp;
import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Drift;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.revision.Changes;
import headcourse.rules.Materials;
import headcourse.rules.Mortar;
import headcourse.stock.StockPlan;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Heads set out by hand, for tests of sheets that need no solver. */
public final class HeadFixture {
  private HeadFixture() {}

  /** A job worked out from such heads. */
  public static ShopWork work(Job job, List<HeadWork> heads) {
    return new ShopWork(
        job,
        heads,
        new StockPlan(List.of(), List.of(), List.of(), 0, true),
        new Materials(
            heads.stream().mapToInt(h -> h.pieces().size()).sum(),
            1.5,
            110,
            74,
            new Mortar(0.02, 0.015, 0.01, 0.0005, 0.0045),
            3,
            18,
            List.of(new Materials.ScrewCount(Length.inches(3), 18)),
            3.2),
        List.of(),
        Changes.NONE);
  }

  /**
   * A flat head, both sides alike.
   *
   * @param widths widths of a side's stones on the soffit line, outwards, mm
   * @param striking depth of the striking point, mm; 0 for plumb joints beside the key
   */
  public static HeadWork flat(Job job, Opening opening, double[] widths, double striking) {
    return new Flat(job, opening, widths, striking).make();
  }

  private static final class Flat {
    final Job job;
    final Opening opening;
    final double[] widths;
    final double h;
    final double joint;
    final double[] foot;
    final double[] head;

    Flat(Job job, Opening opening, double[] widths, double striking) {
      this.job = job;
      this.opening = opening;
      this.widths = widths;
      this.h = opening.head().height().mm();
      this.joint = job.setting().joint().mm();
      this.foot = new double[widths.length + 1];
      this.head = new double[widths.length + 1];
      HeadSpec.Key key = opening.head().key();
      foot[0] = key == null ? 0 : snap(key.bottom().mm() / 2);
      for (int i = 0; i < widths.length; i++) {
        foot[i + 1] = snap(foot[i] + widths[i] + (foot[i] == 0 ? 0 : joint));
      }
      for (int i = 0; i < foot.length; i++) {
        head[i] = striking > 0 ? snap(foot[i] * (striking + h) / striking) : foot[i];
      }
      if (striking == 0 && key != null) {
        head[0] = snap(key.top().mm() / 2);
      }
    }

    double snap(double mm) {
      return job.grid().snapMm(mm).mm();
    }

    HeadWork make() {
      List<PlacedStone> stones = new ArrayList<>();
      List<JointLine> joints = new ArrayList<>();
      boolean keyed = opening.head().key() != null;
      if (keyed) {
        stones.add(key());
      }
      int n = widths.length;
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        String letter = side == Side.LEFT ? "L" : "R";
        for (int i = 0; i <= n; i++) {
          joints.add(
              new JointLine(
                  side,
                  i,
                  new Point(side.sign() * foot[i], 0),
                  new Point(side.sign() * head[i], h),
                  Length.mm(foot[i]),
                  Length.mm(head[i]),
                  i == 0 ? keyed ? "K" : "" : letter + i,
                  i == n ? "" : letter + (i + 1)));
        }
        for (int i = 1; i <= n; i++) {
          stones.add(stone(side, letter + i, i, i == n));
        }
      }
      stones.sort(Comparator.comparingDouble(s -> s.outline().bounds().centre().x()));
      HeadLayout layout =
          new HeadLayout(
              opening,
              opening.width().half(),
              stones,
              joints,
              null,
              new Proof(Proof.Status.OPTIMAL, 0, 0, 1),
              List.of());
      return dress(job, layout);
    }

    PlacedStone key() {
      HeadSpec.Key key = opening.head().key();
      double slope = (head[0] - foot[0]) / h;
      double low = -key.drop().mm();
      double high = h + key.rise().mm();
      double b = foot[0] + slope * low;
      double t = foot[0] + slope * high;
      return quad("K", Role.KEY, Side.CENTRE, 0, -b, b, t, -t, low, high);
    }

    PlacedStone stone(Side side, String mark, int i, boolean end) {
      double a = foot[i - 1] + (foot[i - 1] == 0 ? 0 : joint);
      double at = head[i - 1] + (foot[i - 1] == 0 ? 0 : joint);
      Role role = end ? Role.END : Role.STONE;
      return side == Side.LEFT
          ? quad(mark, role, side, i, -foot[i], -a, -at, -head[i], 0, h)
          : quad(mark, role, side, i, a, foot[i], head[i], at, 0, h);
    }
  }

  private static PlacedStone quad(
      String mark,
      Role role,
      Side side,
      int index,
      double bl,
      double br,
      double tr,
      double tl,
      double low,
      double high) {
    Point a = new Point(bl, low);
    Point b = new Point(br, low);
    Point c = new Point(tr, high);
    Point d = new Point(tl, high);
    List<FaceEdge> face =
        List.of(
            new FaceEdge(new Straight(a, b), FaceEdge.Where.SOFFIT),
            new FaceEdge(new Straight(b, c), FaceEdge.Where.RIGHT),
            new FaceEdge(new Straight(c, d), FaceEdge.Where.TOP),
            new FaceEdge(new Straight(d, a), FaceEdge.Where.LEFT));
    return new PlacedStone(
        mark,
        role,
        side,
        index,
        face,
        new PlacedStone.Feet(Length.mm(bl), Length.mm(br), Length.mm(tl), Length.mm(tr)),
        Length.mm(br - bl),
        Length.mm(tr - tl),
        Length.mm(high - low),
        Length.ZERO,
        0,
        false);
  }

  /** A segmental head of an odd number of radial stones. */
  public static HeadWork arch(Job job, Opening opening, double rise, int count) {
    double w = opening.width().mm();
    double r = (w * w / 4 + rise * rise) / (2 * rise);
    double phi = rise > w / 2 - 1e-6 ? Math.PI / 2 : Math.asin(w / 2 / r);
    double depth = opening.head().height().mm();
    Point centre = new Point(0, rise - r);
    double step = 2 * phi / count;
    List<PlacedStone> stones = new ArrayList<>();
    List<JointLine> joints = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = Math.PI / 2 + phi - i * step;
      int k = i - count / 2;
      Side side = k == 0 ? Side.CENTRE : k < 0 ? Side.LEFT : Side.RIGHT;
      Role role = k == 0 ? Role.KEY : Math.abs(k) == count / 2 ? Role.END : Role.STONE;
      String mark = k == 0 ? "K" : (k < 0 ? "L" : "R") + Math.abs(k);
      Arc in = new Arc(centre, r, from, -step);
      Arc out = new Arc(centre, r + depth, from - step, step);
      List<FaceEdge> face =
          List.of(
              new FaceEdge(in, FaceEdge.Where.SOFFIT),
              new FaceEdge(new Straight(in.to(), out.from()), FaceEdge.Where.RIGHT),
              new FaceEdge(out, FaceEdge.Where.TOP),
              new FaceEdge(new Straight(out.to(), in.from()), FaceEdge.Where.LEFT));
      stones.add(
          new PlacedStone(
              mark,
              role,
              side,
              Math.abs(k),
              face,
              new PlacedStone.Feet(
                  Length.mm(in.from().x()),
                  Length.mm(in.to().x()),
                  Length.mm(out.to().x()),
                  Length.mm(out.from().x())),
              Length.mm(in.from().distance(in.to())),
              Length.mm(out.from().distance(out.to())),
              Length.mm(depth),
              Length.ZERO,
              r * (1 - Math.cos(step / 2)),
              false));
    }
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      for (int i = 0; i <= count / 2; i++) {
        double a = Math.PI / 2 - side.sign() * (step / 2 + i * step);
        Point f = new Arc(centre, r, a, 0).from();
        Point t = new Arc(centre, r + depth, a, 0).from();
        String letter = side == Side.LEFT ? "L" : "R";
        joints.add(
            new JointLine(
                side,
                i,
                f,
                t,
                Length.mm(Math.abs(f.x())),
                Length.mm(Math.abs(t.x())),
                i == 0 ? "K" : letter + i,
                i == count / 2 ? "" : letter + (i + 1)));
      }
    }
    double a0 = Math.PI / 2 + phi;
    Edge in = new Arc(centre, r, a0, -2 * phi);
    Edge out = new Arc(centre, r + depth, a0, -2 * phi);
    HeadLayout layout =
        new HeadLayout(
            opening,
            opening.width().half(),
            stones,
            joints,
            new HeadLayout.Curve(
                new Path(List.of(in), false),
                new Path(List.of(out), false),
                List.of(
                    new HeadLayout.Centre("A", centre, r, Math.PI / 2 - phi, Math.PI / 2 + phi)),
                r,
                null),
            new Proof(Proof.Status.OPTIMAL, 0, 0, 1),
            List.of());
    return dress(job, layout);
  }

  private static HeadWork dress(Job job, HeadLayout layout) {
    List<PlacedStone> order = new ArrayList<>(layout.stones());
    order.sort(Comparator.comparingInt(s -> 2 * s.index() + (s.side() == Side.LEFT ? 1 : 0)));
    List<Piece> pieces = new ArrayList<>();
    for (PlacedStone s : layout.stones()) {
      pieces.add(piece(job, layout, s, order.indexOf(s) + 1));
    }
    int n = layout.stones().size() / 2 + 1;
    List<StackUp> ups = new ArrayList<>();
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Length worst = Length.inches(n * 3 / 64.0);
      ups.add(
          new StackUp(
              side,
              n,
              new Drift(worst, worst, Length.ZERO, worst.half()),
              layout.bearing(side).onWall(),
              Shortfall.SURE));
    }
    return new HeadWork(layout, pieces, ups);
  }

  private static Piece piece(Job job, HeadLayout layout, PlacedStone s, int order) {
    List<Notch> notches = new ArrayList<>();
    boolean key = s.side() == Side.CENTRE;
    if (s.side() != Side.RIGHT) {
      notches.add(notch(s, FaceEdge.Where.LEFT, key ? EdgeName.LEFT : EdgeName.OUTER));
    }
    if (s.side() != Side.LEFT) {
      notches.add(notch(s, FaceEdge.Where.RIGHT, key ? EdgeName.RIGHT : EdgeName.OUTER));
    }
    double area = Math.abs(s.outline().area()) * 1e-6;
    double kg = area * job.stone().thickness().mm() / 1000 * job.stone().density() * 1.3;
    Rake plumb = new Rake(Angle.ZERO, Length.ZERO, s.height(), Rake.LongPoint.NEITHER);
    return new Piece(
        layout.opening().mark() + "-" + s.mark(),
        s,
        order,
        1,
        new Measures(s.height(), s.height(), s.height(), s.height(), s.bottom()),
        plumb,
        plumb,
        job.stone().thickness(),
        new ReturnLeg(layout.opening().reveal(), Length.ZERO, 0),
        new Mass(area, area * 0.03, kg, kg, s.outline().bounds().centre(), 20),
        List.of(),
        List.of(),
        notches,
        List.of());
  }

  private static Notch notch(PlacedStone s, FaceEdge.Where where, EdgeName name) {
    Edge edge = s.edges(where).get(0);
    Point at = edge.at(where == FaceEdge.Where.RIGHT ? 0.62 : 0.38);
    return new Notch(
        name,
        at,
        Length.inches(7.5),
        Length.inches(9 / 16.0),
        Length.inches(11 / 16.0),
        Angle.degrees(39),
        Length.inches(0.5),
        Length.inches(5 / 8.0),
        new Anchor(
            new Backing(null, Backing.Kind.WOOD, "", 0.41),
            Anchor.Hold.HOLDS,
            AnchorKind.WOOD_SCREW,
            Length.inches(3),
            Length.inches(1.25),
            Backing.Kind.WOOD,
            Length.inches(1.25),
            Length.inches(3)),
        true,
        s.role() == Role.END ? "wall" : s.side() == Side.CENTRE ? "R1" : "R2");
  }
}
