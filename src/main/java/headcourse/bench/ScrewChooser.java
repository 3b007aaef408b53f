package headcourse.bench;

import headcourse.job.Fastener;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Chooses the shortest screw that bites deep enough behind what holds nothing. */
final class ScrewChooser {
  private final Fastener fastener;
  private final List<Length> lengths;

  ScrewChooser(Fastener fastener) {
    this.fastener = fastener;
    this.lengths = new ArrayList<>(fastener.lengths());
    lengths.sort(null);
  }

  /**
   * A choice.
   *
   * @param length the screw, or null where none at hand is long enough
   * @param rank its place among the lengths at hand, from 0; their number where there is none
   * @param penetration what it reaches; of the longest at hand where none is long enough
   */
  record Screw(Length length, int rank, Length penetration) {}

  /**
   * With its head at the mouth a screw of length L reaches {@code (L − c)·sin α − idle} into what
   * holds, square to the wall.
   *
   * @param slot the slot
   * @param idle what lies between the stone's back and what holds the screw
   */
  Screw choose(Slot slot, Length idle) {
    Length reach = idle.negated();
    double chord = slot.chord();
    double sine = Math.sin(slot.slant().radians());
    for (int i = 0; i < lengths.size(); i++) {
      reach = Length.mm((lengths.get(i).mm() - chord) * sine - idle.mm());
      if (reach.compareTo(fastener.embedment()) >= 0) {
        return new Screw(lengths.get(i), i, reach);
      }
    }
    return new Screw(null, lengths.size(), reach);
  }
}
