package headcourse.stock.fan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds an answer against its pile, and counts its cost anew. */
final class FanChecker {
  private FanChecker() {}

  static void check(FanPile pile, FanPile.Answer answer, String at) {
    Pile.Answer a = answer.stones();
    if (a.heads().isEmpty()) {
      return;
    }
    Set<Integer> used = new HashSet<>();
    Pile.Cost cost = Pile.Cost.NONE;
    for (int h = 0; h < pile.heads().size(); h++) {
      FanPile.Head head = pile.heads().get(h);
      FanPile.Fan fan = head.fans().get(answer.fans().get(h));
      Pile.Chosen c = a.heads().get(h);
      cost = cost.plus(fan.sawn(), 0, 0);
      for (int s = 0; s < 2; s++) {
        List<Pile.Picked> row = s == 0 ? c.left() : c.right();
        PileSide side = fan.side(s);
        assertTrue(head.eachSide() == 0 || row.size() == head.eachSide(), at);
        long foot = side.start();
        for (int i = 1; i <= row.size(); i++) {
          Pile.Picked p = row.get(i - 1);
          boolean end = i == row.size();
          long outer = foot + side.joint() + p.width();
          assertTrue(p.width() >= head.min() && p.width() <= head.max(), at);
          assertTrue(i == 1 || Math.abs(p.width() - row.get(i - 2).width()) <= head.jump(), at);
          assertTrue(
              end
                  ? side.bearingOff(outer) >= 0 && side.endFits(i, foot, outer)
                  : side.jointStands(i, outer) && side.stoneFits(i, foot, outer),
              at);
          assertEquals(head.copies(), p.pieces().size(), at);
          for (int k : p.pieces()) {
            assertTrue(used.add(k), at);
            assertTrue(pile.pieces().get(k).fits().get(h), at);
            long off = pile.pieces().get(k).usable() - side.extent(i, foot, outer, end);
            assertTrue(off >= 0, at);
            cost = cost.plus(off, 0, 0);
          }
          foot = outer;
        }
        cost = cost.plus(0, 0, head.copies() * side.bearingOff(foot));
      }
      for (int i = 0; head.mirror() && i < Math.max(c.left().size(), c.right().size()); i++) {
        long l = i < c.left().size() ? c.left().get(i).width() : 0;
        long r = i < c.right().size() ? c.right().get(i).width() : 0;
        cost = cost.plus(0, head.copies() * Math.abs(l - r), 0);
      }
    }
    assertEquals(cost, a.cost(), at);
    assertTrue(a.bound().compareTo(a.cost()) <= 0, at);
    assertTrue(answer.floor().compareTo(a.cost()) <= 0, at);
  }
}
