package headcourse.stock;

import headcourse.job.Opening;
import headcourse.stock.PileReader.Lying;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The keys of several upright heads, each of which leaves fewer pieces to the next. */
final class KeysTogether {
  /** In how many places the keys of a head may be taken up. */
  static final int PARTS = 4;

  private final List<Opening> openings;
  private final List<UprightKeys> keys;
  private final PileReader yard;

  KeysTogether(List<Opening> openings, List<UprightKeys> keys, PileReader yard) {
    this.openings = openings;
    this.keys = keys;
    this.yard = yard;
  }

  /** By head: the keys it may have. */
  List<List<UprightKey>> all(Set<String> gone) {
    Set<String> less = new LinkedHashSet<>(gone);
    List<List<UprightKey>> out = new ArrayList<>(Collections.nCopies(keys.size(), List.of()));
    for (int h : KeySearch.order(openings)) {
      out.set(h, keys.get(h).of(yard.pieces(less)));
      if (!KeySearch.open(openings.get(h)) && !out.get(h).isEmpty()) {
        List<Lying> of = keys.get(h).pieces(out.get(h).get(0), yard.pieces(less));
        of.forEach(p -> less.add(p.id()));
      }
    }
    return out;
  }

  /** The pieces that keys take; null where they can't be had together. */
  List<List<Lying>> pieces(List<UprightKey> of, Set<String> gone) {
    Set<String> less = new LinkedHashSet<>(gone);
    List<List<Lying>> out = new ArrayList<>(Collections.nCopies(of.size(), List.of()));
    for (int h : KeySearch.order(openings)) {
      List<Lying> mine = keys.get(h).pieces(of.get(h), yard.pieces(less));
      if (mine == null) {
        return null;
      }
      mine.forEach(p -> less.add(p.id()));
      out.set(h, mine);
    }
    return out;
  }

  /** Keys that can be had together, the nearest first or as far on as asked for; or null. */
  List<UprightKey> nearest(List<List<UprightKey>> all, int part, Set<String> gone) {
    Set<String> less = new LinkedHashSet<>(gone);
    List<UprightKey> out = new ArrayList<>(Collections.nCopies(all.size(), null));
    for (int h : KeySearch.order(openings)) {
      List<UprightKey> of = all.get(h);
      for (int i = part * (of.size() - 1) / PARTS; i < of.size() && out.get(h) == null; i++) {
        List<Lying> mine = keys.get(h).pieces(of.get(i), yard.pieces(less));
        if (mine != null) {
          mine.forEach(p -> less.add(p.id()));
          out.set(h, of.get(i));
        }
      }
      if (out.get(h) == null) {
        return null;
      }
    }
    return out;
  }
}
