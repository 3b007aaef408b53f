package headcourse.cli;

import headcourse.bench.HeadWork;
import headcourse.choose.NearBy;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.rules.Finding;
import headcourse.units.Decimals;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The heads near the one that is drawn, as a table for the terminal, and why it is not they. */
final class ExplainTable {
  private static final List<String> HEADINGS =
      List.of("", "a side", "widths", "bears", "lands", "blanks", "findings", "line to write");

  private ExplainTable() {}

  static List<String> lines(ShopWork work, HeadWork head, List<NearBy> near) {
    LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADINGS);
    NearBy drawn = near.stream().filter(NearBy::drawn).findFirst().orElseThrow();
    for (NearBy n : near) {
      n.worked().ifPresent(w -> rows.add(row(n, w, f)));
    }
    List<String> lines = new ArrayList<>(ChoiceTable.aligned(rows));
    for (NearBy n : near) {
      if (!n.drawn()) {
        lines.add("  not " + n.eachSide() + ": " + why(drawn, n, f));
      }
    }
    lines.add(
        "To take another, write its line under openings: "
            + head.layout().opening().mark()
            + ": head: stones:");
    return lines;
  }

  private static List<String> row(NearBy n, ShopWork work, LengthFormat f) {
    HeadWork head = work.heads().get(0);
    TreeSet<String> rules = new TreeSet<>();
    work.findings().stream()
        .filter(x -> x.severity() != Severity.NOTE && x.accepted() == null)
        .map(Finding::rule)
        .forEach(rules::add);
    return List.of(
        n.drawn() ? ">" : "",
        Integer.toString(n.eachSide()),
        widths(head.layout(), f),
        bears(head.layout(), f),
        Decimals.grouped(head.lands().landedChecked()),
        Integer.toString(n.blanks()),
        rules.isEmpty() ? "none" : String.join(", ", rules),
        "each-side: " + n.eachSide());
  }

  private static String widths(HeadLayout head, LengthFormat f) {
    List<Length> all =
        head.stones().stream()
            .filter(s -> s.role() != Role.KEY)
            .map(PlacedStone::bottom)
            .sorted()
            .toList();
    String least = f.plain(all.get(0));
    String most = f.plain(all.get(all.size() - 1));
    return least.equals(most) ? least : least + " to " + most;
  }

  private static String bears(HeadLayout head, LengthFormat f) {
    String left = f.plain(head.bearing(Side.LEFT).onWall(f.grid()));
    String right = f.plain(head.bearing(Side.RIGHT).onWall(f.grid()));
    return left.equals(right) ? left : left + " | " + right;
  }

  /** Why it is not drawn, in the order in which heads are chosen. */
  private static String why(NearBy drawn, NearBy other, LengthFormat f) {
    if (other.worked().isEmpty()) {
      return "it can't be set out so: " + other.refusal();
    }
    HeadLayout is = drawn.worked().orElse(other.worked().get()).heads().get(0).layout();
    HeadLayout would = other.worked().get().heads().get(0).layout();
    Length now = is.proof().shortfall();
    Length then = would.proof().shortfall();
    if (now != null && then != null && then.compareTo(now) > 0) {
      return "at the worst it is "
          + Limit.LEAST.plainWithUnit(f, then)
          + " short of landing"
          + (now.isZero() ? "" : ", the one drawn " + Limit.LEAST.plainWithUnit(f, now));
    }
    HeadSpec.Stones stones = is.opening().head().stones();
    if (stones.prefer() == HeadSpec.Prefer.BLANKS && other.blanks() > drawn.blanks()) {
      return "it takes " + other.blanks() + " blanks, the one drawn " + drawn.blanks();
    }
    return "it may be set so, but is farther from what is wanted: stones "
        + f.plainWithUnit(stones.target())
        + " wide"
        // Where an arch bears is not chosen: it follows from its centre.
        + (is.curved()
            ? ""
            : ", ends that bear " + f.plainWithUnit(is.opening().head().bearing().target()));
  }
}
