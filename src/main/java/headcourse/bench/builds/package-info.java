/**
 * Builds a head over and over in numbers, each time with other errors of hand, saw and tape. Knows
 * places along a line and checks, no stones; bare doubles in millimetres.
 */
package headcourse.bench.builds;
