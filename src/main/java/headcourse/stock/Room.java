package headcourse.stock;

import headcourse.job.Stock;
import headcourse.job.Tools;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.Used.Span;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A length of a blank on which nothing is planned and from which nothing was cut.
 *
 * @param blank the blank with what is planned on it
 * @param item its kind
 * @param at where the first stone may begin, from the blank's left end
 * @param usable how much of it stones may take
 */
record Room(CutBlank blank, Stock.Item item, Length at, Length usable) {
  /** The rooms of a blank, between what was cut from it and what is planned on it, and beside. */
  static List<Room> of(CutBlank blank, Stock.Item item, List<Span> used, Tools.Saw saw) {
    List<Span> taken = new ArrayList<>(used);
    for (Cut c : blank.cuts()) {
      taken.add(new Span(c.at(), c.extent()));
    }
    taken.sort(Comparator.comparing(Span::at));
    // A kerf on the greatest slant of 45°, rounded up.
    Length kerf = saw.kerf().plus(saw.kerf().half());
    List<Room> rooms = new ArrayList<>();
    // A sawn end is true; the blank's own ends are not.
    Length from = saw.cleanCut();
    for (Span s : taken) {
      add(rooms, blank, item, from, s.at().minus(kerf));
      from = from.max(s.end().plus(kerf));
    }
    add(rooms, blank, item, from, blank.length().minus(saw.cleanCut()));
    return rooms;
  }

  private static void add(
      List<Room> rooms, CutBlank blank, Stock.Item item, Length from, Length to) {
    if (to.compareTo(from) > 0) {
      rooms.add(new Room(blank, item, from, to.minus(from)));
    }
  }
}
