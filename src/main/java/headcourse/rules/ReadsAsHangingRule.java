package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.Change;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.statics.AsSolid;
import headcourse.statics.Standing;
import headcourse.statics.Standing.Verdict;
import headcourse.statics.ThrustLimit;
import headcourse.units.Limit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A head that would not stand if it were solid looks as if it hung. */
final class ReadsAsHangingRule implements Rule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "reads-as-hanging",
        "A solid head of the same joints would stand, and push no more than the job's bound",
        Severity.NOTE,
        "limit analysis of rigid blocks, the bound assumed",
        Finding.SourceStatus.CALCULATED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number(
        ThrustLimit.KEY, "greatest thrust of a head read as if it were solid, times its weight");
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      if (head.asSolid() != null && head.asSolid().standing().verdict() != Verdict.STANDS) {
        Standing standing = head.asSolid().standing();
        boolean falls = standing.verdict() == Verdict.FALLS;
        FindingDraft hit =
            FindingDraft.head(head, why(c, standing) + cures(c, head, head.asSolid()));
        hits.add(falls ? hit.as(Severity.WARNING) : hit);
      }
    }
    return hits;
  }

  private static String why(RuleContext c, Standing s) {
    return s.verdict() == Verdict.FALLS
        ? c.text("rule.reads-as-hanging.falls", Figures.decimal(s.friction(), 2))
        : c.text(
            "rule.reads-as-hanging.pushes",
            Figures.decimal(Limit.LEAST, s.thrust(), 2),
            Figures.decimal(s.most(), 2));
  }

  private static String cures(RuleContext c, HeadWork head, AsSolid solid) {
    List<String> all = solid.cures().stream().map(cure -> words(head, cure)).toList();
    String key = all.isEmpty() ? "none" : all.size() == 1 ? "one" : "any";
    return c.text("rule.reads-as-hanging." + key, String.join("; ", all));
  }

  /** As it is written into the job, without the opening, which the message names. */
  private static String words(HeadWork head, List<Change> cure) {
    String own = head.layout().opening().path() + ".head.";
    Map<String, List<String>> written = new LinkedHashMap<>();
    for (Change c : cure) {
      String path = c.path().startsWith(own) ? c.path().substring(own.length()) : c.path();
      int dot = path.lastIndexOf('.');
      String in = dot < 0 ? path : path.substring(0, dot);
      String said = dot < 0 ? c.value() : path.substring(dot + 1) + ": " + c.value();
      written.computeIfAbsent(in, k -> new ArrayList<>()).add(said);
    }
    List<String> parts = new ArrayList<>();
    written.forEach(
        (in, values) -> {
          String all = String.join(", ", values);
          parts.add(
              in
                  + ": "
                  + (cure.stream().anyMatch(c -> c.path().equals(own + in))
                      ? all
                      : "{" + all + "}"));
        });
    return String.join(" + ", parts);
  }
}
