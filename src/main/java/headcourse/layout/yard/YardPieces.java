package headcourse.layout.yard;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** The yard as a pile of single pieces. */
final class YardPieces {
  private final Job job;

  YardPieces(Job job) {
    this.job = job;
  }

  /**
   * A piece in the yard.
   *
   * @param id its mark and number
   * @param item its kind
   * @param usable its length less the clean cuts, ticks
   */
  record Lying(String id, Stock.Item item, long usable) {}

  /** The pieces that lie there, but for those that are gone. */
  List<Lying> but(Set<String> gone) {
    Length clean = job.tools().saw().cleanCut().times(2);
    List<Lying> out = new ArrayList<>();
    for (Stock.Item item : job.stock().items()) {
      for (int n = 1; !item.toOrder() && n <= item.count(); n++) {
        String id = item.mark() + "#" + n;
        if (!gone.contains(id)) {
          out.add(new Lying(id, item, job.grid().floor(item.length().minus(clean))));
        }
      }
    }
    return out;
  }

  /** The pieces from which the key of an opening may be cut, the shortest first. */
  List<Lying> forKey(Opening opening, Set<String> gone) {
    return but(gone).stream()
        .filter(p -> fits(p.item(), opening, true))
        .sorted(Comparator.comparingLong(Lying::usable))
        .toList();
  }

  /** Whether a piece is high, deep and thick enough for an ordinary stone, or for the key. */
  boolean fits(Stock.Item item, Opening opening, boolean key) {
    HeadSpec head = opening.head();
    boolean returned = head.soffit() == HeadSpec.Soffit.RETURNED;
    Length height = head.height();
    Length back = opening.reveal();
    if (key) {
      height = height.plus(head.key().rise()).plus(head.key().drop());
      back = back.plus(head.key().proud());
    }
    return item.kind() == (returned ? Stock.Kind.CORNER : Stock.Kind.FLAT)
        && item.thickness().equals(job.stone().thickness())
        && item.face().compareTo(height) >= 0
        && (!returned || item.returnLeg().compareTo(back) >= 0);
  }
}
