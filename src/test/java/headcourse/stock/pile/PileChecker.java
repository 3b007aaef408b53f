package headcourse.stock.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds an answer against its pile, and counts its cost anew. */
public final class PileChecker {
  private PileChecker() {}

  /** Checks every rule. */
  public static void check(Pile pile, Pile.Answer a) {
    if (a.heads().isEmpty()) {
      return;
    }
    Set<Integer> used = new HashSet<>();
    long sawn = 0;
    long imbalance = 0;
    long bearing = 0;
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head head = pile.heads().get(h);
      Pile.Chosen c = a.heads().get(h);
      for (int s = 0; s < 2; s++) {
        List<Pile.Picked> row = s == 0 ? c.left() : c.right();
        PileSide side = head.side(s);
        assertTrue(head.eachSide() == 0 || row.size() == head.eachSide());
        long foot = side.start();
        for (int i = 0; i < row.size(); i++) {
          Pile.Picked p = row.get(i);
          assertTrue(p.width() >= head.min() && p.width() <= head.max());
          assertEquals(head.copies(), p.pieces().size());
          for (int k : p.pieces()) {
            assertTrue(used.add(k));
            assertTrue(pile.pieces().get(k).fits().get(h));
            long off = pile.pieces().get(k).usable() - p.width() - side.extra(i + 1);
            assertTrue(off >= 0);
            sawn += off;
          }
          assertTrue(i == 0 || Math.abs(p.width() - row.get(i - 1).width()) <= head.jump());
          long outer = foot + side.joint() + p.width();
          if (i < row.size() - 1) {
            assertTrue(side.jointStands(i + 1, outer) && side.stoneFits(i + 1, foot, outer));
          } else {
            assertTrue(side.endFits(i + 1, foot, outer));
          }
          foot = outer;
        }
        assertTrue(side.bearingOff(foot) >= 0);
        bearing += head.copies() * side.bearingOff(foot);
      }
      for (int i = 0; head.mirror() && i < Math.max(c.left().size(), c.right().size()); i++) {
        long l = i < c.left().size() ? c.left().get(i).width() : 0;
        long r = i < c.right().size() ? c.right().get(i).width() : 0;
        imbalance += head.copies() * Math.abs(l - r);
      }
    }
    assertEquals(new Pile.Cost(sawn, imbalance, bearing), a.cost());
    assertTrue(a.bound().compareTo(a.cost()) <= 0);
  }
}
