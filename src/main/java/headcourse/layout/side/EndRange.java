package headcourse.layout.side;

/**
 * The ticks between which a side may end, by bearing and wall alone.
 *
 * @param first the inmost
 * @param last the outmost; less than the first where there is none
 */
public record EndRange(long first, long last) {
  /** Where the outermost foot of a side may stand. */
  public static EndRange of(FlatTerms terms, FlatTerms.SideTerms side) {
    long least = terms.bearing().min().picometres();
    long most = Math.min(terms.bearing().max().picometres(), side.wall());
    return new EndRange(
        -Math.floorDiv(-terms.far() - least, terms.tick()),
        Math.floorDiv(terms.near() + most, terms.tick()));
  }
}
