package headcourse.stock.cutting;

/**
 * What a cutting plan costs: each is looked at only where those before it are equal.
 *
 * @param missing stones that no blank is left for
 * @param lead price of the blanks used where prices are given, else how many they are
 * @param second what decides among equals: their material, after their number where prices lead
 */
public record Cost(long missing, long lead, long second) implements Comparable<Cost> {
  /** Nothing. */
  public static final Cost NONE = new Cost(0, 0, 0);

  /** One of its three, in the order in which they are made least. */
  enum Component {
    MISSING,
    LEAD,
    SECOND
  }

  /** A component of it. */
  long of(Component which) {
    return switch (which) {
      case MISSING -> missing;
      case LEAD -> lead;
      case SECOND -> second;
    };
  }

  /** Both together. */
  public Cost plus(Cost o) {
    return new Cost(missing + o.missing, lead + o.lead, second + o.second);
  }

  /** With a component raised to a bound, where that is greater. */
  Cost raised(Component which, long to) {
    return switch (which) {
      case MISSING -> new Cost(Math.max(missing, to), lead, second);
      case LEAD -> new Cost(missing, Math.max(lead, to), second);
      case SECOND -> new Cost(missing, lead, Math.max(second, to));
    };
  }

  @Override
  public int compareTo(Cost o) {
    int c = Long.compare(missing, o.missing);
    c = c != 0 ? c : Long.compare(lead, o.lead);
    return c != 0 ? c : Long.compare(second, o.second);
  }
}
