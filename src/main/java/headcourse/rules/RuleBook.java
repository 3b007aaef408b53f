package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.job.Accepted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.stock.StockPlan;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.ServiceLoader.Provider;
import java.util.stream.Stream;

/**
 * The rules of the trade. A new one is a file that implements {@link Rule}, and a line here; or, in
 * a jar of one's own on the class path, a line in its {@code META-INF/services}.
 */
public final class RuleBook {
  private static final List<Rule> OWN =
      List.of(
          new AsMadeRule(),
          new BearingAskedRule(),
          new BearingLeastRule(),
          new JointAtJambRule(),
          new WallBesideRule(),
          new StackUpRule(),
          new LandsRule(),
          new SliverRule(),
          new LeftoverRule(),
          new FourCornersRule(),
          new StackedJointsRule(),
          new CourseMissRule(),
          new ArchDepthRule(),
          new KeyRiseRule(),
          new SegmentalRiseRule(),
          new OddWithKeyRule(),
          new MinorArchRule(),
          new JackCamberRule(),
          new ReadsAsHangingRule(),
          new WallTakesThrustRule(),
          new JointWidthRule(),
          new SharpArrisRule(),
          new ChordDeviationRule(),
          new KeyVRule(),
          new SoffitHoldRule(),
          new VeneerWeightRule(),
          new AdheredDesignRule(),
          new VeneerThicknessRule(),
          new VeneerFaceRule(),
          new VeneerAreaRule(),
          new ThicknessRangeRule(),
          new ReturnLeastRule(),
          new FaceLeastRule(),
          new BedLeastRule(),
          new BedWedgeRule(),
          new WidthsAgreeRule(),
          new ScratchCoatRule(),
          new LathRule(),
          new BondRule(),
          new ScrewReachRule(),
          new ScrewHoldsRule(),
          new ScrewKindRule(),
          new SlotKerfRule(),
          new ScrewBendingRule(),
          new ScrewWithdrawalRule(),
          new NotchReachRule(),
          new NotchShowsRule(),
          new ScrewCoverRule(),
          new ScrewEdgeRule(),
          new ScrewCountRule(),
          new ScrewEndsRule(),
          new ScrewSizeRule(),
          new SawReachRule(),
          new GrinderReachRule(),
          new NoBlankRule(),
          new SpareRule(),
          new WasteRule(),
          new OtherWidthRule(),
          new LiftingRule(),
          new LiftingReachRule(),
          new OverheadPropRule(),
          new ScaffoldRule(),
          new SilicaRule(),
          new GrinderGuardRule(),
          new FramingDeflectionRule(),
          new DryClosingRule(),
          new MovementJointRule(),
          new CarriesNothingRule());

  private static final List<Rule> ALL =
      Stream.concat(OWN.stream(), ServiceLoader.load(Rule.class).stream().map(Provider::get))
          .toList();

  private RuleBook() {}

  /** What every rule is, in the book's order. */
  public static List<RuleCard> cards() {
    List<RuleCard> cards = new ArrayList<>();
    for (Rule rule : ALL) {
      cards.add(rule.card());
    }
    return List.copyOf(cards);
  }

  /** The thresholds that a job can set under {@code limits:}, in the book's order. */
  public static List<ParamDef> limits() {
    List<ParamDef> limits = new ArrayList<>();
    for (Rule rule : ALL) {
      limits.addAll(rule.limits());
    }
    return List.copyOf(limits);
  }

  /**
   * What the rules say of a job. Opening by opening, what concerns the whole job last; within each
   * the gravest first, then in the book's order, then stones from left to right.
   *
   * @param job the job
   * @param heads its heads, in the job's order
   * @param stock cutting plan and order
   */
  public static List<Finding> check(Job job, List<HeadWork> heads, StockPlan stock) {
    List<RuleContext> contexts = RuleContext.all(job, heads, stock);
    List<Finding> findings = new ArrayList<>();
    for (Rule rule : ALL) {
      RuleCard card = rule.card();
      for (FindingDraft hit : said(rule, card, contexts)) {
        findings.add(hit.finding(card, accepted(job, card.name(), hit.opening())));
      }
    }
    List<String> marks = job.openings().stream().map(Opening::mark).toList();
    // The sort is stable, so the book's order and the stones' order stay within equals.
    findings.sort(
        Comparator.comparingInt(
                (Finding f) -> f.opening() == null ? marks.size() : marks.indexOf(f.opening()))
            .thenComparing(Finding::severity));
    return List.copyOf(findings);
  }

  /** What a rule finds, in every language of the job: it finds the same in each. */
  private static List<FindingDraft> said(Rule rule, RuleCard card, List<RuleContext> contexts) {
    List<FindingDraft> all = new ArrayList<>();
    for (RuleContext context : contexts) {
      List<FindingDraft> hits = rule.check(context);
      for (int i = 0; i < hits.size(); i++) {
        FindingDraft hit = hits.get(i).said(card, context.words());
        if (i < all.size() && context != contexts.get(0)) {
          all.set(i, all.get(i).and(hit));
        } else {
          all.add(hit);
        }
      }
    }
    return all;
  }

  private static String accepted(Job job, String rule, String opening) {
    for (Accepted a : job.checks().accepted()) {
      boolean here = a.opening().isEmpty() || a.opening().equals(opening);
      if (here && a.rule().equals(rule)) {
        return a.reason();
      }
    }
    return null;
  }

  /** Findings for reading: stones of an opening of which the same is said share a line. */
  public static List<Finding> summary(Job job, List<Finding> findings) {
    return FindingSummary.of(findings, Words.of(job.language().word()).say("rule.run-to"));
  }

  /**
   * What the job accepts of rules and openings that there are not, each with the nearest right
   * word.
   */
  public static List<Diagnostic> unknownAcceptances(Job job) {
    if (job.checks().accepted().isEmpty()) {
      return List.of();
    }
    List<String> rules = cards().stream().map(RuleCard::name).toList();
    List<String> marks = job.openings().stream().map(Opening::mark).toList();
    List<Diagnostic> unknown = new ArrayList<>();
    for (Accepted a : job.checks().accepted()) {
      if (!rules.contains(a.rule())) {
        unknown.add(
            new Diagnostic(
                Severity.ERROR,
                job.spans().of(a.path() + ".rule"),
                "no rule is called '" + a.rule() + "'",
                Nearest.hints(a.rule(), rules)));
      }
      if (!a.opening().isEmpty() && !marks.contains(a.opening())) {
        unknown.add(
            new Diagnostic(
                Severity.ERROR,
                job.spans().of(a.path() + ".opening"),
                "no opening is marked '" + a.opening() + "'",
                Nearest.hints(a.opening(), marks)));
      }
    }
    return unknown;
  }
}
