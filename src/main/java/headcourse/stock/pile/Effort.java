package headcourse.stock.pile;

/**
 * How steps are shared out where a choice is looked for.
 *
 * @param quick steps of the search that goes without prices of the pieces
 * @param patience steps of the search that has prices, before ends are halved
 * @param share the same before they are halved for the first time: this part of all steps left
 * @param wide ends are halved where so many times their range is more than the range of the widths
 * @param swaps this part of all steps goes to pieces that change places, where sides that differ
 *     least are not soon found; 0 for none
 */
record Effort(long quick, long patience, long share, long wide, long swaps) {
  static final Effort USUAL = new Effort(2_000, 10_000, 4, 3, 30);
}
