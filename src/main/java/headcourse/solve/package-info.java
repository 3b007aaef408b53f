/** Solvers of plain mathematics that more than one part lives on; they know numbers, no stones. */
package headcourse.solve;
