package headcourse.bench;

import headcourse.layout.HeadLayout;
import headcourse.statics.AsSolid;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * A head ready for bench and wall.
 *
 * @param layout the head set out
 * @param pieces from left to right
 * @param stackUps left and right
 * @param bed the mortar between the returns and the rough head
 * @param lands how often it lands when it is built in numbers; null where nobody asked
 * @param asSolid whether it would stand if it were solid; null where nobody asked
 */
public record HeadWork(
    HeadLayout layout,
    List<Piece> pieces,
    List<StackUp> stackUps,
    SoffitBed bed,
    Lands lands,
    AsSolid asSolid) {
  /** Copies the lists. */
  public HeadWork {
    pieces = List.copyOf(pieces);
    stackUps = List.copyOf(stackUps);
  }

  /** A head whose bed nobody asks about. */
  public HeadWork(HeadLayout layout, List<Piece> pieces, List<StackUp> stackUps) {
    this(layout, pieces, stackUps, SoffitBed.UNKNOWN, null, null);
  }

  /** This head, built in numbers. */
  HeadWork lands(Lands found) {
    return new HeadWork(layout, pieces, stackUps, bed, found, asSolid);
  }

  /** This head, read as if it were solid. */
  public HeadWork asSolid(AsSolid found) {
    return new HeadWork(layout, pieces, stackUps, bed, lands, found);
  }

  /** The piece of a stone by its mark in the opening. */
  public Piece piece(String stoneMark) {
    for (Piece p : pieces) {
      if (p.stone().mark().equals(stoneMark)) {
        return p;
      }
    }
    throw new NoSuchElementException("no stone " + stoneMark);
  }

  /** The pieces in setting order. */
  public List<Piece> inSettingOrder() {
    return pieces.stream().sorted(java.util.Comparator.comparingInt(Piece::setOrder)).toList();
  }
}
