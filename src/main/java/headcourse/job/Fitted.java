package headcourse.job;

import headcourse.units.Length;

/**
 * A stone already cut and dry-fitted.
 *
 * @param path where it stands in the job
 * @param opening the opening's mark
 * @param stone the stone's mark in the opening, as in L1
 * @param bottom measured width at the bottom
 * @param top measured width at the top, or null where the outer edge leans as drawn
 * @param height measured height, or null
 */
public record Fitted(
    String path, String opening, String stone, Length bottom, Length top, Length height) {}
