package headcourse.bench;

import headcourse.bench.Anchor.Hold;
import headcourse.geom.Tolerance;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Fastener;
import headcourse.job.Job;
import headcourse.job.Wall;
import headcourse.units.Length;
import headcourse.units.Units;

/** Finds what a screw holds in: the backing at its height, or sheathing that the job counts on. */
final class AnchorFinder {
  private final Wall wall;
  private final Fastener fastener;
  private final ScrewChooser screws;
  private final Length step;
  private final Length edge;

  AnchorFinder(Job job) {
    this.wall = job.wall();
    this.fastener = job.fastener();
    this.screws = new ScrewChooser(job.fastener());
    boolean inches = job.units() == Units.INCH;
    // Screws are sold in steps of 1/4 in or 5 mm, and keep 3/4 in (20 mm) from the edge of what
    // they hold in; common practice, no source.
    this.step = inches ? Length.inches(0.25) : Length.mm(5);
    this.edge = inches ? Length.inches(0.75) : Length.mm(20);
  }

  /** What a screw passes behind a stone that stands out so far before anything holds it. */
  Length idle(Length proud) {
    return wall.bed().plus(proud).plus(wall.idle());
  }

  /**
   * What a screw through a slot holds in.
   *
   * @param slot the slot
   * @param height of the slot above the soffit line
   * @param proud how far the stone stands out, and so how much thicker its bed is
   */
  Anchor find(Slot slot, Length height, Length proud) {
    Backing behind = wall.behind(height);
    AnchorKind kind = kind(behind);
    Hold why = reason(behind, kind);
    ScrewChooser.Screw s = screws.choose(slot, idle(proud));
    if (why != Hold.HOLDS || s.length() == null) {
      boolean someday = why == Hold.HOLDS;
      return new Anchor(
          behind,
          someday ? Hold.SHORT : why,
          kind,
          null,
          Length.ZERO,
          null,
          s.penetration(),
          someday ? needed(slot, idle(proud)) : null);
    }
    Length deep = behind.kind().holds() ? s.penetration() : s.penetration().min(sheathing());
    boolean inBacking = behind.kind().holds() && deep.compareTo(sheathing()) > 0;
    Backing.Kind in = inBacking ? behind.kind() : Backing.Kind.SHEATHING;
    return new Anchor(
        behind, Hold.HOLDS, kind, s.length(), deep, in, deep, needed(slot, idle(proud)));
  }

  /**
   * What a screw driven up through a soffit piece holds in: what stands behind the head's foot
   * carries the opening, and nothing but mortar lies under it.
   *
   * @param slot the slot
   * @param from height above the soffit line at which what carries begins
   * @param idle mortar between the piece and that
   */
  Anchor overhead(Slot slot, Length from, Length idle) {
    Backing over = wall.behind(from);
    AnchorKind kind = over.kind().holds() ? kind(over) : null;
    Hold why = !over.kind().holds() ? Hold.NOTHING : kind == null ? Hold.OTHER_KIND : Hold.HOLDS;
    ScrewChooser.Screw s = screws.choose(slot, idle);
    Length room = over.to() == null ? s.penetration() : over.to().minus(from);
    Length deep = s.penetration().min(room);
    if (why == Hold.HOLDS && s.length() != null && deep.compareTo(fastener.embedment()) >= 0) {
      return new Anchor(over, why, kind, s.length(), deep, over.kind(), deep, needed(slot, idle));
    }
    boolean tooShort = why == Hold.HOLDS && s.length() == null;
    Hold hold = why != Hold.HOLDS ? why : tooShort ? Hold.SHORT : Hold.THIN;
    Length needed = tooShort ? needed(slot, idle) : null;
    return new Anchor(over, hold, kind, null, Length.ZERO, null, deep, needed);
  }

  /**
   * How well a screw would hold at a height: 0 well within something that suits, 1 near its edge, 2
   * not at all.
   */
  int rank(double heightMm) {
    if (!suits(heightMm)) {
      return 2;
    }
    boolean within = suits(Math.max(0, heightMm - edge.mm())) && suits(heightMm + edge.mm());
    return within ? 0 : 1;
  }

  private boolean suits(double heightMm) {
    Backing behind = wall.behind(Length.mm(heightMm));
    return reason(behind, kind(behind)) == Hold.HOLDS;
  }

  /** The sheathing's thickness where the job counts on it, else nothing. */
  private Length sheathing() {
    return wall.sheathing().holds() ? wall.sheathing().thickness() : Length.ZERO;
  }

  private AnchorKind kind(Backing behind) {
    Backing.Kind into = behind.kind().holds() ? behind.kind() : Backing.Kind.SHEATHING;
    return fastener.kind(into).orElse(null);
  }

  private Hold reason(Backing behind, AnchorKind kind) {
    if (behind.kind().holds()) {
      return kind == null ? Hold.OTHER_KIND : Hold.HOLDS;
    }
    if (sheathing().isZero()) {
      return Hold.NOTHING;
    }
    return sheathing().compareTo(fastener.embedment()) < 0 ? Hold.THIN : Hold.HOLDS;
  }

  private Length needed(Slot slot, Length idle) {
    double reach = idle.plus(fastener.embedment()).mm() / Math.sin(slot.slant().radians());
    double least = slot.chord() + reach;
    return step.times((long) Math.ceil(least / step.mm() - Tolerance.SAME));
  }
}
