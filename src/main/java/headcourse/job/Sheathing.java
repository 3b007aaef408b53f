package headcourse.job;

import headcourse.units.Length;

/**
 * The board between the scratch coat and what carries the wall.
 *
 * @param thickness thickness; zero without one
 * @param holds whether the job counts on it to hold a screw
 */
public record Sheathing(Length thickness, boolean holds) {}
