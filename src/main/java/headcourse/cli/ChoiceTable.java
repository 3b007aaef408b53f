package headcourse.cli;

import headcourse.choose.Choice;
import headcourse.choose.Choices;
import headcourse.job.Job;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.rules.MaterialsTakeOff;
import headcourse.sheet.Amounts;
import headcourse.units.Decimals;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;

/** What there is to choose from, as a table for the terminal. */
final class ChoiceTable {
  private static final List<String> HEADINGS =
      List.of(
          "",
          "key",
          "a side",
          "shape",
          "passes",
          "nearest",
          "room",
          "key/stone",
          "blanks",
          "lands",
          "weight");

  private ChoiceTable() {}

  static List<String> lines(Choices choices) {
    Job job = choices.job();
    LengthFormat f = new LengthFormat(job.units(), job.grid());
    List<String> lines = new ArrayList<>();
    lines.add(
        choices.opening().mark()
            + ": "
            + choices.all()
            + (choices.all() == 1 ? " head keeps" : " heads keep")
            + " what the job asks; "
            + choices.outdone()
            + " left out because others outdo them"
            + (choices.faulty() == 0
                ? ""
                : ", "
                    + choices.faulty()
                    + " because an error stands against them ("
                    + String.join(", ", choices.faults())
                    + ")"));
    choices.refused().forEach(r -> lines.add("  not among them: " + r));
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADINGS);
    choices.pictured().forEach(c -> rows.add(row(c, f)));
    lines.addAll(aligned(rows));
    if (!choices.rest().isEmpty()) {
      lines.add(
          choices.rest().size()
              + " more, "
              + choices.rest().get(0).letter()
              + " to "
              + choices.rest().get(choices.rest().size() - 1).letter()
              + ", are listed in choose.pdf");
    }
    lines.add("To fix one, write its letter and its line under the opening, as in");
    Choice first = choices.pictured().get(0);
    lines.add("    choose: " + first.letter());
    lines.add("    chosen: " + first.settings().text());
    return lines;
  }

  private static List<String> row(Choice c, LengthFormat f) {
    String key =
        c.head().stones().stream()
            .filter(s -> s.role() == Role.KEY)
            .findFirst()
            .map(k -> f.plain(k.bottom()) + " / " + f.plain(k.top()))
            .orElse("none");
    Length left = c.head().bearing(Side.LEFT).onWall(f.grid());
    Length right = c.head().bearing(Side.RIGHT).onWall(f.grid());
    return List.of(
        c.letter(),
        key,
        side(c.left(), f) + (c.left().equals(c.right()) ? "" : " | " + side(c.right(), f)),
        c.look().shape()
            + " "
            + c.look().rhythm().word()
            + (c.look().joint().isZero() ? "" : " " + f.plain(c.look().joint())),
        f.plain(left) + (left.equals(right) ? "" : " | " + f.plain(right)),
        Limit.MOST.plainWithUnit(f, c.lap()),
        c.shortfall().isZero() ? "yes" : Limit.LEAST.plainWithUnit(f, c.shortfall()) + " short",
        c.proportion() == 0 ? "" : Decimals.fixed(c.proportion(), 2),
        Integer.toString(c.blanks()),
        Decimals.grouped(c.lands().landedChecked()),
        new Amounts(f.units()).wholeMass(mass(c.worked().orElseThrow())));
  }

  private static double mass(ShopWork work) {
    return work.materials().stoneKg() + MaterialsTakeOff.apartKg(work.heads());
  }

  private static String side(List<Length> widths, LengthFormat f) {
    Length least = widths.stream().reduce(Length::min).orElseThrow();
    Length most = widths.stream().reduce(Length::max).orElseThrow();
    return widths.size()
        + " x "
        + f.plain(least)
        + (f.plain(least).equals(f.plain(most)) ? "" : " to " + f.plain(most));
  }

  /** Rows as lines, each column as wide as it must be. */
  static List<String> aligned(List<List<String>> rows) {
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(" ");
      for (int i = 0; i < row.size(); i++) {
        line.append(' ').append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 1));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }
}
