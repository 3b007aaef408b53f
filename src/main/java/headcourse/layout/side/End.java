package headcourse.layout.side;

/**
 * A place where a side may end.
 *
 * @param soffit its foot on the soffit line
 * @param top its foot on the top line
 * @param foot its foot on the dividing line
 * @param bearing how far it passes the jamb line, pm
 * @param inward how far it may come in before it bears too little or is not clear of the jamb, pm;
 *     {@link #FIXED} where it springs from the jamb, to which it is cut
 * @param outward how far it may go out before it bears too much or runs off the wall, pm
 */
public record End(long soffit, long top, long foot, long bearing, long inward, long outward) {
  /** Where nothing can push an end off its place. */
  public static final long FIXED = Long.MAX_VALUE;

  /** An end on the wall. */
  public static End of(
      FlatTerms terms, FlatTerms.SideTerms side, long soffit, long top, long foot) {
    long least = Math.max(terms.bearing().min().picometres(), terms.head().clear().picometres());
    long most = terms.bearing().max().picometres();
    long wall =
        side.wall() == Long.MAX_VALUE ? FIXED : side.wall() - terms.pastNear(Math.max(soffit, top));
    return new End(
        soffit,
        top,
        foot,
        terms.past(soffit),
        terms.pastFar(soffit) - least,
        Math.min(most - terms.pastNear(soffit), wall));
  }

  /** An end that springs from the jamb itself. */
  static End springing(FlatTerms terms, long soffit, long top, long foot) {
    return new End(soffit, top, foot, terms.past(soffit), FIXED, FIXED);
  }
}
