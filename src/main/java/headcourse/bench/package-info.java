/**
 * What the bench cuts and the wall sets, derived stone by stone from a layout of any shape: a stone
 * is its edges with the side that each bounds, and everything is measured in the stone's own frame.
 */
package headcourse.bench;
