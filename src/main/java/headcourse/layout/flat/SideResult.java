package headcourse.layout.flat;

/**
 * What one side came to.
 *
 * @param choice the best, or null where there is none
 * @param cost what was minimised first, mm
 * @param steps how many candidates were looked at
 */
record SideResult(Choice choice, double cost, long steps) {}
