/**
 * Would a head stand if it were solid? Limit analysis of rigid blocks that bear no tension, do not
 * crush, and hold at their joints by friction (Heyman 1966; the linear programme over the forces at
 * the joints: Livesley 1978). Bare doubles in millimetres; forces are areas of face in mm², because
 * stones as thick as each other and of one density weigh as much as their faces are large. Veneer
 * carries nothing: this says what a head looks like, never what it bears.
 */
package headcourse.statics;
