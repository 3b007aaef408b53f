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
import java.io.ByteArrayOutputStream;
import java.io.IOException;
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

/** Prints all outputs of a job into memory; bundles at the same time, each by itself. */
record OutputWriter(
    ShopWork work,
    SheetFrame frame,
    byte[] jobFile,
    Consumer<String> notes,
    Consumer<String> steps) {
  /** What one opening has sheets of its own in. */
  private static final Set<Bundle> OWN = EnumSet.of(Bundle.BENCH, Bundle.WALL, Bundle.FULL_SIZE);

  /**
   * From so many openings on bundles are composed one after the other: the pages of two at once
   * take more than half a gigabyte for 300 openings.
   */
  private static final int MANY = 50;

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

  private interface Printing {
    byte[] print() throws IOException;
  }

  /**
   * The outputs wanted, by file name; where all are, the overview of them too. Each bundle is
   * composed once, for its file and for its pictures.
   *
   * @param opening the one opening whose own sheets are wanted, or empty for the whole set
   */
  Map<String, byte[]> print(Predicate<Output> wanted, String opening) throws IOException {
    return opening.isEmpty() ? print(wanted) : ofOne(wanted, opening);
  }

  /** The pages of one opening in the bundles that have some, and its elevation. */
  private Map<String, byte[]> ofOne(Predicate<Output> wanted, String opening) throws IOException {
    Map<String, Printing> jobs = new LinkedHashMap<>();
    String seed = hash(jobFile) + opening;
    for (Bundle bundle : OWN) {
      if (wanted.test(Output.valueOf(bundle.name()))) {
        jobs.put(
            bundle.word() + "-" + opening + ".pdf",
            () ->
                pdf(
                    OpeningPages.of(
                        PrintFault.unless(work, SheetBook.compose(work, bundle, frame, notes)),
                        opening,
                        work.job().openings().stream().map(Opening::mark).toList()),
                    seed));
      }
    }
    work.heads().stream()
        .filter(h -> h.layout().opening().mark().equals(opening))
        .forEach(h -> elevation(h, wanted, jobs));
    return all(jobs);
  }

  private void elevation(HeadWork head, Predicate<Output> wanted, Map<String, Printing> jobs) {
    String name = "elevation-" + head.layout().opening().mark();
    if (wanted.test(Output.SVG)) {
      jobs.put(name + ".svg", () -> svg(head));
    }
    if (wanted.test(Output.PNG)) {
      jobs.put(name + ".png", () -> PictureRenderer.png(svg(head)));
    }
  }

  private Map<String, byte[]> print(Predicate<Output> wanted) throws IOException {
    boolean everything =
        Arrays.stream(Output.values()).allMatch(o -> o == Output.PNG || wanted.test(o));
    Map<Bundle, byte[]> pictures = new ConcurrentHashMap<>();
    Map<String, Printing> jobs = new LinkedHashMap<>();
    String seed = hash(jobFile);
    Words words = Words.of(work.job().language().word());
    for (Bundle bundle : Bundle.values()) {
      if (wanted.test(Output.valueOf(bundle.name()))) {
        jobs.put(
            bundle.word() + ".pdf",
            () -> {
              PageSet set = PrintFault.unless(work, SheetBook.compose(work, bundle, frame, notes));
              if (everything) {
                pictures.put(bundle, BundlePictures.of(set, words));
              }
              return pdf(set, seed);
            });
      }
    }
    work.heads().forEach(h -> elevation(h, wanted, jobs));
    if (wanted.test(Output.CSV)) {
      jobs.put("cut-list.csv", () -> utf8(CutListCsv.write(work)));
      jobs.put("order-list.csv", () -> utf8(OrderListCsv.write(work)));
    }
    if (wanted.test(Output.JSON)) {
      jobs.put("layout.json", () -> utf8(LayoutJson.write(work)));
    }
    Map<String, byte[]> done = all(jobs);
    if (everything) {
      List<byte[]> parts = onScreen().stream().map(pictures::get).toList();
      Page openings = PicturePage.of(work);
      byte[] picture = SvgRenderer.inline(openings, openings.title());
      done.put(OVERVIEW, Overview.write(work, picture, List.copyOf(done.keySet()), parts));
    }
    return done;
  }

  private Map<String, byte[]> all(Map<String, Printing> jobs) throws IOException {
    ExecutorService hands =
        Executors.newFixedThreadPool(
            work.heads().size() >= MANY
                ? 1
                : Math.max(1, Math.min(jobs.size(), Runtime.getRuntime().availableProcessors())));
    try {
      Map<String, Future<byte[]>> running = new LinkedHashMap<>();
      jobs.forEach((name, job) -> running.put(name, hands.submit(job::print)));
      Map<String, byte[]> done = new TreeMap<>();
      for (var e : running.entrySet()) {
        steps.accept("drawing " + e.getKey() + ", " + (done.size() + 1) + " of " + running.size());
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

  private static byte[] pdf(PageSet set, String seed) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
    PdfRenderer.render(set, seed + set.bundle().word(), out);
    return out.toByteArray();
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
