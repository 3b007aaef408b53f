/**
 * Heads over a curved soffit. One idea for all: an {@link headcourse.layout.curved.Intrados} of
 * arcs, straights or an ellipse, measured along itself from the crown to the springing; stones
 * divided along it; joints square to it. A shape is one file that extends {@link
 * headcourse.layout.curved.CurvedShape} and says how its intrados is struck.
 */
package headcourse.layout.curved;
