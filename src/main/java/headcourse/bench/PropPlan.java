package headcourse.bench;

import headcourse.units.Length;

/**
 * What a prop under a head carries while the mortar is green; for the stones alone, and no
 * structural design.
 *
 * @param curved whether it is a centring, and not a level plank
 * @param massKg weight of the stones, by the heaviest plausible density
 * @param over length of the head along the soffit line, end to end; that it is spread over
 * @param loadKgPerM what a metre of plank carries, pushing counted
 * @param spacing farthest that two posts stand apart, on the grid; null under a centring
 * @param posts how many posts
 * @param postKg most that a post carries
 * @param keyDrop how far the key hangs below the others
 */
public record PropPlan(
    boolean curved,
    double massKg,
    Length over,
    double loadKgPerM,
    Length spacing,
    int posts,
    double postKg,
    Length keyDrop) {}
