package headcourse.bench;

import headcourse.units.Length;

/**
 * The mortar bed between one stone's return and the rough head, exact.
 *
 * @param stone the stone's mark in the opening
 * @param left at the return's left end, seen from outside
 * @param right at its right end
 * @param thinnest anywhere along it
 * @param thickest anywhere along it
 */
public record BedUnder(String stone, Length left, Length right, Length thinnest, Length thickest) {}
