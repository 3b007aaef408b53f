package headcourse.bench;

import headcourse.geom.Point;

/**
 * How much of stone a piece is, and where it balances.
 *
 * @param areaM2 face area, m²
 * @param volumeM3 volume, m³
 * @param kg mass by the stone's density
 * @param liftingKg mass by the heaviest plausible density, kg
 * @param centre of mass in the plane of the face, model space
 * @param depth of the centre of mass behind the face, mm
 */
public record Mass(
    double areaM2, double volumeM3, double kg, double liftingKg, Point centre, double depth) {}
