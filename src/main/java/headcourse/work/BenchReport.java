package headcourse.work;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.diag.Diagnostic;
import headcourse.job.CutStone;
import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Report;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadShape;
import headcourse.layout.PlacedStone;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.layout.yard.FromStock;
import headcourse.layout.yard.PileChooser;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the bench reports, put so that heads can be solved around it: a stone that was cut as its
 * ticket says becomes one that is fitted as it was drawn, and a stone that broke, of those chosen
 * from the yard's pieces one by one, becomes its piece.
 */
final class BenchReport {
  private final Job job;
  private final Job bare;
  private final List<Diagnostic> said = new ArrayList<>();
  private final Map<Opening, Optional<HeadLayout>> drawn = new HashMap<>();
  private FromStock first;

  private BenchReport(Job job) {
    this.job = job;
    this.bare = job.withReport(Report.NONE);
  }

  /**
   * A report read.
   *
   * @param job the job with the report as it is to be solved around
   * @param said what of it can't be
   */
  record Read(Job job, List<Diagnostic> said) {
    /** The job for heads whose stones are chosen piece by piece: those lose whole pieces only. */
    Job pieces() {
      List<String> pieces = job.report().spoiled().stream().filter(BenchReport::piece).toList();
      return job.withReport(new Report(job.report().fitted(), job.report().cut(), pieces));
    }
  }

  /** Reads a job's report. */
  static Read of(Job job) {
    boolean stones = job.report().spoiled().stream().anyMatch(s -> !s.contains("#"));
    return job.report().cut().isEmpty() && !stones
        ? new Read(job, List.of())
        : new BenchReport(job).read();
  }

  /** The heads as they were ticketed: those of which stones are cut as if none were. */
  static List<HeadWork> ticketed(Job job, List<HeadWork> heads) {
    Job bare = job.withReport(Report.NONE);
    List<HeadWork> all = new ArrayList<>();
    for (HeadWork head : heads) {
      Opening o = head.layout().opening();
      boolean cut = head.layout().stones().stream().anyMatch(PlacedStone::fitted);
      all.add(
          cut && !fromStock(o)
              ? draw(bare, o).map(d -> HeadBench.workUp(bare, d)).orElse(head)
              : head);
    }
    return all;
  }

  private static boolean piece(String spoiled) {
    return spoiled.contains("#") && !spoiled.contains("/");
  }

  private static boolean fromStock(Opening o) {
    return o.head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK;
  }

  private static Optional<HeadLayout> draw(Job bare, Opening o) {
    HeadShape shape = Shapes.named(o.head().shape()).orElseThrow();
    return shape.setOut(bare, o) instanceof Solution.Solved s
        ? Optional.of(s.head())
        : Optional.empty();
  }

  private Read read() {
    List<String> spoiled = new ArrayList<>();
    FromStock now = null;
    for (int i = 0; i < job.report().spoiled().size(); i++) {
      String name = job.report().spoiled().get(i);
      Opening o = name.contains("#") ? null : opening(name.substring(0, name.lastIndexOf('-')));
      if (o == null) {
        spoiled.add(name);
      } else if (there("spoiled[" + i + "]", o, name.substring(name.lastIndexOf('-') + 1))) {
        now = fromStock(o) ? after(spoiled) : now;
        spoiled.add(fromStock(o) ? pieceOf(now, name).orElse(name) : name);
      }
    }
    List<Fitted> fitted = new ArrayList<>(job.report().fitted());
    List<CutStone> cut = new ArrayList<>();
    for (CutStone c : job.report().cut()) {
      Opening o = opening(c.opening());
      if (!there(c.path(), o, c.stone())) {
        continue;
      }
      if (fromStock(o)) {
        boolean again = job.report().spoiled().contains(c.mark());
        FromStock plan = again ? after(spoiled) : first();
        String piece = c.piece().isEmpty() ? pieceOf(plan, c.mark()).orElse("") : c.piece();
        fitted.add(asDrawn(c, headOf(plan, o).orElseThrow(), piece));
      } else if (o.count() == 1 && Shapes.named(o.head().shape()).orElseThrow().flat()) {
        fitted.add(asDrawn(c, drawn(o).orElseThrow(), c.piece()));
      } else {
        cut.add(c);
      }
    }
    return new Read(job.withReport(new Report(fitted, cut, spoiled)), said);
  }

  private static Fitted asDrawn(CutStone c, HeadLayout head, String piece) {
    PlacedStone s = head.stone(c.stone());
    return new Fitted(c.path(), c.opening(), c.stone(), s.bottom(), s.top(), null, piece);
  }

  /** Whether the head as it was ticketed has a stone; says so where it has not. */
  private boolean there(String path, Opening o, String stone) {
    Optional<HeadLayout> head = fromStock(o) ? headOf(first(), o) : drawn(o);
    if (head.isEmpty()) {
      said.add(
          Diagnostic.error(
              job.spans().of(path),
              o.mark()
                  + " can't be set out without what was reported, so "
                  + stone
                  + " has no size",
              "give each stone that is cut its width under fitted:"));
      return false;
    }
    List<String> marks = head.get().stones().stream().map(PlacedStone::mark).toList();
    if (!marks.contains(stone)) {
      said.add(
          Diagnostic.error(
              job.spans().of(path),
              o.mark()
                  + " has no stone "
                  + stone
                  + "; expected one of "
                  + String.join(", ", marks)));
    }
    return marks.contains(stone);
  }

  private Optional<HeadLayout> drawn(Opening o) {
    return drawn.computeIfAbsent(o, x -> draw(bare, x));
  }

  private FromStock first() {
    if (first == null) {
      first = PileChooser.setOut(bare, Shapes::named);
    }
    return first;
  }

  /** The pieces after those that broke before. */
  private FromStock after(List<String> spoiled) {
    List<String> pieces = spoiled.stream().filter(BenchReport::piece).toList();
    return pieces.isEmpty()
        ? first()
        : PileChooser.setOut(
            bare.withReport(new Report(List.of(), List.of(), pieces)), Shapes::named);
  }

  private static Optional<String> pieceOf(FromStock plan, String stone) {
    return plan.taken().stream()
        .filter(t -> t.stone().equals(stone))
        .map(FromStock.Taken::piece)
        .findFirst();
  }

  private Optional<HeadLayout> headOf(FromStock plan, Opening o) {
    int i = job.openings().indexOf(o);
    return i < plan.solutions().size() && plan.solutions().get(i) instanceof Solution.Solved s
        ? Optional.of(s.head())
        : Optional.empty();
  }

  private Opening opening(String mark) {
    return job.openings().stream().filter(o -> o.mark().equals(mark)).findFirst().orElseThrow();
  }
}
