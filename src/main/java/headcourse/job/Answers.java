package headcourse.job;

import headcourse.units.Length;

/**
 * What the contractor answered for an opening; texts are empty and others null until he has.
 *
 * @param lintel the lintel
 * @param flashing where the flashing lies behind the stones, or null
 * @param barrier how crossings of the weather barrier are sealed
 * @param props who sets, keeps and takes away the props
 */
public record Answers(Lintel lintel, Flashing flashing, String barrier, String props) {
  /** Before anything was answered. */
  public static final Answers NONE = new Answers(Lintel.UNKNOWN, null, "", "");

  /**
   * The lintel, by others.
   *
   * @param kind what it is
   * @param size its size
   * @param bearing how far it bears beyond each jamb, or null
   * @param before what it bends by before the stones go up, or null
   * @param after what it bends by after that, or null
   * @param allows what its designer allows for the head, kg/m; NaN where not given
   */
  public record Lintel(
      String kind, String size, Length bearing, Length before, Length after, double allows) {
    /** Nobody said anything of it. */
    public static final Lintel UNKNOWN = new Lintel("", "", null, null, null, Double.NaN);

    /** Its kind and size as one text; empty where neither is given. */
    public String name() {
      return kind.isEmpty() || size.isEmpty() ? kind + size : kind + " " + size;
    }
  }

  /**
   * Where the flashing lies behind the stones.
   *
   * @param from its lower edge above the line that the head stands on
   * @param to its upper edge
   */
  public record Flashing(Length from, Length to) {}
}
