package headcourse.bench;

import headcourse.bench.SoffitNotch.Edge;
import headcourse.geom.HalfPlane;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Region;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Job;
import headcourse.job.Stone;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds the flats that cover the soffit behind a stone: one behind the face of a mitred or butted
 * stone, two behind a V that no corner can give.
 */
final class SoffitPieces {
  private static final double MM3_PER_M3 = 1e9;
  private static final Set<Edge> BOTH = EnumSet.of(Edge.LEFT, Edge.RIGHT);
  private static final Vec RIGHTWARDS = new Vec(1, 0);

  private final Job job;
  private final StoneFrame frame;
  private final Length deep;
  private final String mark;
  private final SoffitAnchors anchors;

  private SoffitPieces(Job job, HeadLayout head, StoneFrame frame, boolean bothEnds) {
    this.anchors = new SoffitAnchors(job, bothEnds);
    this.job = job;
    this.frame = frame;
    this.deep = head.opening().reveal().plus(frame.stone().proud());
    this.mark = head.opening().mark() + "-" + frame.stone().mark();
  }

  /**
   * The soffit pieces of a stone, from left to right; none where its return does it.
   *
   * @param leg what its return is
   * @param bothEnds whether joints are wide enough for a screw at both ends
   */
  static List<SoffitPiece> find(
      Job job, HeadLayout head, StoneFrame frame, ReturnLeg leg, boolean bothEnds) {
    Soffit soffit = head.opening().head().soffit();
    SoffitPieces p = new SoffitPieces(job, head, frame, bothEnds);
    Optional<VSoffit> v = VSoffit.of(frame.stone());
    if (soffit == Soffit.NONE || v.isEmpty() && soffit == Soffit.RETURNED) {
      return List.of();
    }
    if (v.isPresent()) {
      return leg.present() ? List.of() : p.flanks(v.get());
    }
    return leg.present() ? p.behind(soffit, leg).stream().toList() : List.of();
  }

  private Optional<SoffitPiece> behind(Soffit soffit, ReturnLeg leg) {
    Chord chord = Chord.between(frame.lowerLeft(), frame.lowerRight());
    Optional<Path> strip = lowest(chord);
    if (leg.relief().isPositive()) {
      Side side = frame.stone().side();
      strip = strip.flatMap(leg.kept(side)::clip);
      chord = chord.upTo(leg.seatFrom(), side);
    }
    boolean mitred = soffit == Soffit.MITRED;
    SoffitPiece.Joint joint = mitred ? SoffitPiece.Joint.MITRED : SoffitPiece.Joint.BUTTED;
    return strip.isEmpty()
        ? Optional.empty()
        : piece(mark + "-S", joint, strip.get(), chord, leg.relief(), BOTH);
  }

  private List<SoffitPiece> flanks(VSoffit v) {
    HalfPlane left = new HalfPlane(v.apex(), RIGHTWARDS.times(-1));
    HalfPlane right = new HalfPlane(v.apex(), RIGHTWARDS);
    return Stream.of(
            flank("-SL", Chord.between(v.left(), v.apex()), left, Edge.LEFT),
            flank("-SR", Chord.between(v.apex(), v.right()), right, Edge.RIGHT))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<SoffitPiece> flank(String suffix, Chord chord, HalfPlane half, Edge open) {
    return lowest(chord)
        .flatMap(half::clip)
        .flatMap(
            s ->
                piece(
                    mark + suffix,
                    SoffitPiece.Joint.BUTTED,
                    s,
                    chord,
                    Length.ZERO,
                    EnumSet.of(open)));
  }

  /** What of the face lies within a thickness of a chord. */
  private Optional<Path> lowest(Chord chord) {
    Vec up = chord.along().normal();
    Point over = chord.origin().plus(up.times(job.stone().thickness().mm()));
    return new HalfPlane(over, up.times(-1)).clip(frame.stone().outline());
  }

  private Optional<SoffitPiece> piece(
      String name,
      SoffitPiece.Joint joint,
      Path section,
      Chord chord,
      Length relief,
      Set<Edge> open) {
    Stone stone = job.stone();
    double t = stone.thickness().mm();
    boolean mitred = joint == SoffitPiece.Joint.MITRED;
    Length depth = mitred ? deep : deep.minus(stone.thickness());
    if (!depth.isPositive() || chord.length() <= Tolerance.SAME) {
      return Optional.empty();
    }
    Reach low = new Reach(chord.from(), chord.to());
    Reach high = Reach.over(section, chord, t);
    Region region = Region.within(section);
    double up = region.centroid().minus(chord.origin()).dot(chord.along().normal());
    // A mitre takes as much off the depth as the place stands above the underside.
    double volume = region.area() * (mitred ? depth.mm() - up : depth.mm()) / MM3_PER_M3;
    return Optional.of(
        new SoffitPiece(
            name,
            joint,
            section,
            Length.mm(low.length()),
            Length.mm(high.length()),
            Length.mm(Math.max(low.to(), high.to()) - Math.min(low.from(), high.from())),
            depth,
            stone.thickness(),
            end(low.from() - high.from(), t),
            end(high.to() - low.to(), t),
            relief,
            relief.isPositive(),
            anchors.of(
                new SoffitAnchors.Piece(
                    frame,
                    chord.origin().plus(chord.along().times((chord.from() + chord.to()) / 2)),
                    chord.along().normal(),
                    Length.mm(Math.min(low.length(), high.length())),
                    depth,
                    mitred ? Length.ZERO : stone.thickness(),
                    open,
                    relief.isPositive())),
            volume,
            volume * stone.density(),
            volume * stone.liftingDensity()));
  }

  /** An end whose upper side stands out by so much past its underside. */
  private static SoffitPiece.End end(double out, double t) {
    Rake.LongPoint point =
        Math.abs(out) < Tolerance.SAME
            ? Rake.LongPoint.NEITHER
            : out > 0 ? Rake.LongPoint.TOP : Rake.LongPoint.BOTTOM;
    double off = point == Rake.LongPoint.NEITHER ? 0 : Math.abs(out);
    return new SoffitPiece.End(Angle.ofRate(off, t), point);
  }

  /**
   * The straight underside of a piece.
   *
   * @param origin a place on it
   * @param along its unit direction, to the right
   * @param from where it begins, from the origin
   * @param to where it ends
   */
  private record Chord(Point origin, Vec along, double from, double to) {
    static Chord between(Point a, Point b) {
      return new Chord(a, b.minus(a).unit(), 0, a.distance(b));
    }

    /** What of it is left on the opening's side of a plumb line. */
    Chord upTo(double x, Side side) {
      double at = (x - origin.x()) / along.x();
      return side == Side.LEFT
          ? new Chord(origin, along, Math.max(from, at), to)
          : new Chord(origin, along, from, Math.min(to, at));
    }

    double length() {
      return to - from;
    }
  }

  /** How far a piece reaches along its chord, mm. */
  private record Reach(double from, double to) {
    /** At a height over the chord, or at the piece's top where that is lower. */
    static Reach over(Path path, Chord chord, double height) {
      Vec up = chord.along().normal();
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      List<Point> v = path.vertices(Tolerance.VERTEX);
      // Of the vertices, not of the arcs between: some vertex must stand at the level.
      double top = v.stream().mapToDouble(p -> p.minus(chord.origin()).dot(up)).max().orElseThrow();
      double level = Math.min(height, top);
      for (int i = 0; i < v.size(); i++) {
        Vec a = v.get(i).minus(chord.origin());
        Vec b = v.get((i + 1) % v.size()).minus(chord.origin());
        double ya = a.dot(up) - level;
        double yb = b.dot(up) - level;
        boolean on = Math.abs(ya) <= Tolerance.SAME;
        if (on || ya * yb < 0) {
          double share = on ? 0 : ya / (ya - yb);
          double x = a.plus(b.plus(a.times(-1)).times(share)).dot(chord.along());
          from = Math.min(from, x);
          to = Math.max(to, x);
        }
      }
      return new Reach(from, to);
    }

    double length() {
      return to - from;
    }
  }
}
