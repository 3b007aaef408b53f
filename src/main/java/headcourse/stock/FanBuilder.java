package headcourse.stock;

import headcourse.job.Opening;
import headcourse.stock.FanKeys.Stand;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.fan.FanPile;
import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.List;

/** Says of a choice for heads of which some are fans which piece is which stone. */
final class FanBuilder {
  private final List<Opening> openings;
  private final FanPile pile;
  private final List<FanSettled> heads;

  FanBuilder(List<Opening> openings, FanPile pile, List<FanSettled> heads) {
    this.openings = openings;
    this.pile = pile;
    this.heads = heads;
  }

  KeyedPile pile(FanPile.Answer found) {
    List<KeyedPile.Sides> sides = new ArrayList<>();
    List<Pile.Chosen> chosen = new ArrayList<>();
    List<FromStock.Taken> keys = new ArrayList<>();
    List<FromStock.Taken> taken = new ArrayList<>();
    for (int h = 0; h < openings.size(); h++) {
      Pile.Chosen c = found.stones().heads().get(h);
      Stand s = heads.get(h).stand(found.fans().get(h));
      if (FanSettled.swapped(heads.get(h).key())) {
        c = new Pile.Chosen(c.right(), c.left());
        s = s.mirrored();
      }
      String mark = openings.get(h).mark();
      List<Lying> key = heads.get(h).key().pieces();
      for (int n = 0; n < key.size(); n++) {
        keys.add(new FromStock.Taken(mark + "-K", n + 1, key.get(n).id(), s.key()));
      }
      taken.addAll(taken(mark + "-L", s.left(), c.left()));
      taken.addAll(taken(mark + "-R", s.right(), c.right()));
      sides.add(new KeyedPile.Sides(s.head(), s.left(), s.right()));
      chosen.add(c);
    }
    keys.addAll(taken);
    Pile.Answer a = found.stones();
    return new KeyedPile(
        sides, new Pile.Answer(chosen, a.cost(), a.bound(), a.proved(), a.steps()), keys);
  }

  private List<FromStock.Taken> taken(String mark, FlatSide side, List<Pile.Picked> row) {
    List<FromStock.Taken> out = new ArrayList<>();
    long foot = side.start();
    for (int i = 1; i <= row.size(); i++) {
      Pile.Picked p = row.get(i - 1);
      long outer = foot + side.joint() + p.width();
      long extent = side.extent(i, foot, outer, i == row.size());
      for (int n = 0; n < p.pieces().size(); n++) {
        String id = pile.pieces().get(p.pieces().get(n)).id();
        out.add(new FromStock.Taken(mark + i, n + 1, id, extent));
      }
      foot = outer;
    }
    return out;
  }
}
