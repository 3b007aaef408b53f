package headcourse.job;

import headcourse.units.Length;

/**
 * An opening and the head over it.
 *
 * @param path where it stands in the job, as in {@code openings[0]}
 * @param mark its mark, as in D1
 * @param label what it is called; may be empty
 * @param count how many are identical
 * @param width finished clear width between the jambs
 * @param height finished height, or null
 * @param reveal depth of the soffit that is covered, from the face of the stone
 * @param wallLeft wall on the left that the head may run onto, or null where it is ample
 * @param wallRight wall on the right, or null where it is ample
 * @param measured as built, or null
 * @param head what is set over it
 */
public record Opening(
    String path,
    String mark,
    String label,
    int count,
    Length width,
    Length height,
    Length reveal,
    Length wallLeft,
    Length wallRight,
    Measured measured,
    HeadSpec head) {}
