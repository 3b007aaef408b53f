package headcourse.layout;

import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Opening;
import headcourse.units.Length;
import java.util.Comparator;
import java.util.List;

/**
 * A head set out: every stone in its place.
 *
 * @param opening the opening
 * @param halfWidth half the clear width that it was set out on
 * @param stones from left to right
 * @param joints left side outwards, then right side outwards
 * @param curve what only curved or fanned heads have
 * @param proof how good it is known to be
 * @param remarks what the solver did on its own account, for the sheets: roundings, sides that
 *     could not be alike
 * @param asBuilt where the jambs stand, and what fitted stones changed
 */
public record HeadLayout(
    Opening opening,
    Length halfWidth,
    List<PlacedStone> stones,
    List<JointLine> joints,
    Curve curve,
    Proof proof,
    List<Remark> remarks,
    AsBuilt asBuilt) {
  /** Copies the lists. */
  public HeadLayout {
    stones = List.copyOf(stones);
    joints = List.copyOf(joints);
    remarks = List.copyOf(remarks);
  }

  /** A head with its centre line midway between the jambs, without fitted stones. */
  public HeadLayout(
      Opening opening,
      Length halfWidth,
      List<PlacedStone> stones,
      List<JointLine> joints,
      Curve curve,
      Proof proof,
      List<Remark> remarks) {
    this(
        opening,
        halfWidth,
        stones,
        joints,
        curve,
        proof,
        remarks,
        new AsBuilt(new Jambs(halfWidth, halfWidth), List.of()));
  }

  /**
   * What the head was set out on.
   *
   * @param jambs where the jamb lines meet the soffit line
   * @param changes stones that differ from the head without its fitted stones, in the order in
   *     which they stand, those that are gone last
   */
  public record AsBuilt(Jambs jambs, List<StoneChange> changes) {
    /** Copies the list. */
    public AsBuilt {
      changes = List.copyOf(changes);
    }
  }

  /** Distance of a side's jamb line from the centre line, on the soffit line. */
  public Length jamb(Side side) {
    return asBuilt.jambs().on(side);
  }

  /** Whether the soffit is a curve, rather than a line or a slight camber. */
  public boolean curved() {
    return curve != null && curve.striking() == null;
  }

  /** Whether the head is flat with joints that fan out: a jack arch. */
  public boolean fanned() {
    return curve != null && curve.striking() != null;
  }

  /** The outermost stone of a side; the key where it has no other. */
  public PlacedStone end(Side side) {
    return stones.stream()
        .filter(s -> s.side() == side || s.role() == Role.KEY)
        .max(Comparator.comparingInt(PlacedStone::index))
        .orElseThrow();
  }

  /** How far the end of a side bears on the wall. */
  public Bearing bearing(Side side) {
    return Bearing.of(this, side);
  }

  /**
   * What is struck out on site.
   *
   * @param intrados the soffit from left to right, without the key's drop
   * @param extrados the top from left to right
   * @param centres the places that arcs, or fanned joints, are struck from
   * @param radius radius of the intrados where it has one, else null
   * @param striking depth of a jack arch's striking point below the soffit line, else null
   * @param places what else is marked on the wall to strike it: springings, crown, where arcs meet,
   *     foci of an ellipse
   * @param around running marks around the intrados, left side outwards, then right
   */
  public record Curve(
      Path intrados,
      Path extrados,
      List<Centre> centres,
      Double radius,
      Double striking,
      List<Place> places,
      List<Around> around) {
    /** Copies the lists. */
    public Curve {
      centres = List.copyOf(centres);
      places = List.copyOf(places);
      around = List.copyOf(around);
    }

    /** What a head without a curved soffit has. */
    public Curve(
        Path intrados, Path extrados, List<Centre> centres, Double radius, Double striking) {
      this(intrados, extrados, centres, radius, striking, List.of(), List.of());
    }
  }

  /**
   * A place marked on the wall.
   *
   * @param name {@code springing}, {@code crown}, {@code meeting} or {@code focus}; several may
   *     share one
   * @param at where
   */
  public record Place(String name, Point at) {}

  /**
   * How far around the intrados a joint line stands from the crown.
   *
   * @param side which side
   * @param index of the joint, as in {@link JointLine}
   * @param distance from the crown along the curve, exact
   */
  public record Around(Side side, int index, Length distance) {}

  /**
   * A place that an arc is struck from.
   *
   * @param name what the sheet calls it, as in {@code A}
   * @param at where
   * @param trammel length of the rod to the intrados, mm
   * @param fromAngle where its arc begins, radians
   * @param toAngle where its arc ends, radians
   */
  public record Centre(String name, Point at, double trammel, double fromAngle, double toAngle) {}

  /**
   * Something the solver did.
   *
   * @param key message key, as in {@code rounded}
   * @param message in English
   * @param values what the message says, as printed, for saying it in another language
   */
  public record Remark(String key, String message, List<String> values) {
    /** Copies the list. */
    public Remark {
      values = List.copyOf(values);
    }

    /** A remark that is said in English alone. */
    public Remark(String key, String message) {
      this(key, message, List.of());
    }
  }

  /** The stone with a mark. */
  public PlacedStone stone(String mark) {
    return stones.stream().filter(s -> s.mark().equals(mark)).findFirst().orElseThrow();
  }
}
