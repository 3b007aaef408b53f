package headcourse.job;

import headcourse.units.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What stands behind the mortar and the sheathing between two heights.
 *
 * @param to up to which height above the soffit line; null where it goes on all the way up
 * @param kind what it is
 * @param name the job's word for it, as in lintel; may be empty
 * @param gravity specific gravity of wood, for withdrawal; 0 of anything else
 */
public record Backing(Length to, Kind kind, String name, double gravity) {
  /** Where the job says nothing of what stands there. */
  public static final Backing UNKNOWN = new Backing(null, Kind.GAP, "", 0);

  /** What it is. */
  public enum Kind {
    /** Timber: framing, a lintel, blocking. */
    WOOD(true),
    /** A stud, a plate or an angle. */
    STEEL(true),
    /** Cast. */
    CONCRETE(true),
    /** Masonry units. */
    BLOCK(true),
    /** A board that holds no anchor. */
    BOARD(false),
    /** Nothing. */
    GAP(false),
    /** Never behind the sheathing: the sheathing itself, where the job counts on it. */
    SHEATHING(true);

    private final boolean holds;

    Kind(boolean holds) {
      this.holds = holds;
    }

    /** Whether an anchor of some kind holds in it. */
    public boolean holds() {
      return holds;
    }

    /** Its word in job files and {@code layout.json}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The words that a job may write. */
    public static List<String> words() {
      return Arrays.stream(values()).filter(k -> k != SHEATHING).map(Kind::word).toList();
    }

    /** The kind that a word names. */
    public static Kind of(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }
}
