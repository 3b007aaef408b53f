package headcourse.layout.flat;

/**
 * A place where a side may end.
 *
 * @param soffit its foot on the soffit line
 * @param top its foot on the top line
 * @param foot its foot on the dividing line
 * @param bearing how far it passes the jamb line, pm
 */
public record End(long soffit, long top, long foot, long bearing) {}
