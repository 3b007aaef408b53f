package headcourse.benchmarks;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * How long one head takes, warm: a 16-ft one is to take less than 5 ms, a 40-ft one less than 50.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class SolveBenchmark {
  /** Width of the opening in feet. */
  @Param({"16", "40"})
  public int feet;

  /** How widths run. */
  @Param({"even", "graded", "mixed"})
  public String rhythm;

  /** Upright, or fanned with a skewback that settles the fan, or what can't be set out. */
  @Param({"soldier", "jack", "refused"})
  public String head;

  private Job job;
  private HeadShape shape;

  /** Makes the job. */
  @Setup
  public void make() {
    JobMaker m = JobMaker.one();
    m.tick = Length.inches(1 / 32.0);
    JobMaker.OpeningMaker o = m.first();
    o.width = Length.inches(12.0 * feet + 1 / 32.0);
    o.rhythm = HeadSpec.Rhythm.valueOf(rhythm.toUpperCase(Locale.ROOT));
    o.step = Length.inches(o.rhythm == HeadSpec.Rhythm.GRADED ? 1 / 32.0 : 0.5);
    o.shape = head.equals("jack") ? "jack" : "soldier";
    if (head.equals("jack")) {
      o.params.put("skewback", Angle.degrees(70));
      o.key = new HeadSpec.Key(Length.inches(8), null, Length.ZERO, Length.ZERO, Length.ZERO);
    }
    if (head.equals("refused")) {
      // The stone over the jamb would have to be wider than any.
      o.clear = Length.inches(4.75);
    }
    job = m.make();
    shape = Shapes.named(o.shape).orElseThrow();
  }

  /** Sets out the head. */
  @Benchmark
  public Solution setOut() {
    return shape.setOut(job, job.openings().get(0));
  }

  /** Runs it by itself. */
  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(SolveBenchmark.class.getName()).build()).run();
  }
}
