package headcourse.choose;

import headcourse.layout.HeadLayout;
import headcourse.units.Decimals;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says why a job has the head that was chosen, and not the one that comes first. */
public final class Why {
  private final Choices choices;
  private final LengthFormat format;

  private Why(Choices choices) {
    this.choices = choices;
    this.format = new LengthFormat(choices.job().units(), choices.job().grid());
  }

  /**
   * The lines for an opening whose head is chosen.
   *
   * @param letter the letter in the job
   * @param drawn the head as it is drawn
   */
  public static List<String> lines(Choices choices, String letter, HeadLayout drawn) {
    return new Why(choices).lines(letter, drawn);
  }

  private List<String> lines(String letter, HeadLayout drawn) {
    String mark = choices.opening().mark();
    Optional<Choice> found = choices.drawn(drawn);
    if (found.isEmpty()) {
      return List.of(
          mark
              + ": choose "
              + letter
              + " is drawn as its settings say; of what can be chosen now it is none that others"
              + " don't outdo");
    }
    Choice own = found.get();
    List<String> lines = new ArrayList<>();
    if (!own.letter().equals(letter)) {
      lines.add(
          mark
              + ": what was chosen as "
              + letter
              + " is drawn as its settings say; among what can be chosen now it is "
              + own.letter());
    }
    Choice first = choices.pictured().isEmpty() ? own : choices.pictured().get(0);
    if (first == own) {
      lines.add(mark + ": choose " + own.letter() + ", which comes first");
      return lines;
    }
    List<String> behind = new ArrayList<>();
    List<String> ahead = new ArrayList<>();
    for (Criterion c : Criterion.values()) {
      if ((own.worked().isPresent() || c != Criterion.FINDING && c != Criterion.LANDS)) {
        int by = c.compare(own, first);
        (by > 0 ? behind : ahead).addAll(by == 0 ? List.of() : List.of(said(c, own, first)));
      }
    }
    int lap = own.lap().compareTo(first.lap());
    if (lap != 0) {
      (lap < 0 ? behind : ahead).add("nearest joint " + lap(own) + ", not " + lap(first));
    }
    lines.add(
        mark
            + ": choose "
            + own.letter()
            + (ahead.isEmpty() ? "" : " has " + String.join("; ", ahead))
            + (ahead.isEmpty() || behind.isEmpty() ? "" : ", but ")
            + (behind.isEmpty()
                ? ""
                : first.letter()
                    + " comes first: "
                    + own.letter()
                    + " has "
                    + String.join("; ", behind)));
    return lines;
  }

  private String lap(Choice c) {
    return Limit.MOST.plainWithUnit(format, c.lap());
  }

  private String said(Criterion by, Choice own, Choice first) {
    return switch (by) {
      case FINDING -> own.faulty() ? "an error among the findings" : "no error among the findings";
      case STACK_UP -> own.stackUp() ? "a stack-up warning" : "no stack-up warning";
      case LANDS -> lands(own) + ", not " + lands(first);
      case ROOM -> room(own) + ", not " + room(first);
      case PROPORTION -> "a key " + ratio(own) + " times a stone, not " + ratio(first);
      case BLANKS -> own.blanks() + " blanks, not " + first.blanks();
      case TARGET -> "stones " + off(own) + " off the target width, not " + off(first);
    };
  }

  private static String lands(Choice c) {
    return Decimals.grouped(c.lands().landedChecked()) + " builds that land";
  }

  private String room(Choice c) {
    return c.shortfall().isZero()
        ? "room for the worst drift"
        : Limit.LEAST.plainWithUnit(format, c.shortfall()) + " too little room";
  }

  private static String ratio(Choice c) {
    return Decimals.fixed(c.proportion(), 2);
  }

  private String off(Choice c) {
    return Limit.LEAST.plainWithUnit(format, c.off());
  }
}
