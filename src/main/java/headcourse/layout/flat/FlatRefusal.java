package headcourse.layout.flat;

import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.layout.side.EndRange;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Says what a flat head was asked to be that can't be set out, and what collides by itself. */
final class FlatRefusal {
  private final FlatTerms terms;
  private final boolean fanned;
  private final LengthFormat format;
  private final List<Diagnostic> problems = new ArrayList<>();

  private FlatRefusal(FlatHead head) {
    this.terms = head.terms();
    this.fanned = head.fanned();
    this.format = new LengthFormat(terms.job().units(), terms.job().grid());
  }

  static List<Diagnostic> of(FlatHead head) {
    FlatRefusal refusal = new FlatRefusal(head);
    String path = refusal.terms.opening().path() + ".head";
    if (refusal.terms.stones().widths() != null) {
      path += ".stones.widths";
    }
    refusal.problems.add(
        Diagnostic.error(refusal.terms.job().spans().of(path), refusal.headline()));
    refusal.plainCollisions();
    return refusal.problems;
  }

  private String headline() {
    HeadSpec.Stones s = terms.stones();
    HeadSpec.Bearing b = terms.bearing();
    if (s.widths() != null) {
      return terms.opening().mark()
          + ": stones of the widths given, "
          + s.widths().left().size()
          + " on the left and "
          + s.widths().right().size()
          + " on the right, don't end between "
          + size(b.min())
          + " and "
          + size(b.max())
          + " past the jambs, each from "
          + size(s.min())
          + " to "
          + size(s.max())
          + " wide, with every joint at least "
          + size(terms.head().clear())
          + " from a jamb line";
    }
    String each = s.eachSide() == null ? "" : s.eachSide() + " ";
    String widths =
        s.min().equals(s.max())
            ? size(s.min()) + " wide"
            : "from " + size(s.min()) + " to " + size(s.max()) + " wide";
    return terms.opening().mark()
        + ": no "
        + each
        + (s.rhythm() == Rhythm.EVEN ? "equal" : s.rhythm().word())
        + " stones "
        + widths
        + (s.eachSide() == null ? "" : " a side")
        + " end between "
        + size(b.min())
        + " and "
        + size(b.max())
        + " past the jambs with every joint at least "
        + size(terms.head().clear())
        + " from a jamb line";
  }

  /** What collides whatever the stones. */
  private void plainCollisions() {
    HeadSpec head = terms.head();
    if (terms.widths().min() > terms.widths().max()) {
      note(
          terms.opening().path() + ".head.stones.max",
          "no width on the grid lies between "
              + size(head.stones().min())
              + " and "
              + size(head.stones().max()));
    }
    wall(terms.left(), "left");
    wall(terms.right(), "right");
    FlatTerms.SideTerms ample = new FlatTerms.SideTerms(Long.MAX_VALUE, 0, terms.half());
    EndRange range = EndRange.of(terms, ample);
    if (range.first() > range.last()) {
      note(
          terms.opening().path() + ".head.bearing",
          "no end on the grid bears between "
              + size(head.bearing().min())
              + " and "
              + size(head.bearing().max()));
    }
    Length twice = head.clear().times(2);
    boolean springs = fanned && !head.bearing().min().isPositive();
    if (!springs && head.stones().max().compareTo(twice) < 0) {
      note(
          terms.opening().path() + ".head.clear",
          "the stone over a jamb must pass it by "
              + size(head.clear())
              + " both ways, "
              + size(twice)
              + " in all: "
              + size(twice.minus(head.stones().max()))
              + " more than the widest allowed, "
              + size(head.stones().max()));
    }
  }

  private void wall(FlatTerms.SideTerms side, String name) {
    Length least = terms.bearing().min();
    if (side.wall() < least.picometres()) {
      Length wall = new Length(side.wall());
      note(
          terms.opening().path() + ".wall-" + name,
          "the wall on the "
              + name
              + " gives "
              + size(wall)
              + ": "
              + size(least.minus(wall))
              + " less than the least bearing, "
              + size(least));
    }
  }

  private void note(String path, String message) {
    problems.add(
        Diagnostic.note(terms.job().spans().of(path), terms.opening().mark() + ": " + message));
  }

  private String size(Length length) {
    return format.plainWithUnit(length);
  }
}
