package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SawPass;
import headcourse.diag.Severity;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The job's saw can make every cut. */
final class SawReachRule implements PieceRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "saw-reach",
        "The saw is deep enough, and tilts far enough, for every pass",
        Severity.WARNING);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    List<String> said = new ArrayList<>();
    for (SawPass pass : piece.saw()) {
      if (!pass.possible()) {
        said.add(why(c, pass));
      }
    }
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", said));
  }

  private static String why(RuleContext c, SawPass pass) {
    String edge = c.edge(pass.edge());
    Length cuts = c.job().tools().saw().depthOfCut();
    if (pass.depth().compareTo(cuts) > 0) {
      return c.text(
          "rule.saw-reach.deep",
          edge,
          pass.number(),
          c.say().length(pass.depth(), cuts),
          c.say().most(cuts));
    }
    return c.text(
        "rule.saw-reach.tilt",
        edge,
        pass.number(),
        Figures.degrees(Limit.LEAST, pass.tilt()),
        Figures.degrees(Limit.MOST, c.job().tools().saw().tiltsTo()));
  }
}
