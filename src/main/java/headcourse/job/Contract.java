package headcourse.job;

import java.util.List;
import java.util.Map;

/**
 * What a job says to people outside the shop. Every text is empty where the job does not give it.
 *
 * @param masonAddress the mason's address
 * @param delivery where stone that is ordered is delivered
 * @param mortar specification of the mortar
 * @param screws specification of the screws
 * @param notes free notes for the contractor's set
 * @param answers what the contractor answered for all openings
 * @param others what he answered otherwise for single ones, by their marks
 */
public record Contract(
    String masonAddress,
    String delivery,
    String mortar,
    String screws,
    List<String> notes,
    Answers answers,
    Map<String, Answers> others) {
  /** A job that says nothing. */
  public static final Contract UNSAID =
      new Contract("", "", "", "", List.of(), Answers.NONE, Map.of());

  /** Copies list and map. */
  public Contract {
    notes = List.copyOf(notes);
    others = Map.copyOf(others);
  }

  /** What was answered for an opening. */
  public Answers of(Opening opening) {
    return others.getOrDefault(opening.mark(), answers);
  }
}
