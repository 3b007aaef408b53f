package headcourse.choose;

import java.util.Comparator;
import java.util.Locale;

/** What decides the order of choices, gravest first. The first three need a head worked out. */
public enum Criterion {
  /** No finding of severity error stands. */
  FINDING(Comparator.comparing(Choice::faulty)),
  /** The tolerances alone spoil no end. */
  STACK_UP(Comparator.comparing(Choice::stackUp)),
  /** It lands in 99 of 100 builds. */
  LANDS(Comparator.comparing(c -> !c.landing())),
  /** Room for the worst drift: what is wanting of it. */
  ROOM(Comparator.comparing(Choice::shortfall)),
  /** Key to stone, by how much it is out of its range, to a hundredth. */
  PROPORTION(Comparator.comparingLong(c -> Math.round(c.outside() * 100))),
  /** Blanks it takes. */
  BLANKS(Comparator.comparingInt(Choice::blanks)),
  /** Nearness to the target width. */
  TARGET(Comparator.comparing(Choice::off));

  private final Comparator<Choice> by;

  Criterion(Comparator<Choice> by) {
    this.by = by;
  }

  /** The word in keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  int compare(Choice a, Choice b) {
    return by.compare(a, b);
  }

  /** What settles it where all of these are equal: bond, fewer stones, what the settings read. */
  private static final Comparator<Choice> LAST =
      Comparator.comparing(Choice::lap)
          .reversed()
          .thenComparingInt(Choice::stones)
          .thenComparing(c -> c.settings().text());

  /** The order of choices that are worked out. */
  static int order(Choice a, Choice b) {
    return order(a, b, true);
  }

  /** The order by what is known of a head before it is worked out. */
  static int sketched(Choice a, Choice b) {
    return order(a, b, false);
  }

  private static int order(Choice a, Choice b, boolean worked) {
    for (Criterion c : values()) {
      int by = worked || c != FINDING && c != LANDS ? c.compare(a, b) : 0;
      if (by != 0) {
        return by;
      }
    }
    return LAST.compare(a, b);
  }
}
