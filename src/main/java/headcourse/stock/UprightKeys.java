package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatTerms;
import headcourse.layout.flat.SideCase;
import headcourse.stock.PileReader.Lying;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/** The keys that one upright head may have, and the pieces they take. */
final class UprightKeys {
  private final Job job;
  private final Opening opening;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;

  UprightKeys(Job job, Opening opening, Function<Opening, FlatReading> read) {
    this.job = job;
    this.opening = opening;
    this.read = read;
    this.yard = new PileReader(job);
  }

  /** The keys, those nearest the target first. */
  List<UprightKey> of(List<Lying> lying) {
    if (opening.head().key() == null) {
      return Stream.of(key(opening, 0, false, lying)).filter(Objects::nonNull).toList();
    }
    if (!KeySearch.open(opening)) {
      long width = job.grid().ceil(opening.head().key().bottom().max(opening.head().key().top()));
      return Stream.of(key(opening, width, false, lying)).filter(Objects::nonNull).toList();
    }
    long target = job.grid().nearest(opening.head().stones().target());
    long min = job.grid().ceil(opening.head().stones().min());
    // Both halves of a key are whole ticks.
    return lying.stream()
        .filter(p -> yard.fits(p.item(), opening, true))
        .map(Lying::usable)
        .filter(u -> u / 2 * 2 >= min)
        .distinct()
        .sorted(
            Comparator.comparingLong((Long u) -> Math.abs(u / 2 * 2 - target))
                .thenComparing(u -> u))
        .map(u -> key(KeySearch.keyed(opening, job.grid().ticks(u / 2 * 2)), u, true, lying))
        .filter(Objects::nonNull)
        .toList();
  }

  /**
   * The pieces that a key takes, the shortest that hold it; none where it must be ordered, null
   * where it can't be had.
   */
  List<Lying> pieces(UprightKey key, List<Lying> lying) {
    if (key.width() == 0) {
      return List.of();
    }
    List<Lying> of =
        lying.stream()
            .filter(p -> p.usable() >= key.from() && yard.fits(p.item(), opening, true))
            .sorted(Comparator.comparingLong(Lying::usable))
            .limit(opening.count())
            .toList();
    boolean here = of.size() == opening.count();
    if (key.open()) {
      return here && of.get(0).usable() == key.from() ? of : null;
    }
    // A key that the yard has not got is ordered, and is no matter of the pile.
    return here ? of : List.of();
  }

  private UprightKey key(Opening keyed, long from, boolean open, List<Lying> lying) {
    long width = open ? from / 2 * 2 : from;
    FlatHead head = read.apply(keyed).head();
    if (head == null) {
      return null;
    }
    FlatTerms terms = head.terms();
    List<SideCase> left = head.cases(terms.left(), Double.NaN);
    List<SideCase> right = head.cases(terms.right(), Double.NaN);
    boolean ends =
        left.size() == 1
            && right.size() == 1
            && !left.get(0).ends().isEmpty()
            && !right.get(0).ends().isEmpty();
    if (!ends) {
      return null;
    }
    FlatSide l = side(head, left.get(0));
    FlatSide other = side(head, right.get(0));
    FlatSide r = other.equals(l) ? l : other;
    UprightKey key = new UprightKey(keyed, head, l, r, width, from, open, 0);
    List<Lying> of = pieces(key, lying);
    return of == null ? null : new UprightKey(keyed, head, l, r, width, from, open, sawn(key, of));
  }

  static long sawn(UprightKey key, List<Lying> of) {
    return of.stream().mapToLong(p -> p.usable() - key.width()).sum();
  }

  private static FlatSide side(FlatHead head, SideCase one) {
    FlatTerms terms = head.terms();
    return new FlatSide(one, head.check(one.lines()), terms.joint(), terms.bearing().target());
  }
}
