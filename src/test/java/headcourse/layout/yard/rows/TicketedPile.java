package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A pile as it was set from, then without some pieces, some first stones cut a little otherwise.
 */
final class TicketedPile {
  private final Random r;
  private final int[] place;

  private TicketedPile(Random r, int pieces) {
    this.r = r;
    this.place = new int[pieces];
  }

  /** What is left to be set, all of it ticketed. */
  static Pile of(Pile pile, Answer plan, Random r) {
    return new TicketedPile(r, pile.pieces().size()).make(pile, plan);
  }

  private Pile make(Pile pile, Answer plan) {
    List<Pile.Head> heads = new ArrayList<>();
    List<Pile.Piece> pieces = new ArrayList<>();
    boolean[] lost = new boolean[place.length];
    for (int i = 0; i < place.length; i++) {
      lost[i] = r.nextInt(6) == 0;
      place[i] = lost[i] ? -1 : pieces.size();
      if (!lost[i]) {
        pieces.add(pile.pieces().get(i));
      }
    }
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head head = pile.heads().get(h);
      Answer.Chosen c = plan.heads().get(h);
      Pile.Way way = head.ways().get(c.way());
      Pile.Ticket key = way.key() < 0 ? null : new Pile.Ticket(way.key(), of(c.key()), 0, false);
      List<Pile.Way> ways = new ArrayList<>();
      ways.add(
          new Pile.Way(row(way.left(), c.left()), row(way.right(), c.right()), way.key(), key));
      heads.add(
          new Pile.Head(head.copies(), head.mirror(), head.min(), head.max(), head.jump(), ways));
    }
    return new Pile(pieces, heads, pile.give(), true);
  }

  private List<Integer> of(List<Integer> pieces) {
    return pieces.stream().map(p -> place[p]).toList();
  }

  private Pile.Row row(Pile.Row row, List<Answer.Picked> plan) {
    boolean cut = plan.size() > 1 && r.nextInt(4) == 0;
    long off = cut ? r.nextInt(3) - 1 : 0;
    RowSide side = row.side();
    List<Long> there = new ArrayList<>();
    List<Pile.Ticket> tickets = new ArrayList<>();
    long foot = side.start();
    for (int i = 0; i < plan.size(); i++) {
      Answer.Picked p = plan.get(i);
      foot += side.joint() + p.width();
      if (cut && i == 0) {
        there.add(p.width() + off);
        long start = foot + off;
        side = side instanceof PlainSide s ? s.from(start) : ((PlainFan) side).from(start);
        continue;
      }
      // In a fan the first beside an edge that is not as drawn is another stone in any case.
      boolean other = side.fanned() && off != 0 && i == 1;
      long stood = other ? Long.MIN_VALUE : foot;
      tickets.add(new Pile.Ticket(p.width(), of(p.pieces()), stood, r.nextInt(12) == 0));
    }
    int each = row.each() == 0 ? 0 : row.each() - there.size();
    tickets.replaceAll(
        t -> t.gone() > 0 ? new Pile.Ticket(t.width(), t.pieces(), t.foot(), false) : t);
    return new Pile.Row(side, false, each, there, tickets);
  }
}
