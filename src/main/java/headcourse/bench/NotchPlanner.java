package headcourse.bench;

import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans the screws' slots of a stone: which edges, how high, what shape. The key has them on both
 * sides, other stones of a dry head on the outer side alone, of a mortared one on both; a mortar
 * joint narrower than the screw's shank is no way in, so there too the outer side serves alone. A
 * stone longer than 16 in (400 mm) any way takes two to an edge (a maker's sheet for thin veneer).
 */
final class NotchPlanner {
  private final Job job;
  private final SettingOrder order;
  private final AnchorFinder anchors;
  private final SlotChooser slots;

  NotchPlanner(Job job, SettingOrder order) {
    this.job = job;
    this.order = order;
    this.anchors = new AnchorFinder(job);
    this.slots = new SlotChooser(job);
  }

  /** The slots of a stone, left edge first. */
  List<Notch> plan(StoneFrame frame, Contact left, Contact right, Solid solid) {
    List<Notch> found = new ArrayList<>();
    boolean both = frame.stone().role() == Role.KEY || openJoints();
    if (both || frame.outer() == Where.LEFT) {
      along(found, frame, Where.LEFT, left, solid.centre());
    }
    if (both || frame.outer() == Where.RIGHT) {
      along(found, frame, Where.RIGHT, right, solid.centre());
    }
    return found;
  }

  boolean openJoints() {
    return !job.setting().dry() && job.setting().joint().compareTo(job.fastener().shank()) >= 0;
  }

  private void along(List<Notch> found, StoneFrame frame, Where side, Contact contact, Point mass) {
    Optional<SlotChooser.Choice> choice = slot(frame, contact);
    if (choice.isPresent()) {
      for (Length height : heights(frame, side, contact, mass).on(job.grid())) {
        found.add(notch(frame, side, contact, choice.get(), height));
      }
    }
  }

  /** A slot that the neighbour covers; where no screw reaches from there, one that shows. */
  private Optional<SlotChooser.Choice> slot(StoneFrame frame, Contact contact) {
    Length t = job.stone().thickness();
    Length idle = anchors.idle(proud(frame));
    // A run of a third of the width leaves a sound middle.
    Length run = Length.mm(frame.lowerRight().distance(frame.lowerLeft()) / 3).max(t);
    Optional<SlotChooser.Choice> hidden =
        slots.choose(new SlotChooser.Bounds(t, idle, covered(contact), run));
    if (hidden.isPresent() && hidden.get().screw().length() != null) {
      return hidden;
    }
    Optional<SlotChooser.Choice> open = slots.choose(new SlotChooser.Bounds(t, idle, t, run));
    boolean better = open.isPresent() && open.get().screw().length() != null;
    return better || hidden.isEmpty() ? open : hidden;
  }

  private static Length proud(StoneFrame frame) {
    return frame.stone().proud().max(Length.ZERO);
  }

  /** How far from the stone's back the neighbour covers its edge. */
  private Length covered(Contact contact) {
    return job.stone().thickness().minus(Length.mm(contact.proud()));
  }

  private NotchHeights heights(StoneFrame frame, Where side, Contact contact, Point mass) {
    boolean inches = job.units() == Units.INCH;
    Length clear =
        (inches ? Length.inches(2) : Length.mm(50)).max(job.stone().thickness().times(2));
    Length tall = inches ? Length.inches(16) : Length.mm(400);
    return new NotchHeights(
        contact,
        mass.minus(frame.low(side)).dot(frame.upward(side)),
        clear.mm(),
        job.fastener().head().mm() / 2,
        h -> anchors.rank(frame.low(side).y() + frame.upward(side).y() * h),
        longest(frame, contact) > tall.mm() + Tolerance.SAME);
  }

  private static double longest(StoneFrame frame, Contact contact) {
    PlacedStone s = frame.stone();
    double across = s.bottom().max(s.top()).max(s.height()).mm();
    return Math.max(contact.length(), across);
  }

  private Notch notch(
      StoneFrame frame, Where side, Contact contact, SlotChooser.Choice choice, Length height) {
    Point at = frame.low(side).plus(frame.upward(side).times(height.mm()));
    Slot slot = choice.slot();
    boolean open =
        contact.neighbour() == null
            || order.before(frame.stone(), contact.neighbour())
            || openJoints();
    return new Notch(
        frame.name(side),
        at,
        height,
        slot.mouth(),
        slot.run(),
        slot.slant(),
        choice.cover(),
        Length.mm(slot.plunge()),
        anchors.find(slot, Length.mm(at.y()), proud(frame)),
        open,
        contact.covers(height.mm()) && slot.mouth().compareTo(covered(contact)) <= 0
            ? cover(frame, contact)
            : "");
  }

  /** What closes the slot for good. */
  private String cover(StoneFrame frame, Contact contact) {
    if (contact.neighbour() == null) {
      return "wall";
    }
    if (!job.setting().dry()) {
      return "joint";
    }
    return order.before(frame.stone(), contact.neighbour()) ? contact.neighbour().mark() : "";
  }
}
