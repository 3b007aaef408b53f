/**
 * The search that sets rows of stones from a pile of measured pieces. It knows lengths in ticks,
 * and no stones.
 */
package headcourse.layout.yard.rows;
