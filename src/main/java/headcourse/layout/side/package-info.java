/**
 * The sides of a flat head, with upright stones or fanned ones: which places its joints can have,
 * and which are best. Feet are whole ticks of the job's grid, counted outwards from the centre
 * line, both sides alike in sign; what may lie off the grid (half an opening, a target) is held in
 * picometres. Only {@code EdgeLine} and what builds on it work in millimetres.
 */
package headcourse.layout.side;
