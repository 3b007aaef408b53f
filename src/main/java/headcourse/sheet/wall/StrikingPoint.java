package headcourse.sheet.wall;

import headcourse.geom.Point;

/** A place on the soffit where an arc begins or ends; model space. */
record StrikingPoint(String name, Point at) {}
