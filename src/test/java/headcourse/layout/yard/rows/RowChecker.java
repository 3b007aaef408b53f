package headcourse.layout.yard.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds an answer against its pile, and counts its cost anew. */
final class RowChecker {
  private RowChecker() {}

  /** Checks every rule. */
  static void check(Pile pile, Answer a, String at) {
    if (!a.found()) {
      assertTrue(a.heads().isEmpty(), at);
      return;
    }
    Set<Integer> used = new HashSet<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head head = pile.heads().get(h);
      Answer.Chosen c = a.heads().get(h);
      Pile.Way way = head.ways().get(c.way());
      assertEquals(way.key() < 0 ? 0 : head.copies(), c.key().size(), at);
      for (int k : c.key()) {
        assertTrue(used.add(k) && pile.pieces().get(k).fits(h, true), at);
        assertTrue(pile.pieces().get(k).usable() >= way.key(), at);
      }
      for (int s = 0; s < 2; s++) {
        Pile.Row row = way.row(s);
        List<Answer.Picked> of = c.side(s);
        assertTrue(row.each() == 0 || of.size() == row.each() || row.mayEnd(), at);
        assertTrue(!of.isEmpty() || row.mayEnd(), at);
        RowSide side = row.side();
        long foot = of.isEmpty() ? 0 : side.start();
        for (int i = 1; i <= of.size(); i++) {
          Answer.Picked p = of.get(i - 1);
          boolean last = i == of.size();
          long outer = foot + side.joint() + p.width();
          assertTrue(p.width() >= head.min() && p.width() <= head.max(), at);
          assertTrue(i == 1 || Math.abs(p.width() - of.get(i - 2).width()) <= head.jump(), at);
          assertTrue(side.stands(i, foot, outer, last), at);
          assertTrue(!last || side.bearingOff(outer) >= 0, at);
          assertEquals(head.copies(), p.pieces().size(), at);
          for (int k : p.pieces()) {
            assertTrue(used.add(k) && pile.pieces().get(k).fits(h, false), at);
            assertTrue(pile.pieces().get(k).usable() >= side.extent(i, foot, outer, last), at);
          }
          foot = outer;
        }
      }
    }
    assertEquals(cost(pile, a.heads()), a.cost(), at);
    assertTrue(a.least() <= a.cost().sawn(), at);
  }

  /** What a choice costs. */
  static Cost cost(Pile pile, List<Answer.Chosen> heads) {
    Tally t = new Tally();
    for (int h = 0; h < heads.size(); h++) {
      Pile.Head head = pile.heads().get(h);
      Answer.Chosen c = heads.get(h);
      Pile.Way way = head.ways().get(c.way());
      for (int n = 0; n < c.key().size(); n++) {
        t.sawn += pile.pieces().get(c.key().get(n)).usable() - way.key();
        boolean kept = way.ticket() != null && way.ticket().pieces().get(n).equals(c.key().get(n));
        t.changes += kept ? 0 : 1;
      }
      List<List<Long>> widths = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        widths.add(side(pile, head, way.row(s), c.side(s), t));
      }
      for (int i = 0; i < Math.max(widths.get(0).size(), widths.get(1).size()); i++) {
        long l = i < widths.get(0).size() ? widths.get(0).get(i) : 0;
        long r = i < widths.get(1).size() ? widths.get(1).get(i) : 0;
        t.imbalance += head.mirror() ? head.copies() * Math.abs(l - r) : 0;
      }
    }
    int changes = pile.ticketed() ? t.changes : 0;
    int moved = pile.ticketed() ? t.moved : 0;
    return new Cost(changes, moved, t.shortfall, t.sawn, t.imbalance, t.bearing);
  }

  private static final class Tally {
    private int changes;
    private int moved;
    private long shortfall;
    private long sawn;
    private long imbalance;
    private long bearing;
  }

  private static List<Long> side(
      Pile pile, Pile.Head head, Pile.Row row, List<Answer.Picked> of, Tally t) {
    List<Long> widths = new ArrayList<>(row.there());
    RowSide side = row.side();
    long foot = side == null ? 0 : side.start();
    for (int i = 1; i <= of.size(); i++) {
      Answer.Picked p = of.get(i - 1);
      boolean last = i == of.size();
      long outer = foot + side.joint() + p.width();
      Pile.Ticket was = i <= row.tickets().size() ? row.tickets().get(i - 1) : null;
      boolean same = was != null && was.width() == p.width();
      boolean there = same && was.foot() == outer;
      if (side.fanned()) {
        same = there && last == (i == row.tickets().size());
      }
      t.moved += was != null && !there ? head.copies() : 0;
      for (int n = 0; n < head.copies(); n++) {
        t.changes += same && was.pieces().get(n).equals(p.pieces().get(n)) ? 0 : 1;
        t.sawn += pile.pieces().get(p.pieces().get(n)).usable() - side.extent(i, foot, outer, last);
      }
      t.shortfall = Math.max(t.shortfall, side.shortfall(i, outer, last));
      widths.add(p.width());
      foot = outer;
    }
    t.changes += Math.max(0, row.tickets().size() - of.size()) * head.copies();
    t.bearing += of.isEmpty() ? 0 : head.copies() * side.bearingOff(foot);
    return widths;
  }
}
