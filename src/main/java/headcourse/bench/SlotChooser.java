package headcourse.bench;

import headcourse.job.Job;
import headcourse.units.Length;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Chooses mouth and run of a slot on the grid. Best, in this order: the job's cover to the face is
 * kept; a screw at hand reaches the embedment behind what holds nothing; the head has a third of
 * the thickness behind it; the shortest such screw; as much stone before the head as behind it
 * (most of the lesser of cover and mouth); the slant nearest 45°; the shallowest plunge. Slants are
 * 30° to 60°: flatter ones slip along the wall, steeper ones hold too thin a corner (common
 * practice, no source).
 */
final class SlotChooser {
  private static final double FLATTEST = Math.tan(Math.toRadians(30));
  private static final double STEEPEST = Math.tan(Math.toRadians(60));

  /** No grinder is set finer, mm: on a finer grid only whole multiples of its step are tried. */
  private static final double FINEST = 0.25;

  private final Job job;
  private final long step;
  private final ScrewChooser screws;
  private final Map<Bounds, Optional<Choice>> known = new HashMap<>();

  SlotChooser(Job job) {
    this.job = job;
    this.screws = new ScrewChooser(job.fastener());
    long ticks = 1;
    while (ticks * job.grid().tick().mm() < FINEST) {
      ticks *= 2;
    }
    this.step = ticks;
  }

  /** A slot, its screw, and the stone left before it. */
  record Choice(Slot slot, ScrewChooser.Screw screw, Length cover) {
    private double balance() {
      return Math.min(cover.mm(), slot.mouth().mm());
    }

    private boolean shallow(Bounds bounds) {
      return slot.mouth().times(3).compareTo(bounds.thickness()) < 0;
    }

    private double offHalfRight() {
      return Math.abs(slot.slant().radians() - Math.PI / 4);
    }
  }

  /**
   * What an edge sets.
   *
   * @param thickness of the stone
   * @param idle what a screw passes behind the stone before anything holds it
   * @param mouthMost farthest from the back that the neighbour still covers the mouth
   * @param runMost longest run that leaves the stone sound
   */
  record Bounds(Length thickness, Length idle, Length mouthMost, Length runMost) {
    // Written out, as a record's own is put together at run time, which costs a short run dearly.
    @Override
    public boolean equals(Object other) {
      return other instanceof Bounds b
          && thickness.equals(b.thickness)
          && idle.equals(b.idle)
          && mouthMost.equals(b.mouthMost)
          && runMost.equals(b.runMost);
    }

    @Override
    public int hashCode() {
      return Objects.hash(thickness, idle, mouthMost, runMost);
    }
  }

  /**
   * The best slot, or none where the stone is thinner than two steps of the grid, or of the
   * grinder.
   */
  Optional<Choice> choose(Bounds bounds) {
    Optional<Choice> choice = known.get(bounds);
    if (choice == null) {
      choice = search(bounds);
      known.put(bounds, choice);
    }
    return choice;
  }

  private Optional<Choice> search(Bounds bounds) {
    Choice found = null;
    long mouths = job.grid().floor(bounds.mouthMost().min(bounds.thickness()));
    long runs = job.grid().floor(bounds.runMost());
    for (long a = step; a <= mouths; a += step) {
      for (long e = step; e <= runs; e += step) {
        if (a < e * FLATTEST || a > e * STEEPEST) {
          continue;
        }
        Choice c = made(a, e, bounds);
        if (c != null && (found == null || better(c, found, bounds) < 0)) {
          found = c;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  /** Below nought where a choice is the better one. */
  private int better(Choice a, Choice b, Bounds bounds) {
    Length wanted = job.fastener().cover();
    int order = Boolean.compare(a.cover().compareTo(wanted) < 0, b.cover().compareTo(wanted) < 0);
    if (order == 0) {
      order = Boolean.compare(a.screw().length() == null, b.screw().length() == null);
    }
    if (order == 0) {
      order = Boolean.compare(a.shallow(bounds), b.shallow(bounds));
    }
    if (order == 0) {
      order = Integer.compare(a.screw().rank(), b.screw().rank());
    }
    if (order == 0) {
      order = shortfall(a).max(Length.ZERO).compareTo(shortfall(b).max(Length.ZERO));
    }
    if (order == 0) {
      order = Double.compare(-a.balance(), -b.balance());
    }
    if (order == 0) {
      order = Double.compare(a.offHalfRight(), b.offHalfRight());
    }
    return order == 0 ? Double.compare(a.slot().plunge(), b.slot().plunge()) : order;
  }

  private Choice made(long a, long e, Bounds bounds) {
    double radius = job.tools().grinder().blade().mm() / 2;
    Slot slot = new Slot(job.grid().ticks(a), job.grid().ticks(e), radius);
    if (slot.chord() >= radius || !bounds.thickness().isPositive()) {
      return null;
    }
    Length cover = bounds.thickness().minus(Length.mm(slot.highest()));
    return cover.isPositive() ? new Choice(slot, screws.choose(slot, bounds.idle()), cover) : null;
  }

  private Length shortfall(Choice c) {
    return job.fastener().embedment().minus(c.screw().penetration());
  }
}
