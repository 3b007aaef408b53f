package headcourse.job;

import java.util.List;
import java.util.Optional;

/**
 * What of a head may vary when one is chosen. The number of stones and their widths always do.
 *
 * @param dials one for each thing that varies
 * @param least least ratio of the key's width to a stone's that looks right
 * @param most greatest such ratio
 */
public record Vary(List<Dial> dials, double least, double most) {
  /** Least ratio of key to stone where the job does not say; common practice, no source. */
  public static final double LEAST = 1.1;

  /** Greatest; common practice, no source. */
  public static final double MOST = 1.4;

  /** Nothing but number and width. */
  public static final Vary NOTHING = new Vary(List.of(), LEAST, MOST);

  /** Copies the list. */
  public Vary {
    dials = List.copyOf(dials);
  }

  /**
   * Something that varies.
   *
   * @param key its key under {@code head:}, as in {@code key.bottom}; {@code joints} for the joints
   * @param values each of its values, as the job file has it
   */
  public record Dial(String key, List<String> values) {
    /** Copies the list. */
    public Dial {
      values = List.copyOf(values);
    }
  }

  /** The values of a key, where it varies. */
  public Optional<List<String>> values(String key) {
    return dials.stream().filter(d -> d.key().equals(key)).findFirst().map(Dial::values);
  }

  /** How many combinations there are. */
  public long combinations() {
    long product = 1;
    for (Dial d : dials) {
      product = Math.min(Integer.MAX_VALUE, product * d.values().size());
    }
    return product;
  }
}
