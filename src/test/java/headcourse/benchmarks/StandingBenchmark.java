package headcourse.benchmarks;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.statics.Standing;
import headcourse.statics.StandingFinder;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
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

/** How long a head of 41 stones takes to be read as if it were solid, warm: under 20 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class StandingBenchmark {
  /** Upright stones, or a semicircle. */
  @Param({"soldier", "semicircular"})
  public String shape;

  private Job job;
  private HeadLayout head;

  /** Sets the head out. */
  @Setup
  public void make() {
    JobMaker m = JobMaker.one();
    JobMaker.OpeningMaker o = m.first();
    o.shape = shape;
    o.width = Length.inches(shape.equals("soldier") ? 280 : 160);
    o.target = Length.inches(7);
    o.min = Length.inches(4);
    o.max = Length.inches(9);
    o.eachSide = 20;
    if (!shape.equals("soldier")) {
      // Its upper width follows from the joints.
      o.key = new HeadSpec.Key(o.key.bottom(), null, Length.ZERO, Length.ZERO, Length.ZERO);
    }
    job = m.make();
    head =
        ((Solution.Solved) Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0)))
            .head();
    if (head.stones().size() != 41) {
      throw new IllegalStateException(head.stones().size() + " stones");
    }
  }

  /** Reads it. */
  @Benchmark
  public Standing standing() {
    return StandingFinder.of(job, head);
  }

  /** Runs it by itself. */
  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(StandingBenchmark.class.getName()).build()).run();
  }
}
