package headcourse.layout.side;

/**
 * How many stones may make up a run, by their widths alone.
 *
 * @param least the fewest
 * @param most the most; less than the fewest where none do
 */
public record CountRange(int least, int most) {
  /** The numbers of stones that can stand between the start and an end, by their widths alone. */
  public static CountRange of(FlatTerms terms, Lines lines, End end) {
    if (terms.widths().min() > terms.widths().max()) {
      return new CountRange(1, 0);
    }
    long run = end.foot() - lines.start();
    long least = Math.max(1, -Math.floorDiv(-run, terms.widths().max() + terms.joint()));
    long most = Math.floorDiv(run, terms.widths().min() + terms.joint());
    Integer each = terms.stones().eachSide();
    if (each != null) {
      least = Math.max(least, each);
      most = Math.min(most, each);
    }
    return new CountRange((int) least, (int) most);
  }
}
