package headcourse.bench;

import headcourse.geom.Point;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.Role;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans the screws' slots of a stone: which edges, how high, what shape. The key has them on both
 * sides, other stones of a dry head on the outer side alone, of a mortared one on both; a mortar
 * joint narrower than the screw's shank is no way in, so there too the outer side serves alone.
 */
final class NotchPlanner {
  private final Job job;
  private final SettingOrder order;
  private final SlotChooser slots;

  NotchPlanner(Job job, SettingOrder order) {
    this.job = job;
    this.order = order;
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

  private boolean openJoints() {
    return !job.setting().dry() && job.setting().joint().compareTo(job.fastener().shank()) >= 0;
  }

  private void along(List<Notch> found, StoneFrame frame, Where side, Contact contact, Point mass) {
    Length t = job.stone().thickness();
    Length room = Length.mm(frame.along().dot(frame.lowerRight().minus(frame.lowerLeft())) / 3);
    SlotChooser.Bounds bounds =
        new SlotChooser.Bounds(
            t,
            frame.stone().proud().max(Length.ZERO),
            t.minus(Length.mm(contact.proud())),
            room.max(t));
    slots
        .choose(bounds)
        .ifPresent(
            choice -> {
              for (Length height : heights(frame, side, contact, mass).on(job.grid())) {
                found.add(notch(frame, side, contact, choice, height));
              }
            });
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
        Math.max(contact.length(), frame.stone().height().mm()) > tall.mm());
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
        choice.screw().length(),
        choice.screw().penetration(),
        open,
        contact.covers(height.mm()) ? cover(frame, contact) : "");
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
