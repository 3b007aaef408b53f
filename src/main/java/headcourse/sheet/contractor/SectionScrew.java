package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.drawing.Board;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.Role;
import java.util.Optional;

/**
 * The screw that stands for all in a section. It slants along the wall, so only its depth shows.
 *
 * @param slot the slot that it goes through
 * @param stone how thick the stone is, mm
 * @param head how high the head is, mm
 * @param curved whether its soffit is curved
 */
record SectionScrew(Notch slot, double stone, double head, boolean curved) {
  /** A screw of a head, beside the key where there is one; empty where it has none. */
  static Optional<SectionScrew> of(HeadWork work, double stone, double head, boolean curved) {
    return slots(work, true)
        .or(() -> slots(work, false))
        .map(n -> new SectionScrew(n, stone, head, curved));
  }

  private static Optional<Notch> slots(HeadWork work, boolean plain) {
    return work.pieces().stream()
        .filter(p -> !plain || p.stone().role() == Role.STONE)
        .flatMap(p -> p.notches().stream())
        .filter(n -> n.screw() != null)
        .findFirst();
  }

  /** How far in from the face it ends, mm. */
  double tip() {
    return stone - slot.mouth().mm() + slot.screw().mm() * Math.sin(slot.slant().radians());
  }

  /**
   * How high it is, mm: in a curved head the stone at the crown stands for all, and so does its
   * slot's height.
   */
  double height() {
    return curved ? Math.max(stone * 1.5, Math.min(slot.height().mm(), head - 15)) : slot.at().y();
  }

  void draw(Board b, Similarity view) {
    Point from = view.apply(new Point(stone - slot.mouth().mm(), height()));
    b.line(from, view.apply(new Point(tip(), height())), Pen.OUTLINE);
    b.fill(Path.circle(from, 0.9), Shade.BLACK);
  }
}
