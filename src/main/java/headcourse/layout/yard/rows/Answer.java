package headcourse.layout.yard.rows;

import java.util.List;

/**
 * What the search came to.
 *
 * @param heads the stones of each head, or empty where nothing was found
 * @param cost what they cost, or null
 * @param least no choice with so few changes saws off less than this
 * @param proved whether the choice is proved best; with no choice, whether there is none
 * @param changes no choice changes fewer of the stones ticketed
 * @param steps how many steps it took
 */
public record Answer(
    List<Chosen> heads, Cost cost, long least, boolean proved, int changes, long steps) {
  /** Copies the list. */
  public Answer {
    heads = List.copyOf(heads);
  }

  /** Whether there is a choice. */
  public boolean found() {
    return cost != null;
  }

  /**
   * The stones of a head.
   *
   * @param way place of its key and striking point in the list of ways
   * @param key the key's pieces, by copy; none where it takes none
   * @param left outwards
   * @param right outwards
   */
  public record Chosen(int way, List<Integer> key, List<Picked> left, List<Picked> right) {
    /** Copies the lists. */
    public Chosen {
      key = List.copyOf(key);
      left = List.copyOf(left);
      right = List.copyOf(right);
    }

    /** One side. */
    public List<Picked> side(int s) {
      return s == 0 ? left : right;
    }
  }

  /**
   * A stone.
   *
   * @param width its width
   * @param pieces the pieces it is cut from, as places in the pile's list: one for each copy
   */
  public record Picked(long width, List<Integer> pieces) {
    /** Copies the list. */
    public Picked {
      pieces = List.copyOf(pieces);
    }
  }
}
