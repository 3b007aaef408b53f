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
            .filter(s -> s.chordDeviation() > most.mm() + 1e-9)
            .sorted(Comparator.comparingDouble(PlacedStone::chordDeviation).reversed())
            .toList();
    if (over.isEmpty()) {
      return Optional.empty();
    }
    // Who set the head out has counted how many stones would do.
    Optional<String> counted =
        head.layout().remarks().stream()
            .filter(r -> r.key().equals("arris"))
            .map(HeadLayout.Remark::message)
            .findFirst();
    return Optional.of(
        counted.orElseGet(
                () ->
                    "a straight arris stands off the curve by up to "
                        + c.say().length(Length.mm(over.get(0).chordDeviation()), most)
                        + " ("
                        + over.get(0).mark()
                        + "), more than "
                        + c.say().length(most)
                        + ", on "
                        + Figures.count(over.size(), "stone")
                        + "; cut narrower stones, or work the arris to the curve by the offsets")
            + " on the tickets (arris: worked)");
  }
}
