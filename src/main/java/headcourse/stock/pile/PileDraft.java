package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A choice by types of piece.
 *
 * @param heads by head and side, outwards: the stones
 * @param cost what it costs
 */
public record PileDraft(List<List<List<Slot>>> heads, Pile.Cost cost) {
  /**
   * A stone.
   *
   * @param width its width
   * @param types the types of its pieces, one for each copy
   */
  public record Slot(long width, int[] types) {}

  /** The same choice with the difference of its sides counted. */
  PileDraft under(Pile pile) {
    long sum = 0;
    for (int h = 0; h < heads.size(); h++) {
      List<Slot> l = heads.get(h).get(0);
      List<Slot> r = heads.get(h).get(1);
      for (int i = 0; pile.heads().get(h).mirror() && i < Math.max(l.size(), r.size()); i++) {
        long a = i < l.size() ? l.get(i).width() : 0;
        long b = i < r.size() ? r.get(i).width() : 0;
        sum += pile.heads().get(h).copies() * Math.abs(a - b);
      }
    }
    return new PileDraft(heads, new Pile.Cost(cost.sawn(), sum, cost.bearing()));
  }

  /** The choice with pieces handed out. */
  public List<Pile.Chosen> chosen(PileTypes types) {
    List<Deque<Integer>> pieces = types.pieces();
    List<Pile.Chosen> out = new ArrayList<>();
    for (List<List<Slot>> head : heads) {
      List<List<Pile.Picked>> sides = new ArrayList<>();
      for (List<Slot> side : head) {
        List<Pile.Picked> picked = new ArrayList<>();
        for (Slot s : side) {
          List<Integer> of = new ArrayList<>();
          for (int t : s.types) {
            of.add(pieces.get(t).remove());
          }
          picked.add(new Pile.Picked(s.width, of));
        }
        sides.add(picked);
      }
      out.add(new Pile.Chosen(sides.get(0), sides.get(1)));
    }
    return out;
  }
}
