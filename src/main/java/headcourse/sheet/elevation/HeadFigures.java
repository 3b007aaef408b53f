package headcourse.sheet.elevation;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.geom.Box;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The places and printed figures of a head that every elevation shows. */
public final class HeadFigures {
  private final HeadWork work;
  private final LengthFormat format;
  private Box box;
  private List<RunMark> soffitMarks;
  private List<RunMark> topMarks;
  private List<JointLine> endJoints;
  private final Map<Double, Double> endDepths = new TreeMap<>();

  /** The figures of a head. */
  public HeadFigures(HeadWork work, LengthFormat format) {
    this.work = work;
    this.format = format;
  }

  /** The head. */
  public HeadWork work() {
    return work;
  }

  /** The head set out. */
  public HeadLayout layout() {
    return work.layout();
  }

  /** How lengths are printed. */
  public LengthFormat format() {
    return format;
  }

  /** The least box around all stones, model space. */
  public Box box() {
    if (box == null) {
      box = around(layout().stones());
    }
    return box;
  }

  /** The least box around some stones, model space. */
  static Box around(List<PlacedStone> stones) {
    if (stones.isEmpty()) {
      throw new IllegalArgumentException("a head has stones");
    }
    Box box = stones.get(0).outline().bounds();
    for (PlacedStone s : stones.subList(1, stones.size())) {
      box = box.union(s.outline().bounds());
    }
    return box;
  }

  /** Whether the soffit is a curve rather than a line or a slight camber. */
  public boolean curved() {
    return layout().curved();
  }

  /** Distance of a side's jamb line from the centre line, mm. */
  public double jamb(Side side) {
    return layout().jamb(side).mm();
  }

  /** Whether joints run out on a plumb end, where their heights are printed. */
  public boolean heightsAtEnds() {
    return !endJoints().isEmpty();
  }

  /** The joints that run out on a plumb end. */
  List<JointLine> endJoints() {
    if (endJoints == null) {
      endJoints = layout().joints().stream().filter(j -> EndHeights.onEnd(this, j)).toList();
    }
    return endJoints;
  }

  /** How much paper beside an end the heights there take in a lettering, mm. */
  double endDepth(Lettering lettering) {
    return endDepths.computeIfAbsent(
        lettering.height(), h -> new EndHeights(this, lettering).widest());
  }

  /** Whether a stone stands on the centre line. */
  public boolean keyed() {
    for (PlacedStone s : layout().stones()) {
      if (s.role() == Role.KEY) {
        return true;
      }
    }
    return false;
  }

  /** Overall width between the ends on the soffit line, as the printed marks add up to. */
  public Length overall() {
    return end(Side.LEFT).plus(end(Side.RIGHT));
  }

  /** Overall width between the ends, where they bear. */
  public Length overallAnywhere() {
    return curved()
        ? bearing(Side.LEFT).plus(bearing(Side.RIGHT)).plus(snapped(layout().halfWidth().times(2)))
        : overall();
  }

  /** How far the end of a side bears on the wall, as it is printed. */
  public Length bearing(Side side) {
    return layout().bearing(side).onWall(format.grid());
  }

  /** How far the end of a side bears on the top line, as it is printed. */
  public Length bearingOnTop(Side side) {
    return layout().bearing(side).onTop(format.grid());
  }

  /** Whether a bearing is printed as it is, rather than rounded to the grid. */
  public boolean bearingExact(Side side) {
    return format.grid().holds(layout().bearing(side).onWall());
  }

  /** Running mark of a side's end on the soffit line. */
  public Length end(Side side) {
    Length end = null;
    for (JointLine j : layout().joints()) {
      if (j.side() == side) {
        Length mark = snapped(j.soffitMark());
        end = end == null ? mark : end.max(mark);
      }
    }
    return end == null ? Length.ZERO : end;
  }

  /** Running mark of a side's end on the top line. */
  public Length topEnd(Side side) {
    Length end = null;
    for (JointLine j : layout().joints()) {
      if (j.side() == side) {
        Length mark = snapped(j.topMark());
        end = end == null ? mark : end.max(mark);
      }
    }
    return end == null ? Length.ZERO : end;
  }

  /** The joints of a side, outwards. */
  public List<JointLine> joints(Side side) {
    return layout().joints().stream()
        .filter(j -> j.side() == side)
        .sorted(Comparator.comparingInt(JointLine::index))
        .toList();
  }

  /** How far around the form a joint of an arch stands from the crown, as it is printed. */
  public String aroundForm(JointLine joint) {
    return layout().curve().around().stream()
        .filter(a -> a.side() == joint.side() && a.index() == joint.index())
        .map(a -> format.tape(snapped(a.distance())))
        .findFirst()
        .orElse("");
  }

  /** Whether a flat head's soffit is cambered, so that each joint's rise is printed. */
  public boolean cambered() {
    return !curved() && layout().joints().stream().anyMatch(j -> !rise(j).isZero());
  }

  /** How far a joint of a flat head meets the soffit above the soffit line, as it is printed. */
  public Length rise(JointLine joint) {
    return format.grid().snapMm(joint.foot().y());
  }

  /** Height of an arch's soffit on the centre line, without the key's drop, mm. */
  double crown() {
    Box box = layout().curve().intrados().bounds();
    return box.maxY();
  }

  /** A length on the grid, as it is printed. */
  public Length snapped(Length length) {
    return format.grid().snap(length);
  }

  /** Marks along the soffit, left to right; the centre line itself is not among them. */
  List<RunMark> soffitMarks() {
    if (soffitMarks == null) {
      List<RunMark> marks = new ArrayList<>();
      boolean cambered = cambered();
      for (JointLine j : layout().joints()) {
        if (!j.soffitMark().isZero()) {
          // Turned with its number the arrow points up.
          String rise = cambered ? " → " + format.tape(rise(j)) : "";
          marks.add(mark(j, j.soffitMark(), j.foot().y(), rise));
        }
      }
      marks.sort(Comparator.comparingDouble(RunMark::x));
      soffitMarks = List.copyOf(marks);
    }
    return soffitMarks;
  }

  /** Marks along the top where they differ from those below them, left to right. */
  List<RunMark> topMarks() {
    if (topMarks == null) {
      List<RunMark> marks = new ArrayList<>();
      for (JointLine j : layout().joints()) {
        if (!snapped(j.topMark()).equals(snapped(j.soffitMark()))
            && !j.topMark().isZero()
            && !endJoints().contains(j)) {
          marks.add(mark(j, j.topMark(), j.head().y(), ""));
        }
      }
      marks.sort(Comparator.comparingDouble(RunMark::x));
      topMarks = List.copyOf(marks);
    }
    return topMarks;
  }

  private RunMark mark(JointLine j, Length length, double y, String more) {
    return new RunMark(
        j.side().sign() * length.mm(),
        y,
        format.tape(length) + more,
        j.index() == 0 && keyed(),
        j.inner(),
        j.outer());
  }
}
