package headcourse.stock;

import headcourse.job.Opening;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.List;

/** Says of a choice for upright heads which piece is which stone. */
final class UprightBuilder {
  private final List<Opening> openings;
  private final Pile pile;

  UprightBuilder(List<Opening> openings, Pile pile) {
    this.openings = openings;
    this.pile = pile;
  }

  /**
   * The choice.
   *
   * @param keys the key of each head
   * @param of the pieces of each key
   */
  KeyedPile pile(List<UprightKey> keys, List<List<Lying>> of, Pile.Answer a) {
    List<KeyedPile.Sides> sides = new ArrayList<>();
    List<FromStock.Taken> taken = new ArrayList<>();
    for (int h = 0; h < openings.size(); h++) {
      UprightKey k = keys.get(h);
      sides.add(new KeyedPile.Sides(k.head(), k.left(), k.right()));
      for (int c = 0; c < of.get(h).size(); c++) {
        String id = of.get(h).get(c).id();
        taken.add(new FromStock.Taken(openings.get(h).mark() + "-K", c + 1, id, k.width()));
      }
    }
    for (int h = 0; h < openings.size(); h++) {
      Pile.Chosen c = a.heads().get(h);
      for (int s = 0; s < 2; s++) {
        String mark = openings.get(h).mark() + (s == 0 ? "-L" : "-R");
        row(mark, pile.heads().get(h).side(s), s == 0 ? c.left() : c.right(), taken);
      }
    }
    return new KeyedPile(sides, a, taken);
  }

  private void row(String mark, PileSide side, List<Pile.Picked> row, List<FromStock.Taken> taken) {
    for (int i = 0; i < row.size(); i++) {
      long extent = row.get(i).width() + side.extra(i + 1);
      for (int n = 0; n < row.get(i).pieces().size(); n++) {
        String id = pile.pieces().get(row.get(i).pieces().get(n)).id();
        taken.add(new FromStock.Taken(mark + (i + 1), n + 1, id, extent));
      }
    }
  }
}
