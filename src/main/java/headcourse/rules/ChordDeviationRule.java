package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.ArrisLimit;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A straight arris on a curved soffit may leave the curve only so far; said once a head. */
final class ChordDeviationRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "chord-deviation",
        "A straight arris on a curved soffit stays within 1/8 in (3 mm) of the curve",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("chord-deviation", "farthest that a straight arris may lie off the curve");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    HeadSpec spec = head.layout().opening().head();
    if (ArrisLimit.worked(spec)) {
      return Optional.empty();
    }
    Length most = ArrisLimit.of(c.job(), spec);
    List<PlacedStone> over =
        head.layout().stones().stream()
            .filter(s -> s.arrisDeviation() > most.mm() + 1e-9)
            .sorted(Comparator.comparingDouble(PlacedStone::arrisDeviation).reversed())
            .toList();
    if (over.isEmpty()) {
      return Optional.empty();
    }
    // Who set the head out has counted how many stones would do.
    Optional<List<String>> counted =
        head.layout().remarks().stream()
            .filter(r -> r.key().equals("arris"))
            .map(HeadLayout.Remark::values)
            .findFirst();
    List<String> said =
        counted.orElseGet(
            () ->
                List.of(
                    c.say().length(Length.mm(over.get(0).arrisDeviation()), most),
                    over.get(0).mark(),
                    c.say().most(most),
                    Integer.toString(over.size())));
    boolean known = said.size() > 4;
    String key =
        counted.isEmpty()
            ? "rule.chord-deviation.narrower"
            : known ? "rule.chord-deviation.would-do" : "rule.chord-deviation";
    return Optional.of(
        c.text(
            key,
            said.get(0),
            said.get(1),
            said.get(2),
            c.count("rule.stone-", Integer.parseInt(said.get(3))),
            known ? said.get(4) : "",
            known ? said.get(5) : ""));
  }
}
