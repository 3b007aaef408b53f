package headcourse.rules;

import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import java.util.List;

/** One rule of the trade: a file that implements this, and a line in {@link RuleBook}. */
interface Rule {
  /** Its name, what it asks, and where that comes from. */
  RuleCard card();

  /** The thresholds that a job can set under {@code limits:}. */
  default List<ParamDef> limits() {
    return List.of();
  }

  /** What it finds, opening by opening and stone by stone. */
  List<FindingDraft> check(RuleContext context);

  /** A threshold that is a length. */
  static List<ParamDef> length(String name, String help) {
    return of(name, Kind.LENGTH, help);
  }

  /** A threshold that is a plain number. */
  static List<ParamDef> number(String name, String help) {
    return of(name, Kind.NUMBER, help);
  }

  /** A threshold of another kind. */
  static List<ParamDef> of(String name, Kind kind, String help) {
    return List.of(new ParamDef(name, kind, List.of(), help));
  }
}
