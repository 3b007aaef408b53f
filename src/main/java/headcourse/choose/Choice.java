package headcourse.choose;

import headcourse.bench.Lands;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.rules.Finding;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import java.util.List;
import java.util.Optional;

/**
 * A head to choose, with its letter.
 *
 * @param letter {@code A}, {@code B} … {@code Z}, {@code AA} …; A comes first
 * @param look shape, rhythm and joints
 * @param settings what must stand beside the letter for the same head to be drawn again
 * @param left widths of the left side's stones from the key outwards
 * @param right those of the right side's
 * @param mean mean of all of them
 * @param key width of the key on the soffit line; zero without one
 * @param proportion key over mean width; 0 without a key
 * @param outside by how much that is out of the range that looks right
 * @param shortfall what it wants of spare to land, see {@link headcourse.layout.Proof}
 * @param lap least distance of a joint, or an end, from a jamb line
 * @param off how far the mean width is off the target
 * @param blanks how many blanks it takes, by the cutting plan for it alone
 * @param head the head
 * @param stackUp whether the tolerances alone may spoil an end
 * @param worked worked out as it is when it is drawn alone; none of those that are only listed
 */
public record Choice(
    String letter,
    Look look,
    Settings settings,
    List<Length> left,
    List<Length> right,
    Length mean,
    Length key,
    double proportion,
    double outside,
    Length shortfall,
    Length lap,
    Length off,
    int blanks,
    HeadLayout head,
    boolean stackUp,
    Optional<ShopWork> worked) {
  /** Share of builds that must land for a head to count as landing. */
  public static final double LANDS = 0.99;

  /** Copies the lists. */
  public Choice {
    left = List.copyOf(left);
    right = List.copyOf(right);
  }

  Choice lettered(String other) {
    return with(other, worked);
  }

  Choice worked(ShopWork work) {
    return with(letter, Optional.of(work));
  }

  private Choice with(String mark, Optional<ShopWork> done) {
    return new Choice(
        mark,
        look,
        settings,
        left,
        right,
        mean,
        key,
        proportion,
        outside,
        shortfall,
        lap,
        off,
        blanks,
        head,
        stackUp,
        done);
  }

  /** Ordinary stones on both sides. */
  public int stones() {
    return left.size() + right.size();
  }

  /** The job that it is worked out in: the opening alone. */
  public Job job() {
    return worked.orElseThrow().job();
  }

  /** How often it lands; of one that is worked out. */
  public Lands lands() {
    return worked.orElseThrow().heads().get(0).lands();
  }

  /** Whether it lands often enough. */
  public boolean landing() {
    return lands().checked() >= LANDS;
  }

  /** Whether a rule of severity error stands against it; of one that is worked out. */
  public boolean faulty() {
    return worked.orElseThrow().errorsStand();
  }

  /** The rules of severity error that stand against it, once each. */
  public List<String> faults() {
    return worked.stream()
        .flatMap(w -> w.findings().stream())
        .filter(Finding::standing)
        .map(Finding::rule)
        .distinct()
        .toList();
  }
}
