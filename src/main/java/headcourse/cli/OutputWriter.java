package headcourse.cli;

import headcourse.audit.PrintFault;
import headcourse.bench.HeadWork;
import headcourse.cli.Arguments.Output;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.export.BundlePictures;
import headcourse.export.CutListCsv;
import headcourse.export.LayoutJson;
import headcourse.export.OrderListCsv;
import headcourse.export.Overview;
import headcourse.job.Bundle;
import headcourse.job.Opening;
import headcourse.render.pdf.PdfRenderer;
import headcourse.render.png.PictureRenderer;
import headcourse.render.svg.SvgRenderer;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.elevation.ElevationSvg;
import headcourse.sheet.picture.PicturePage;
import headcourse.text.Words;
import headcourse.work.ShopWork;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Prints all outputs of a job. Bundles are printed at the same time, each by itself, and kept in
 * memory; those of many openings two at a time, a page at a time, and kept on the disk.
 *
 * @param many from so many openings on memory matters more than time, and pictures are too many
 */
record OutputWriter(
    ShopWork work,
    SheetFrame frame,
    byte[] jobFile,
    Scratch scratch,
    int many,
    Consumer<String> notes,
    Consumer<String> steps) {
  /** What one opening has sheets of its own in. */
  private static final Set<Bundle> OWN = EnumSet.of(Bundle.BENCH, Bundle.WALL, Bundle.FULL_SIZE);

  private static final int MANY = 50;

  /** How many bundles of a large job are in the making at a time, on however many cores. */
  private static final int AT_ONCE = 2;

  OutputWriter(
      ShopWork work,
      SheetFrame frame,
      byte[] jobFile,
      Scratch scratch,
      Consumer<String> notes,
      Consumer<String> steps) {
    this(work, frame, jobFile, scratch, MANY, notes, steps);
  }

  /** The file that shows all others. */
  private static final String OVERVIEW = "index.html";

  // In the order in which they are looked at away from the desk: the wall first, outlines last.
  private static List<Bundle> onScreen() {
    List<Bundle> all = new ArrayList<>(Arrays.asList(Bundle.values()));
    all.removeAll(List.of(Bundle.WALL, Bundle.FULL_SIZE));
    all.add(0, Bundle.WALL);
    all.add(Bundle.FULL_SIZE);
    return all;
  }

  /**
   * The outputs wanted, by file name; where all are, the overview of them too. Each bundle is
   * composed once, for its file and for its pictures.
   *
   * @param opening the one opening whose own sheets are wanted, or empty for the whole set
   */
  Map<String, Content> print(Predicate<Output> wanted, String opening) throws IOException {
    return opening.isEmpty() ? print(wanted) : ofOne(wanted, opening);
  }

  /** The pages of one opening in the bundles that have some, and its elevation. */
  private Map<String, Content> ofOne(Predicate<Output> wanted, String opening) throws IOException {
    Map<String, Scratch.Printing> jobs = new LinkedHashMap<>();
    String seed = hash(jobFile) + opening;
    for (Bundle bundle : OWN) {
      if (wanted.test(Output.valueOf(bundle.name()))) {
        jobs.put(
            bundle.word() + "-" + opening + ".pdf",
            out ->
                pdf(
                    OpeningPages.of(
                        PrintFault.unless(work, SheetBook.compose(work, bundle, frame, notes)),
                        opening,
                        work.job().openings().stream().map(Opening::mark).toList()),
                    seed,
                    out));
      }
    }
    work.heads().stream()
        .filter(h -> h.layout().opening().mark().equals(opening))
        .forEach(h -> elevation(h, wanted, jobs));
    return all(jobs);
  }

  private void elevation(
      HeadWork head, Predicate<Output> wanted, Map<String, Scratch.Printing> jobs) {
    String name = "elevation-" + head.layout().opening().mark();
    if (wanted.test(Output.SVG)) {
      jobs.put(name + ".svg", out -> out.write(svg(head)));
    }
    if (wanted.test(Output.PNG)) {
      jobs.put(name + ".png", out -> out.write(PictureRenderer.png(svg(head))));
    }
  }

  private Map<String, Content> print(Predicate<Output> wanted) throws IOException {
    boolean everything =
        Arrays.stream(Output.values()).allMatch(o -> o == Output.PNG || wanted.test(o));
    Map<Bundle, byte[]> pictures = new ConcurrentHashMap<>();
    Map<String, Scratch.Printing> jobs = new LinkedHashMap<>();
    String seed = hash(jobFile);
    Words words = Words.of(work.job().language().word());
    for (Bundle bundle : Bundle.values()) {
      if (wanted.test(Output.valueOf(bundle.name()))) {
        jobs.put(
            bundle.word() + ".pdf",
            out -> {
              PageSet set = PrintFault.unless(work, SheetBook.compose(work, bundle, frame, notes));
              if (everything) {
                pictures.put(bundle, BundlePictures.of(set, words, !large()));
              }
              pdf(set.once(), seed, out);
            });
      }
    }
    work.heads().forEach(h -> elevation(h, wanted, jobs));
    if (wanted.test(Output.CSV)) {
      jobs.put("cut-list.csv", out -> out.write(utf8(CutListCsv.write(work))));
      jobs.put("order-list.csv", out -> out.write(utf8(OrderListCsv.write(work))));
    }
    if (wanted.test(Output.JSON)) {
      jobs.put("layout.json", out -> out.write(utf8(LayoutJson.write(work))));
    }
    Map<String, Content> done = all(jobs);
    if (everything) {
      List<byte[]> parts = onScreen().stream().map(pictures::get).toList();
      Page openings = PicturePage.of(work);
      byte[] picture = SvgRenderer.inline(openings, openings.title());
      byte[] all = Overview.write(work, picture, List.copyOf(done.keySet()), parts, !large());
      done.put(OVERVIEW, Scratch.of(all));
    }
    return done;
  }

  private boolean large() {
    return work.heads().size() >= many;
  }

  private Map<String, Content> all(Map<String, Scratch.Printing> jobs) throws IOException {
    int cores = Runtime.getRuntime().availableProcessors();
    ExecutorService hands =
        Executors.newFixedThreadPool(Math.max(1, Math.min(large() ? AT_ONCE : jobs.size(), cores)));
    try {
      Map<String, Future<Content>> running = new LinkedHashMap<>();
      jobs.forEach(
          (name, job) ->
              running.put(
                  name, hands.submit(() -> large() ? scratch.onDisk(job) : Scratch.inMemory(job))));
      Map<String, Content> done = new TreeMap<>();
      for (var e : running.entrySet()) {
        step(e.getKey(), done.size() + 1, running.size());
        done.put(e.getKey(), e.getValue().get());
      }
      return done;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw io;
      }
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    } finally {
      hands.shutdownNow();
    }
  }

  private void step(String name, int number, int of) {
    steps.accept("drawing " + name + ", " + number + " of " + of);
  }

  private void pdf(PageSet set, String seed, OutputStream out) throws IOException {
    String bundle = set.bundle().word();
    String pages = " of " + set.pages().size() + " pages";
    PdfRenderer.render(
        set,
        seed + bundle,
        out,
        large() ? i -> steps.accept("drawing " + bundle + ".pdf, " + i + pages) : i -> {});
  }

  private byte[] svg(HeadWork head) {
    return SvgRenderer.render(ElevationSvg.page(work, head), head.layout().opening().mark());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** FNV-1a, 64 bits (draft-eastlake-fnv), from both ends: only to tell one job from another. */
  static String hash(byte[] bytes) {
    long there = 0xcbf29ce484222325L;
    long back = there;
    for (int i = 0; i < bytes.length; i++) {
      there = (there ^ bytes[i] & 0xff) * 0x100000001b3L;
      back = (back ^ bytes[bytes.length - 1 - i] & 0xff) * 0x100000001b3L;
    }
    return Long.toHexString(there) + "-" + Long.toHexString(back);
  }
}
