package headcourse.stock;

import headcourse.job.Stock;
import headcourse.stock.cutting.Profile;
import headcourse.units.Length;
import java.util.List;

/**
 * What takes one length of a blank: a part by itself, or soffit strips ripped side by side from it,
 * the longest first.
 *
 * @param parts the parts, from the blank's lower edge up
 * @param gap what the saw takes between two strips
 * @param profile how it lies on the blank
 */
record Crosscut(List<Part> parts, Length gap, Profile profile) {
  /** Copies the list. */
  Crosscut {
    parts = List.copyOf(parts);
  }

  /** A part by itself. */
  static Crosscut of(Part part) {
    return new Crosscut(List.of(part), Length.ZERO, part.profile());
  }

  /** Strips of one depth, the longest first. */
  static Crosscut of(List<Part> strips, Length gap) {
    if (strips.size() == 1) {
      return of(strips.get(0));
    }
    Part longest = strips.get(0);
    double height = face(strips.size(), longest.face(), gap).mm();
    return new Crosscut(strips, gap, Profile.rectangle(longest.profile().extent(), height));
  }

  /** Height of a blank from which so many strips can be ripped. */
  static Length face(int strips, Length depth, Length gap) {
    return depth.times(strips).plus(gap.times(strips - 1));
  }

  /** The first of its parts. */
  Part first() {
    return parts.get(0);
  }

  /** Height that the blank must have. */
  Length face() {
    return face(parts.size(), first().face(), gap);
  }

  /** Whether an item of the yard has all of its measures but maybe the length. */
  boolean goesOn(Stock.Item item) {
    return item.kind() == first().kind()
        && item.face().compareTo(face().plus(item.trim())) >= 0
        && (item.kind() == Stock.Kind.FLAT
            || item.returnLeg().compareTo(first().returnLeg().plus(item.trim())) >= 0)
        && item.thickness().equals(first().thickness());
  }

  /** How far a part lies above the blank's lower edge. */
  Length up(int i) {
    return first().face().plus(gap).times(i);
  }
}
