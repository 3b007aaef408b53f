package headcourse.benchmarks;

import headcourse.bench.builds.BuildPlan;
import headcourse.bench.builds.Builds;
import headcourse.bench.builds.Plans;
import headcourse.bench.builds.Tally;
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
 * How long 10,000 builds of a head of 27 stones take: warm, less than 50 ms; and the first ever.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.SampleTime, Mode.SingleShotTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class BuildsBenchmark {
  /** What is in the joints. */
  @Param({"dry", "mortar"})
  public String joints;

  /** Whether all stones are cut at one setting, or each at its own. */
  @Param({"true", "false"})
  public boolean alike;

  private BuildPlan plan;

  /** Makes the head. */
  @Setup
  public void make() {
    plan =
        joints.equals("dry")
            ? Plans.dry(13, alike, Plans.ordinary())
            : Plans.mortar(13, alike, Plans.ordinary());
  }

  /** Builds it. */
  @Benchmark
  public Tally build() {
    return Builds.run(plan, 10_000);
  }

  /** Runs it by itself. */
  public static void main(String[] args) throws RunnerException {
    long begin = System.nanoTime();
    Tally first = Builds.run(Plans.dry(13, true, Plans.ordinary()), 10_000);
    System.out.println("first ever: " + (System.nanoTime() - begin) / 1e6 + " ms, " + first);
    new Runner(new OptionsBuilder().include(BuildsBenchmark.class.getName()).build()).run();
  }
}
