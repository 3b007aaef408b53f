package headcourse.work;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.cure.Advice;
import headcourse.cure.Adviser;
import headcourse.cure.Steadier;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.diag.Span;
import headcourse.job.Change;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Report;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.yard.FromStock;
import headcourse.revision.Changes;
import headcourse.revision.Edition;
import headcourse.revision.EditionReader;
import headcourse.rules.MaterialsTakeOff;
import headcourse.rules.RuleBook;
import headcourse.statics.AsSolid;
import headcourse.statics.Standing;
import headcourse.statics.StandingFinder;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Works a job out: sets out every head, derives its pieces, plans the stock, asks the rules. */
public final class WorkUp {
  private WorkUp() {}

  /** The job worked out, where it names no revision before. */
  public static Outcome<ShopWork> of(Job job) {
    return of(job, name -> Optional.empty());
  }

  /**
   * The job worked out, or what stands in the way of every opening that can't be done.
   *
   * @param job the job
   * @param files the content of a file that the job names, or empty where there is none
   */
  public static Outcome<ShopWork> of(Job job, Function<String, Optional<byte[]>> files) {
    return of(job, files, step -> {});
  }

  /**
   * The same for a job that is only compared with others: cures of heads that hang are left out.
   */
  public static Outcome<ShopWork> compared(Job job) {
    return of(job, name -> Optional.empty(), step -> {}, false, advice -> {});
  }

  /**
   * The same, saying on the way what is being done.
   *
   * @param steps is told
   */
  public static Outcome<ShopWork> of(
      Job job, Function<String, Optional<byte[]>> files, Consumer<String> steps) {
    return of(job, files, steps, true, advice -> {});
  }

  /**
   * The same for whoever can write cures into the file.
   *
   * @param advised is told what is said of each head that can't be set out, with its cures
   */
  public static Outcome<ShopWork> advised(
      Job job, Function<String, Optional<byte[]>> files, Consumer<Advice> advised) {
    return of(job, files, step -> {}, true, advised);
  }

  /**
   * One head as it is drawn, before builds, plan and rules: soon enough to be drawn while its
   * values are typed. Where it can't be set out, without what would cure it.
   *
   * @param job the job
   * @param opening the opening's number in it
   */
  public static Outcome<HeadWork> head(Job job, int opening) {
    // Stones from the pile are chosen for all openings together; a report names any of them.
    boolean together =
        job.openings().stream().anyMatch(o -> o.head().stones().rhythm() == Rhythm.FROM_STOCK)
            || !job.report().equals(Report.NONE);
    Job own = together ? job : job.alone(opening);
    List<Diagnostic> said = new ArrayList<>(Contradictions.in(own));
    BenchReport.Read report =
        failed(said) ? new BenchReport.Read(own, List.of()) : BenchReport.of(own);
    said.addAll(report.said());
    if (failed(said)) {
      return Outcome.failed(said);
    }
    Solution solution = Heads.of(report.pieces()).solutions().get(together ? opening : 0);
    if (solution instanceof Solution.Refused no) {
      said.addAll(no.problems());
      return Outcome.failed(said);
    }
    HeadLayout layout = ((Solution.Solved) solution).head();
    return Outcome.of(HeadBench.workUp(job, layout), said);
  }

  private static Outcome<ShopWork> of(
      Job job,
      Function<String, Optional<byte[]>> files,
      Consumer<String> steps,
      boolean cured,
      Consumer<Advice> advised) {
    List<Diagnostic> said = new ArrayList<>(Contradictions.in(job));
    Optional<Edition> before = before(job, files, said);
    said.addAll(RuleBook.unknownAcceptances(job));
    List<HeadLayout> layouts = new ArrayList<>();
    FromStock chosen = FromStock.NONE;
    Heads trying = null;
    BenchReport.Read report =
        failed(said) ? new BenchReport.Read(job, List.of()) : BenchReport.of(job);
    if (!failed(said)) {
      // Of a head that can't be set out without the report, the cause is told, not the report.
      Job reported = report.said().isEmpty() ? report.pieces() : job.withReport(Report.NONE);
      Heads heads = Heads.of(reported, steps);
      chosen = heads.chosen();
      trying = heads;
      for (int i = 0; i < job.openings().size(); i++) {
        if (heads.solutions().get(i) instanceof Solution.Solved solved) {
          layouts.add(solved.head());
        } else if (heads.solutions().get(i) instanceof Solution.Refused refused) {
          steps.accept("looking for what would make " + job.openings().get(i).mark() + " possible");
          Advice advice = Adviser.on(reported, i, refused, heads.trying());
          advised.accept(advice);
          said.addAll(advice.problems());
        }
      }
      if (!failed(said)) {
        said.addAll(report.said());
      }
      if (!failed(said)) {
        for (Advice advice : overlapping(reported, heads)) {
          advised.accept(advice);
          said.addAll(advice.problems());
        }
      }
    }
    if (failed(said)) {
      return Outcome.failed(said);
    }
    steps.accept("cuts, screws and builds");
    List<HeadWork> heads = asSolid(job, HeadBench.workUp(job, layouts), cured ? trying : null);
    steps.accept("planning the blanks");
    StockPlan planned =
        StockPlanner.plan(report.job(), heads, chosen, BenchReport.ticketed(job, heads));
    StockPlan stock =
        chosen.taken().isEmpty()
            ? planned.saving(new OtherWidths(job, heads, planned, trying.trying()).savings())
            : planned;
    return Outcome.of(
        new ShopWork(
            job,
            heads,
            stock,
            MaterialsTakeOff.of(job, heads),
            RuleBook.check(job, heads, stock),
            before
                .map(b -> Changes.between(b, Edition.of(job, heads, stock)))
                .orElse(Changes.NONE)),
        said);
  }

  private static List<HeadWork> asSolid(Job job, List<HeadWork> heads, Heads trying) {
    List<HeadWork> read = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      Standing standing = StandingFinder.of(job, heads.get(i).layout());
      List<List<Change>> cures =
          trying == null || standing.verdict() == Standing.Verdict.STANDS
              ? List.of()
              : Steadier.cures(job, i, trying.trying());
      read.add(heads.get(i).asSolid(new AsSolid(standing, cures)));
    }
    return read;
  }

  private static List<Advice> overlapping(Job job, Heads heads) {
    List<Advice> said = new ArrayList<>();
    for (Piers.Clash c : new Piers(job).clashes(heads.layouts())) {
      said.add(Adviser.between(job, c.one(), c.other(), c.refused(), heads.trying(c.other())));
    }
    return said;
  }

  private static Optional<Edition> before(
      Job job, Function<String, Optional<byte[]>> files, List<Diagnostic> said) {
    String name = job.info().revisionOf();
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Span span = job.spans().of("job.revision-of");
    Optional<byte[]> bytes = files.apply(name);
    if (bytes.isEmpty()) {
      said.add(
          Diagnostic.error(
              span,
              "there is no file " + name + " to compare with",
              "keep a copy of the layout.json that was sent out, and name that"));
      return Optional.empty();
    }
    Outcome<Edition> read = EditionReader.read(name, bytes.get(), span);
    said.addAll(read.diagnostics());
    return read.value();
  }

  private static boolean failed(List<Diagnostic> said) {
    return said.stream().anyMatch(d -> d.severity() == Severity.ERROR);
  }
}
