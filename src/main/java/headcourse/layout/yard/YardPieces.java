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
  private final List<Lying> all = new ArrayList<>();

  YardPieces(Job job) {
    this.job = job;
    Length clean = job.tools().saw().cleanCut().times(2);
    for (Stock.Item item : job.stock().items()) {
      long usable = job.grid().floor(item.length().minus(clean));
      for (int n = 1; !item.toOrder() && n <= item.count(); n++) {
        all.add(new Lying(item.mark() + "#" + n, item, usable));
      }
    }
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
    return all.stream().filter(p -> !gone.contains(p.id())).toList();
  }

  /**
   * Of these the ones that hold a stone, the shortest first.
   *
   * @param key whether it is the opening's key
   * @param extent how long it is, ticks
   */
  List<Lying> holding(Opening opening, boolean key, long extent, Set<String> gone) {
    return but(gone).stream()
        .filter(p -> p.usable() >= extent && fits(p.item(), opening, key))
        .sorted(Comparator.comparingLong(Lying::usable))
        .toList();
  }

  /** Whether a piece is high, deep and thick enough for an ordinary stone, or for the key. */
  boolean fits(Stock.Item item, Opening opening, boolean key) {
    HeadSpec head = opening.head();
    boolean returned = head.soffit() == HeadSpec.Soffit.RETURNED;
    Length height = head.height();
    Length back = opening.reveal();
    if (key && head.key() == null) {
      return false;
    }
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
