package headcourse.job;

import headcourse.job.Backing.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Kinds of anchor, and what each is made to hold in (common practice, no source). */
public enum AnchorKind {
  /** Thread cut for timber. */
  WOOD_SCREW(Kind.WOOD),
  /** Drills its own hole through sheet steel. */
  SELF_DRILLING_SCREW(Kind.STEEL),
  /** Hardened thread that cuts itself into a drilled hole. */
  MASONRY_SCREW(Kind.CONCRETE, Kind.BLOCK),
  /** A sleeve that is spread in a drilled hole. */
  SLEEVE_ANCHOR(Kind.CONCRETE, Kind.BLOCK);

  private final Set<Kind> into;

  AnchorKind(Kind... into) {
    this.into = Set.of(into);
  }

  /** Whether it is made to hold in something. Sheathing that the job counts on holds any. */
  public boolean suits(Kind kind) {
    return kind == Kind.SHEATHING || into.contains(kind);
  }

  /** Its word in job files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(AnchorKind::word).toList();
  }

  /** The kind that a word names. */
  public static AnchorKind of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
