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

  /** Both together. */
  public Cost plus(Cost o) {
    return new Cost(missing + o.missing, lead + o.lead, second + o.second);
  }

  /** The greater of each: a bound where both are bounds. */
  Cost raised(Cost o) {
    return new Cost(
        Math.max(missing, o.missing), Math.max(lead, o.lead), Math.max(second, o.second));
  }

  @Override
  public int compareTo(Cost o) {
    int c = Long.compare(missing, o.missing);
    c = c != 0 ? c : Long.compare(lead, o.lead);
    return c != 0 ? c : Long.compare(second, o.second);
  }
}
