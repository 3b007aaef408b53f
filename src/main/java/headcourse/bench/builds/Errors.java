package headcourse.bench.builds;

/**
 * How far off things are as a rule. Standard deviations, mm, unless said.
 *
 * @param cut a cut, each by itself
 * @param fence the fence, one error for all stones of one saw setting
 * @param joint a joint: the mean of what a dry one opens by, exponentially distributed; in mortar
 *     the standard deviation from its width, normally distributed
 * @param read a reading of the tape
 * @param key the place of the key, or of the middle joint of a head without one
 * @param site the opening's width
 */
public record Errors(
    double cut, double fence, double joint, double read, double key, double site) {}
