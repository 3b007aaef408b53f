package headcourse.layout.side;

import java.util.List;

/**
 * One set of joint lines with the ends that go with it.
 *
 * @param lines the joint lines
 * @param ends the ends allowed by bearing, wall and jamb, inmost first
 */
public record SideCase(Lines lines, List<End> ends) {
  /** Copies the ends. */
  public SideCase {
    ends = List.copyOf(ends);
  }

  /** Of the lines alone: the ends are many, and follow from them. */
  @Override
  public int hashCode() {
    return lines.hashCode();
  }
}
