/**
 * Heads set from a pile of measured pieces, with the least cost proved: knows widths and rules of a
 * side, no stones.
 */
package headcourse.stock.pile;
