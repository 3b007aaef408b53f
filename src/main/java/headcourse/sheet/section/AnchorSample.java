package headcourse.sheet.section;

import headcourse.bench.Anchor;
import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Screws that hold alike, with one of them to be drawn.
 *
 * @param piece a stone
 * @param notch a slot of it
 * @param pieces all stones with such a screw, from left to right
 */
public record AnchorSample(Piece piece, Notch notch, List<Piece> pieces) {
  /** Copies the list. */
  public AnchorSample {
    pieces = List.copyOf(pieces);
  }

  /** The kinds of screws of some heads, in the order of their first stones. */
  public static List<AnchorSample> of(List<HeadWork> heads) {
    Map<List<Object>, AnchorSample> found = new LinkedHashMap<>();
    for (HeadWork head : heads) {
      for (Piece p : head.pieces()) {
        for (Notch n : p.notches()) {
          found.merge(key(p, n), new AnchorSample(p, n, List.of(p)), AnchorSample::and);
        }
      }
    }
    return List.copyOf(found.values());
  }

  private AnchorSample and(AnchorSample other) {
    if (pieces.get(pieces.size() - 1).equals(other.piece)) {
      return this;
    }
    List<Piece> all = new ArrayList<>(pieces);
    all.addAll(other.pieces);
    return new AnchorSample(piece, notch, all);
  }

  // What is printed of a screw, and how thick its bed is.
  private static List<Object> key(Piece p, Notch n) {
    Anchor a = n.anchor();
    List<Object> key = new ArrayList<>();
    key.add(a.hold());
    key.add(a.behind().kind());
    key.add(a.behind().name());
    key.add(String.valueOf(a.kind()) + a.holdsIn());
    key.add(String.valueOf(a.screw()));
    key.add(a.penetration());
    key.add(a.screw() == null ? "" : p.stone().proud());
    return key;
  }
}
