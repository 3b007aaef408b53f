package headcourse.layout.side;

import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * How many stones of a head fit no blank, by what the job says of its yard. A stone fits none where
 * every blank that is thick, high and deep enough for it is too short; where no blank is, no width
 * would help, so it doesn't count. Besides, blanks that lie there give only so many stones: they
 * are laid side by side with a kerf between them, each as wide as the mean. Both sides are taken to
 * be alike, and the openings of a job are counted one by one.
 */
final class Blanks {
  private final FlatTerms terms;
  private final FlatGeometry geometry;
  private final Lines lines;
  private final List<Stock.Item> corners;
  private final List<Stock.Item> flats;
  private final long corner;
  private final long flat;
  private final long stones;
  private StoneExtents extents;

  Blanks(FlatTerms terms, FlatGeometry geometry, Lines lines) {
    this.terms = terms;
    this.geometry = geometry;
    this.lines = lines;
    this.stones = 2L * terms.opening().count();
    Length height = terms.length(terms.height());
    if (!matter()) {
      this.corners = List.of();
      this.flats = List.of();
      this.corner = Long.MAX_VALUE;
      this.flat = Long.MAX_VALUE;
      return;
    }
    List<Stock.Item> high =
        terms.job().stock().items().stream()
            .filter(i -> i.thickness().equals(terms.job().stone().thickness()))
            .filter(i -> i.face().compareTo(height) >= 0)
            .toList();
    Length reveal = terms.opening().reveal();
    this.corners =
        high.stream()
            .filter(i -> i.kind() == Stock.Kind.CORNER && i.returnLeg().compareTo(reveal) >= 0)
            .toList();
    // What has no return comes from a flat, or from a corner where no flat does for it.
    this.flats = high;
    this.corner = longest(corners);
    this.flat = longest(flats);
  }

  private long longest(List<Stock.Item> items) {
    return items.stream().mapToLong(this::usable).max().orElse(Long.MAX_VALUE);
  }

  private long usable(Stock.Item item) {
    Length clean = terms.job().tools().saw().cleanCut().times(2);
    return terms.job().grid().floor(item.length().minus(clean));
  }

  private boolean returned() {
    return terms.head().soffit() == HeadSpec.Soffit.RETURNED;
  }

  /** Whether any stone may fit none. */
  boolean matter() {
    return !terms.job().stock().items().isEmpty();
  }

  /** All that fit none, when so many of a side are too long and so many lack a blank. */
  long unfit(long tooLong, long lacking) {
    return Math.max(tooLong * stones, lacking);
  }

  /** The most of one side that may be too long where no more than so many fit none. */
  int mostTooLong(long unfit) {
    return (int) Math.min(Integer.MAX_VALUE, unfit / stones);
  }

  /** Whether stone {@code index} between two joints is too long for every blank. */
  boolean tooLong(int index, long inner, long outer) {
    if (!matter()) {
      return false;
    }
    double s = lines.soffit(index, outer);
    double t = lines.top(index, outer);
    long extent =
        geometry.fanned()
            ? extents().between(index, inner, outer)
            : upright(index, inner, Math.max(s, t) - SideCheck.slant(terms, s, t));
    return extent > usable(index, inner);
  }

  /** Whether stone {@code index} between a joint and an end is. */
  boolean tooLong(int index, long inner, End end) {
    if (!matter()) {
      return false;
    }
    long extent =
        geometry.fanned()
            ? extents().toEnd(index, inner, end)
            : upright(index, inner, Math.max(end.soffit(), end.top()));
    return extent > usable(index, inner);
  }

  private StoneExtents extents() {
    if (extents == null) {
      extents = new StoneExtents(terms, geometry, lines, terms.own());
    }
    return extents;
  }

  private long upright(int index, long inner, double outer) {
    double s = index == 1 ? lines.trueSoffit() : lines.soffit(index - 1, inner);
    double t = index == 1 ? lines.trueTop() : lines.top(index - 1, inner);
    double from = Math.min(s, t) + terms.joint() + SideCheck.slant(terms, s, t);
    return (long) Math.ceil(outer - from - 1e-6);
  }

  private long usable(int index, long inner) {
    return returned() && !pastSeat(index, inner) ? corner : flat;
  }

  /** Whether a stone begins past the seat on the jamb, so that it has no return. */
  boolean pastSeat(int index, long inner) {
    double s = index == 1 ? lines.trueSoffit() : lines.soffit(index - 1, inner);
    double seat = terms.far() + terms.head().seat().picometres();
    return (s + terms.joint()) * terms.tick() >= seat - 1;
  }

  /** Width of each of so many stones if all were alike, ticks. */
  private double width(int count, End end) {
    long run = end.soffit() - lines.startSoffit() + end.top() - lines.startTop();
    return (double) run / 2 / count - terms.joint();
  }

  /** What the ends of a row of leaning stones leave of a blank, ticks. */
  private double taken(End end) {
    double lean = Math.abs(end.top() - end.soffit() + lines.startTop() - lines.startSoffit()) / 2.0;
    return geometry.fanned() ? lean : 0;
  }

  private double kerf() {
    return (double) terms.job().tools().saw().kerf().picometres() / terms.tick();
  }

  /**
   * How many blanks so many stones a side are cut from, those that give most first; a stone that
   * none is left for counts as one. A key is cut first, and leaves so many the fewer.
   */
  long used(int count, End end) {
    double width = width(count, end);
    List<Stock.Item> from = new ArrayList<>(returned() ? corners : flats);
    ToLongFunction<Stock.Item> gives = i -> row(usable(i) - taken(end), width, kerf());
    from.sort(Comparator.comparingLong(gives).reversed());
    int[] left = new int[from.size()];
    for (int i = 0; i < left.length; i++) {
      Stock.Item item = from.get(i);
      left[i] = item.toOrder() && item.count() == 0 ? Integer.MAX_VALUE / 2 : item.count();
    }
    int[] there = left.clone();
    long open = count * stones;
    for (int k = 0; hasKey() && k < terms.opening().count(); k++) {
      open += keyTakes(from, left, width, kerf(), taken(end));
    }
    long used = 0;
    for (int i = 0; i < there.length; i++) {
      long each = gives.applyAsLong(from.get(i));
      long n = each == 0 ? 0 : Math.min(there[i], (open + each - 1) / each);
      used += n;
      open = Math.max(0, open - n * each);
    }
    return used + open;
  }

  /** How many stones more than the blanks that lie there can give. */
  long lacking(int count, End end) {
    List<Stock.Item> from = returned() ? corners : flats;
    if (from.isEmpty() || from.stream().anyMatch(Stock.Item::toOrder)) {
      return 0;
    }
    double width = width(count, end);
    double kerf = kerf();
    double taken = taken(end);
    long most = 0;
    int[] left = new int[from.size()];
    for (int i = 0; i < left.length; i++) {
      left[i] = from.get(i).count();
      most += left[i] * row(usable(from.get(i)) - taken, width, kerf);
    }
    for (int k = 0; hasKey() && k < terms.opening().count(); k++) {
      most -= keyTakes(from, left, width, kerf, taken);
    }
    return Math.max(0, count * stones - most);
  }

  /** Whether the key is yet to be cut. */
  private boolean hasKey() {
    return terms.head().key() != null && lines.there() + lines.measured() == 0;
  }

  private static long row(double length, double width, double kerf) {
    return Math.max(0, (long) Math.floor((length + kerf) / (width + kerf) + 1e-9));
  }

  /** What a key costs of the stones, cut from the blank that can best spare it. */
  private long keyTakes(
      List<Stock.Item> from, int[] left, double width, double kerf, double taken) {
    double key = 2.0 * Math.max(lines.startSoffit(), lines.startTop());
    Length height = terms.length(terms.height() + terms.rise() + terms.drop());
    Length back = terms.opening().reveal().plus(terms.head().key().proud());
    int best = -1;
    long least = 0;
    for (int i = 0; i < left.length; i++) {
      Stock.Item item = from.get(i);
      double rest = usable(item) - key;
      boolean takes =
          left[i] > 0
              && rest >= 0
              && item.face().compareTo(height) >= 0
              && (!returned() || item.returnLeg().compareTo(back) >= 0);
      long loss = row(usable(item) - taken, width, kerf) - row(rest - kerf - taken, width, kerf);
      if (takes && (best < 0 || loss < least)) {
        best = i;
        least = loss;
      }
    }
    if (best >= 0) {
      left[best]--;
    }
    return least;
  }
}
