package headcourse.job;

import headcourse.units.Length;
import headcourse.units.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The paper sizes: ISO 216, the North American office sizes, and ARCH sizes (office practice; ASME
 * Y14.1 gives their counterparts).
 */
public final class PaperSizes {
  private PaperSizes() {}

  private static final List<Paper> ALL =
      List.of(
          inch("letter", 8.5, 11),
          inch("legal", 8.5, 14),
          inch("tabloid", 11, 17),
          inch("arch-a", 9, 12),
          inch("arch-b", 12, 18),
          inch("arch-c", 18, 24),
          inch("arch-d", 24, 36),
          inch("arch-e", 36, 48),
          iso("a4", 210, 297),
          iso("a3", 297, 420),
          iso("a2", 420, 594),
          iso("a1", 594, 841),
          iso("a0", 841, 1189));

  private static Paper inch(String name, double width, double height) {
    return new Paper(name, Length.inches(width), Length.inches(height), Units.INCH);
  }

  private static Paper iso(String name, double width, double height) {
    return new Paper(name, Length.mm(width), Length.mm(height), Units.MILLIMETRE);
  }

  /** All of them, smallest first in each family. */
  public static List<Paper> all() {
    return ALL;
  }

  /** The paper with a name. */
  public static Optional<Paper> named(String name) {
    return ALL.stream().filter(p -> p.name().equals(name)).findFirst();
  }

  /**
   * The next larger paper of a family, with room both ways for what the smaller one had room for;
   * beyond the largest, twice as large again, as DIN 476 goes on from A0. Paper off a roll becomes
   * the smallest sheet that is as wide.
   */
  public static Paper larger(Paper paper) {
    double area = area(paper);
    return ALL.stream()
        .filter(p -> p.family() == paper.family() && area(p) > area)
        .filter(p -> p.width().compareTo(paper.width()) >= 0)
        .filter(p -> p.height().compareTo(paper.height()) >= 0)
        .min(Comparator.comparingDouble(PaperSizes::area))
        .orElseGet(
            () ->
                new Paper(
                    "2 x " + paper.name(),
                    paper.height().max(paper.width()),
                    paper.width().times(2),
                    paper.family()));
  }

  private static double area(Paper paper) {
    return paper.width().mm() * paper.height().mm();
  }

  /** Paper off a roll. */
  public static Paper roll(Length width, Units family) {
    return new Paper("roll", width, Length.ZERO, family);
  }
}
