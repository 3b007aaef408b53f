/**
 * Heads whose stones come from the pieces in the yard: all of a job set out together, and again
 * when a piece breaks or a stone came out otherwise.
 */
package headcourse.layout.yard;
