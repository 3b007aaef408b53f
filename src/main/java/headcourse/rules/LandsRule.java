package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Lands;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Side;
import headcourse.units.Decimals;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A head built with ordinary errors lands nearly always. */
final class LandsRule implements HeadRule {
  private static final double LEAST = 0.95;

  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "lands",
        "Built with the errors assumed and checked on the way, a head lands in 19 of 20 builds",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("lands", "least share of checked builds that land, as a fraction");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Lands lands = head.lands();
    double least = c.number("lands", LEAST);
    if (lands == null || lands.checked() >= least) {
      return Optional.empty();
    }
    String often =
        c.text(
            "rule.lands",
            Decimals.grouped(lands.landedChecked()),
            Decimals.grouped(lands.builds()),
            Decimals.grouped((int) Math.ceil(least * lands.builds() - 1e-6)),
            c.text("rule.care-" + lands.care()));
    Lands.Miss miss = lands.worst();
    String in = Decimals.grouped(miss.builds());
    HeadSpec spec = head.layout().opening().head();
    Grid grid = c.job().grid();
    Length relief = grid.ticks(grid.ceil(miss.relief()));
    String why =
        switch (miss.fault()) {
          case JOINT -> {
            Length clear = grid.ticks(grid.floor(spec.clear().minus(miss.relief())));
            yield why(c, "joint", in, spec.clear(), clear);
          }
          case SHORT -> {
            Length min = grid.ticks(grid.floor(spec.bearing().min().minus(miss.relief())));
            yield why(c, "short", in, spec.bearing().min(), min);
          }
          case FAR -> {
            Length max = grid.ticks(grid.ceil(spec.bearing().max().plus(miss.relief())));
            Optional<Length> wall = wall(head);
            yield wall.isPresent() && wall.get().compareTo(max) < 0
                ? why(c, "wall", in, wall.get().min(spec.bearing().max()), relief)
                : why(c, "far", in, spec.bearing().max(), max);
          }
          case GAP -> c.text("rule.lands.gap", in, c.say().length(relief));
        };
    return Optional.of(often + "; " + why);
  }

  /** The narrower of the walls beside it. */
  private static Optional<Length> wall(HeadWork head) {
    Optional<Length> left = Ends.wall(head, Side.LEFT);
    Optional<Length> right = Ends.wall(head, Side.RIGHT);
    return left.isPresent() && right.isPresent()
        ? Optional.of(left.get().min(right.get()))
        : left.or(() -> right);
  }

  /** What is broken in so many builds, and what would hold in 99 of 100, if anything. */
  private static String why(
      RuleContext c, String key, String builds, Length limit, Length instead) {
    return c.text(
        "rule.lands." + key + (instead.isPositive() ? "" : "-never"),
        builds,
        c.say().length(limit),
        c.say().length(instead));
  }
}
