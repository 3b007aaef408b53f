package headcourse.stock;

import headcourse.stock.ChangeProblem.Found;
import headcourse.stock.ChangeProblem.Price;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.List;

/** Writes down a choice that was found, with the pieces handed out. */
final class ChangeAnswer {
  private final ChangeProblem problem;
  private final List<List<List<Pile.Picked>>> rows;
  private final List<int[]> keys;
  private final List<int[]> slots;
  private final int[] of;

  /**
   * @param rows by head and side the widths
   * @param keys by head the pieces of its key, −1 where another was asked for
   * @param slots what asked for another piece: number of its key or side, of the stone, and copy
   * @param of by slot its piece
   */
  ChangeAnswer(
      ChangeProblem problem,
      List<List<List<Pile.Picked>>> rows,
      List<int[]> keys,
      List<int[]> slots,
      int[] of) {
    this.problem = problem;
    this.rows = rows;
    this.keys = keys;
    this.slots = slots;
    this.of = of;
  }

  Found found(Price cost) {
    List<int[]> ks = new ArrayList<>();
    List<List<List<Pile.Picked>>> all = new ArrayList<>();
    int changes = 0;
    for (int h = 0; h < problem.heads().size(); h++) {
      Rows head = problem.heads().get(h);
      int[] key = null;
      if (head.key() != null) {
        key = pieces(3 * h, 0, keys.get(h));
        changes += changes(head.key(), head.key().width(), key);
      }
      ks.add(key);
      List<List<Pile.Picked>> sides = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Stone> before = head.row(s).before();
        List<Pile.Picked> row = new ArrayList<>();
        PileSide side = head.row(s).side();
        long foot = side == null ? 0 : side.start();
        int set = rows.get(h).get(s).size();
        for (int i = 1; i <= set; i++) {
          Stone planned = i <= before.size() ? before.get(i - 1) : null;
          long w = rows.get(h).get(s).get(i - 1).width();
          int[] was = planned == null ? new int[head.copies()] : planned.pieces();
          int[] p = pieces(3 * h + 1 + s, i, was);
          row.add(new Pile.Picked(w, java.util.Arrays.stream(p).boxed().toList()));
          boolean stays =
              planned != null
                  && head.row(s).stays(i, foot + w)
                  && (!side.fanned() || (i == set) == (i == before.size()));
          changes += stays ? changes(planned, w, p) : head.copies();
          foot += side.joint() + w;
        }
        changes += head.copies() * Math.max(0, before.size() - row.size());
        sides.add(row);
      }
      all.add(sides);
    }
    return new Found(ks, all, problem.free() ? 0 : changes, cost);
  }

  private static int changes(Stone planned, long width, int[] pieces) {
    int n = 0;
    for (int c = 0; c < pieces.length; c++) {
      n += width != planned.width() || pieces[c] != planned.pieces()[c] ? 1 : 0;
    }
    return n;
  }

  private int[] pieces(int at, int index, int[] was) {
    int[] out = was.clone();
    for (int k = 0; k < of.length; k++) {
      int[] slot = slots.get(k);
      if (slot[0] == at && slot[1] == index) {
        out[slot[2]] = of[k];
      }
    }
    return out;
  }
}
