package headcourse.job;

import java.util.List;

/**
 * What the bench reports back.
 *
 * @param fitted stones already cut, with what they measure
 * @param cut stones already cut as their tickets say
 * @param spoiled what broke, in that order: blank marks with number, as C2#3, and full marks of
 *     stones, as D1-R5
 */
public record Report(List<Fitted> fitted, List<CutStone> cut, List<String> spoiled) {
  /** Nothing is cut yet. */
  public static final Report NONE = new Report(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Report {
    fitted = List.copyOf(fitted);
    cut = List.copyOf(cut);
    spoiled = List.copyOf(spoiled);
  }
}
