package headcourse.bench;

import headcourse.layout.Side;
import headcourse.units.Length;

/**
 * Where one end may land.
 *
 * @param side which side
 * @param stones how many stones lie between the centre line and the end, the key's half as one
 * @param worst the most it can be off, either way
 * @param likely what it is typically off
 * @param bearingLeast bearing at the worst
 * @param bearingGreatest bearing at the other worst
 * @param jambStillClear whether every joint stays clear of the jamb line at the worst
 */
public record StackUp(
    Side side,
    int stones,
    Length worst,
    Length likely,
    Length bearingLeast,
    Length bearingGreatest,
    boolean jambStillClear) {}
