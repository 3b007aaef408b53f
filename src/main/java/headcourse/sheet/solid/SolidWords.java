package headcourse.sheet.solid;

import headcourse.bench.HeadWork;
import headcourse.job.Above;
import headcourse.job.Job;
import headcourse.layout.PlacedStone;
import headcourse.sheet.Amounts;
import headcourse.sheet.SheetContext;
import headcourse.statics.HeymanRing;
import headcourse.statics.Standing;
import headcourse.statics.Standing.Verdict;
import headcourse.statics.ThrustLimit;
import headcourse.statics.Yield;
import headcourse.statics.Yield.How;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is said of a head read as if it were solid, each language of the job by itself. */
final class SolidWords {
  /** From so many times the least on more digits say nothing. */
  private static final double AMPLE = 10;

  private final SheetContext c;
  private final HeadWork head;
  private final Standing standing;

  SolidWords(SheetContext c, HeadWork head) {
    this.c = c;
    this.head = head;
    this.standing = head.asSolid().standing();
  }

  /** One sentence: would it stand, and by how much. */
  List<String> verdict() {
    String thrust = standing.thrust() == null ? "" : up(standing.thrust());
    String most = plain(standing.most(), 2);
    String least = standing.least() == null ? "" : least();
    return switch (standing.verdict()) {
      case STANDS -> c.words().each("solid.stands", margin(), least, thrust, most);
      case PUSHES ->
          c.words().each("solid.pushes" + (least.isEmpty() ? "" : "-least"), thrust, most, least);
      case FALLS -> c.words().each("solid.falls" + (least.isEmpty() ? "" : "-least"), least);
    };
  }

  private String least() {
    return Limit.LEAST.withUnit(c.format(), Length.mm(standing.least()));
  }

  /** Depth over the least, never said to be more than it is. */
  private String margin() {
    double margin = standing.margin();
    return Limit.MOST.decimal(margin, margin < AMPLE ? 2 : 0).toPlainString();
  }

  private static String up(double thrust) {
    return Limit.LEAST.decimal(thrust, 2).toPlainString();
  }

  private static String plain(double value, int places) {
    return BigDecimal.valueOf(value)
        .setScale(places, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The least thrust that keeps it up, and the greatest that it bears. */
  List<String> thrusts() {
    if (standing.thrust() == null) {
      return List.of();
    }
    String least = up(standing.thrust());
    return standing.greatest().isInfinite()
        ? c.words().each("solid.thrust-any", least)
        : c.words()
            .each(
                "solid.thrust-range",
                least,
                Limit.MOST.decimal(standing.greatest(), 2).toPlainString());
  }

  /** What a textbook asks of the same curve; none where it is not struck from one centre. */
  List<String> textbook() {
    return HeymanRing.leastDepth(head.layout())
        .map(d -> c.words().each("solid.heyman", Limit.LEAST.withUnit(c.format(), Length.mm(d))))
        .orElse(List.of());
  }

  /** What this is, and what it is not. */
  List<String> caution() {
    return c.words().each("solid.caution");
  }

  /** What the walls would have to take. */
  List<String> walls() {
    if (standing.thrust() == null) {
      return List.of();
    }
    Job job = c.job();
    double kg = standing.weightKg(job, head.layout());
    Amounts amounts = new Amounts(job.units());
    String reveal = c.format().withUnit(head.layout().opening().reveal());
    return c.words()
        .each(
            "solid.walls",
            amounts.massAtMost(standing.thrust() * kg),
            amounts.massAtMost(kg),
            reveal,
            Limit.LEAST.withUnit(c.format(), Length.mm(standing.pier())));
  }

  /** What rings and bars on the figure are. */
  List<String> yields() {
    if (standing.yields().isEmpty()) {
      return List.of();
    }
    String when = standing.verdict() == Verdict.STANDS ? "solid.yields-thin" : "solid.yields";
    List<String> all = new ArrayList<>(c.words().each(w -> w.say(when) + joints(w)));
    if (standing.pushes()) {
      all.addAll(c.words().each("solid.yields-walls"));
    }
    return all;
  }

  /** Which joints do what, from left to right. */
  private String joints(Words w) {
    StringBuilder all = new StringBuilder();
    for (How how : How.values()) {
      List<String> names =
          standing.yields().stream()
              .filter(y -> y.how() == how)
              .sorted(Comparator.comparingInt(Yield::joint))
              .map(y -> name(w, y.joint()))
              .toList();
      if (!names.isEmpty()) {
        all.append(' ').append(w.say("solid." + how.word(), String.join(", ", names)));
      }
    }
    return all.toString();
  }

  private String name(Words w, int joint) {
    List<PlacedStone> stones = head.layout().stones();
    String left = joint == 0 ? w.say("solid.wall") : stones.get(joint - 1).mark();
    String right = joint == stones.size() ? w.say("solid.wall") : stones.get(joint).mark();
    return left + "/" + right;
  }

  /** What was assumed. */
  List<String> assumed() {
    Above above = c.job().wall().above();
    String key =
        switch (above.kind()) {
          case NOTHING -> "solid.above-nothing";
          case TRIANGLE -> "solid.above-triangle";
          case LEVEL -> "solid.above-level";
        };
    return c.words()
        .each(
            w ->
                w.say(
                    "solid.assumed",
                    plain(standing.friction(), 2),
                    w.say(key, c.format().withUnit(above.height())),
                    plain(standing.most(), 2),
                    ThrustLimit.KEY,
                    plain(8 * standing.most(), 0)));
  }
}
