package headcourse.cli;

import headcourse.audit.PrintFault;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.yaml.JobReader;
import headcourse.layout.shapes.Shapes;
import headcourse.mutation.Mutator;
import headcourse.mutation.YardMutator;
import headcourse.rules.RuleBook;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.testing.JobYaml;
import headcourse.testing.RandomArches;
import headcourse.testing.RandomJobs;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;

/**
 * Tries very many job files that a careless or a hostile hand would write, and says what fell over:
 * an exception, a complaint without its place, a run of more than ten seconds, a job that {@code
 * check} takes and {@code draw} does not, or that {@code explain} or {@code choose} break on.
 * Arguments: how many, the first seed, seconds at most, on how many cores, and one in how many of
 * those that can be drawn has its sheets composed.
 */
public final class MutationCampaign {
  /** Where no argument says: one in so many of those that can be drawn has its sheets composed. */
  private static final int SHEETS = 6;

  /** One in so many of all goes through both commands as a user runs them. */
  private static final int COMMANDS = 60;

  /** One in so many of those is asked, too, why it is so and what else there is. */
  private static final int ASKED = 4;

  /** One in so many has a yard's list changed, of a job as it stands. */
  private static final int YARDS = 23;

  private static final String YARD = "sheep-wash-yard.csv";
  private static final long LONGEST = 10_000_000_000L;
  private static final Path KEPT = Path.of("target", "mutation");

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final Mutator mutator;
  private final YardMutator yards;
  private final String ofYard;
  private final byte[] whole;
  private final Path folder;
  private final Map<String, Integer> kinds = new TreeMap<>();
  private final Map<String, Integer> ends = new TreeMap<>();
  private final Map<String, Integer> faults = new TreeMap<>();
  private final Map<String, Integer> millis = new TreeMap<>();
  private final AtomicLong seeds;
  private final int sheets;
  private long tried;
  private long slowest;
  private long slowestSeed;
  private long largest;
  private volatile long seed;
  private volatile long began;
  private volatile String text = "";
  private volatile byte[] yard;
  private volatile Thread worker;

  /**
   * A lane of it.
   *
   * @param seeds where all lanes take their next seed
   */
  private MutationCampaign(List<String> files, AtomicLong seeds, int sheets) throws IOException {
    this.seeds = seeds;
    this.sheets = sheets;
    mutator = new Mutator(files);
    whole = Files.readAllBytes(Path.of("jobs", YARD));
    yards = new YardMutator(new String(whole, StandardCharsets.UTF_8));
    // Fewer steps than the job's own: what is looked for is not how good the answer is.
    ofYard =
        Files.readString(Path.of("jobs/sheep-wash.yaml")).replaceAll("(?m)^steps:.*$", "")
            + "\nsteps: 20000\n";
    folder = Files.createTempDirectory("mutation");
    Files.createDirectories(KEPT);
    try (Stream<Path> jobs = Files.list(Path.of("jobs"))) {
      for (Path p : jobs.filter(f -> f.toString().endsWith(".csv")).toList()) {
        Files.copy(p, folder.resolve(p.getFileName()));
      }
    }
  }

  /** The files that are changed: those of the demo jobs and of the tests, and random ones. */
  static List<String> files() throws IOException {
    List<String> files = new ArrayList<>();
    for (String from : List.of("jobs", "src/test/resources/headcourse/job-cases")) {
      try (Stream<Path> all = Files.list(Path.of(from))) {
        for (Path p : all.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
          files.add(Files.readString(p));
        }
      }
    }
    files.add(Files.readString(Path.of("src/main/resources/headcourse/new-job.yaml")));
    for (long seed = 0; seed < 120; seed++) {
      files.add(JobYaml.of(RandomJobs.flat(seed)));
      files.add(JobYaml.of(RandomArches.job(seed)));
    }
    return files;
  }

  /** Tries some and says whether all held. */
  static boolean holds(long inputs, long first) throws IOException, InterruptedException {
    MutationCampaign campaign = new MutationCampaign(files(), new AtomicLong(first), SHEETS);
    campaign.run(first + inputs, Long.MAX_VALUE / 2_000_000_000L);
    return campaign.faults.isEmpty();
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException, InterruptedException {
    long most = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
    long first = args.length > 1 ? Long.parseLong(args[1]) : 1;
    long seconds = args.length > 2 ? Long.parseLong(args[2]) : Long.MAX_VALUE / 2_000_000_000L;
    int cores = args.length > 3 ? Integer.parseInt(args[3]) : 2;
    int sheets = args.length > 4 ? Integer.parseInt(args[4]) : SHEETS;
    long start = System.nanoTime();
    AtomicLong seeds = new AtomicLong(first);
    List<MutationCampaign> lanes = new ArrayList<>();
    List<Thread> running = new ArrayList<>();
    for (int i = 0; i < cores; i++) {
      MutationCampaign lane = new MutationCampaign(files(), seeds, sheets);
      Thread t = new Thread(() -> lane.run(first + most, seconds));
      lanes.add(lane);
      running.add(t);
      t.start();
    }
    for (Thread t : running) {
      t.join();
    }
    MutationCampaign all = lanes.get(0);
    lanes.subList(1, cores).forEach(all::add);
    System.out.print("in all: ");
    all.report(System.nanoTime() - start);
    System.exit(all.faults.isEmpty() ? 0 : 1);
  }

  private void add(MutationCampaign o) {
    tried += o.tried;
    largest = Math.max(largest, o.largest);
    slowestSeed = o.slowest > slowest ? o.slowestSeed : slowestSeed;
    slowest = Math.max(slowest, o.slowest);
    o.kinds.forEach((k, n) -> kinds.merge(k, n, Integer::sum));
    o.ends.forEach((k, n) -> ends.merge(k, n, Integer::sum));
    o.millis.forEach((k, n) -> millis.merge(k, n, Integer::sum));
    o.faults.forEach((k, n) -> faults.merge(k, n, Integer::sum));
  }

  private void run(long end, long seconds) {
    long start = System.nanoTime();
    while (seeds.get() < end && System.nanoTime() - start < seconds * 1_000_000_000L) {
      Thread t = new Thread(null, () -> work(end, start, seconds), "campaign", 1 << 20);
      t.setDaemon(true);
      worker = t;
      t.start();
      try {
        watch(t);
      } catch (InterruptedException e) {
        return;
      }
    }
    report(System.nanoTime() - start);
  }

  /** Until the worker ends, or is beyond saving. */
  private void watch(Thread t) throws InterruptedException {
    while (t.isAlive()) {
      t.join(1000);
      long used = threads.getThreadCpuTime(t.getId()) - began;
      if (t.isAlive() && used > LONGEST * 3) {
        StringBuilder stack = new StringBuilder("endless");
        for (StackTraceElement e : t.getStackTrace()) {
          stack.append("\n    ").append(e);
        }
        fault("endless " + place(t.getStackTrace()), stack.toString());
        worker = null;
        return;
      }
    }
  }

  private void work(long end, long start, long seconds) {
    Thread me = Thread.currentThread();
    while (worker == me && System.nanoTime() - start < seconds * 1_000_000_000L) {
      long next = seeds.getAndIncrement();
      if (next >= end) {
        return;
      }
      seed = next;
      boolean list = seed % YARDS == 5;
      yard = list ? yards.next(seed) : whole;
      Mutator.Mutated m = list ? new Mutator.Mutated("yard", ofYard) : mutator.next(seed);
      text = m.text();
      began = threads.getCurrentThreadCpuTime();
      String how;
      try {
        how = one(m.text());
      } catch (Throwable e) {
        how = "fell over";
        StringBuilder stack = new StringBuilder(String.valueOf(e));
        for (StackTraceElement s : e.getStackTrace()) {
          stack.append("\n    ").append(s);
        }
        String what =
            e instanceof PrintFault ? e.getMessage().replaceAll("[\\d./'\" -]+", "#") : "";
        fault(
            e.getClass().getSimpleName() + " " + place(e.getStackTrace()) + what, stack.toString());
      }
      if (worker != me) {
        return;
      }
      long took = threads.getCurrentThreadCpuTime() - began;
      if (took > LONGEST / 2) {
        fault("slow " + took / 1_000_000_000, "took " + took / 1_000_000 + " ms: " + how);
      }
      slowest(took);
      largest = Math.max(largest, m.text().length());
      tried++;
      kinds.merge(m.kind(), 1, Integer::sum);
      ends.merge(how, 1, Integer::sum);
      millis.merge(how, (int) (took / 1_000_000), Integer::sum);
      if (tried % 5000 == 0) {
        report(System.nanoTime() - start);
      }
    }
  }

  private static String place(StackTraceElement[] stack) {
    return Arrays.stream(stack)
        .filter(s -> s.getClassName().startsWith("headcourse"))
        .limit(2)
        .map(s -> s.getFileName() + ":" + s.getLineNumber())
        .reduce((a, b) -> a + "<" + b)
        .orElse("?");
  }

  private synchronized void fault(String what, String more) {
    String name = what.replaceAll("[^\\w.-]+", "_");
    name = name.substring(0, Math.min(90, name.length()));
    if (faults.merge(name, 1, Integer::sum) <= 3) {
      System.out.println("FAULT " + name + " (seed " + seed + ")");
      try {
        Path kept = KEPT.resolve(name + "-" + seed + ".yaml");
        Files.writeString(kept, text);
        if (yard != whole) {
          Files.write(KEPT.resolve(name + "-" + seed + ".csv"), yard);
        }
        Files.writeString(KEPT.resolve(name + "-" + seed + ".txt"), more + "\n");
      } catch (IOException e) {
        System.out.println(e);
      }
    }
  }

  private Optional<byte[]> beside(String name) {
    return name.equals(YARD) ? Optional.of(yard) : new JobFile(folder, "job.yaml").beside(name);
  }

  private String one(String job) throws IOException {
    byte[] bytes = job.getBytes(StandardCharsets.UTF_8);
    Outcome<Job> read =
        JobReader.read("job.yaml", bytes, Shapes.definitions(), RuleBook.limits(), this::beside);
    placed(read.diagnostics());
    if (read.value().isEmpty()) {
      return "2, as read";
    }
    Job checked = read.value().get();
    Outcome<ShopWork> done = WorkUp.of(checked, this::beside);
    placed(done.diagnostics());
    if (done.value().isEmpty()) {
      return "2, as set out";
    }
    ShopWork work = done.value().get();
    if (seed % COMMANDS == 0) {
      commands(bytes);
    } else if (seed % sheets == 0) {
      Outcome<SheetFrame> frame = Frames.of(checked, new JobFile(folder, "job.yaml"));
      placed(frame.diagnostics());
      if (frame.value().isEmpty()) {
        return "2, its frame";
      }
      for (Bundle b : Bundle.values()) {
        PrintFault.unless(work, SheetBook.compose(work, b, frame.value().get()));
      }
      return (work.errorsStand() ? "1" : "0") + ", with sheets";
    }
    return work.errorsStand() ? "1" : "0";
  }

  private void commands(byte[] bytes) throws IOException {
    Files.write(folder.resolve("job.yaml"), bytes);
    Files.write(folder.resolve(YARD), yard);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    int check = timed("check", out);
    int draw = timed("draw", out);
    if (check != draw || draw == Main.MACHINE) {
      fault("check " + check + " draw " + draw, said.toString(StandardCharsets.UTF_8));
    }
    if (seed % (COMMANDS * ASKED) == 0) {
      for (String command : List.of("explain", "choose")) {
        int end = timed(command, out);
        if (end == Main.MACHINE) {
          fault(command + " " + end, said.toString(StandardCharsets.UTF_8));
        }
      }
    }
  }

  /** One command, which is one run however many are tried with a job. */
  private int timed(String command, PrintStream out) {
    began = threads.getCurrentThreadCpuTime();
    int end = Main.run(List.of(command, "job.yaml"), folder, out, out);
    long took = threads.getCurrentThreadCpuTime() - began;
    if (took > LONGEST / 2) {
      fault(command + " slow " + took / 1_000_000_000, "took " + took / 1_000_000 + " ms");
    }
    slowest(took);
    began = threads.getCurrentThreadCpuTime();
    return end;
  }

  private void slowest(long took) {
    if (took > slowest) {
      slowest = took;
      slowestSeed = seed;
    }
  }

  private void placed(List<Diagnostic> said) {
    for (Diagnostic d : said) {
      if (d.severity() == Severity.ERROR
          && (d.span() == null || d.span().line() < 1 || d.span().column() < 1)) {
        fault("no place " + d.message().replaceAll("[^a-z ]", ""), d.toString());
      }
    }
  }

  private synchronized void report(long nanos) {
    System.out.println(
        tried
            + " tried, "
            + Math.round(tried / (nanos / 1e9))
            + " a second; slowest "
            + slowest / 1_000_000
            + " ms (seed "
            + slowestSeed
            + "), largest "
            + largest
            + " bytes; by kind "
            + kinds
            + "; by end "
            + ends
            + "; milliseconds by end "
            + millis
            + "; faults "
            + faults);
  }
}
