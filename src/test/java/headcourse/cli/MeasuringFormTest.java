package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.PaperSizes;
import headcourse.sheet.form.FormField;
import headcourse.sheet.form.MeasuringForm;
import headcourse.testing.PageInspector;
import headcourse.text.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** The blank measuring sheet and the job file have the same names in the same order. */
class MeasuringFormTest {
  private static final Path NEW = Path.of("src/main/resources/headcourse/new-job.yaml");

  @TempDir Path folder;
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    return Main.run(
        List.of(args),
        folder,
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  /** Where each key of a new job stands, those that wait behind a # too; by a reader of its own. */
  private static List<String> paths() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String line : Files.readAllLines(NEW)) {
      boolean waits = line.matches(" {0,8}# *(- )?([a-z-]+: .*|[a-z-]+:|- .*)");
      all.append(waits ? line.replaceFirst("# ", "") : line.matches(" *#.*") ? "" : line);
      all.append('\n');
    }
    var parser = new ParserImpl(new StreamReader(all.toString()), new LoaderOptions());
    Node root = new Composer(parser, new Resolver(), new LoaderOptions()).getSingleNode();
    TreeMap<Integer, String> found = new TreeMap<>();
    walk(root, "", found);
    return List.copyOf(found.values());
  }

  private static void walk(Node node, String path, TreeMap<Integer, String> found) {
    if (node instanceof MappingNode map) {
      for (NodeTuple t : map.getValue()) {
        String key = ((ScalarNode) t.getKeyNode()).getValue();
        String at = path.isEmpty() ? key : path + "." + key;
        found.put(t.getKeyNode().getStartMark().getIndex(), at);
        walk(t.getValueNode(), at, found);
      }
    } else if (node instanceof SequenceNode list && !list.getValue().isEmpty()) {
      walk(list.getValue().get(0), path + "[0]", found);
    }
  }

  @Test
  void boxesAreNamedAsTheKeysOfTheJobFileAndStandInItsOrder() throws IOException {
    List<String> file = paths();
    List<String> boxes =
        FormField.ALL.stream().map(FormField::path).filter(p -> !p.isEmpty()).toList();
    List<String> inFile = file.stream().filter(boxes::contains).toList();
    assertEquals(inFile, boxes);
    for (FormField f : FormField.ALL) {
      String last = f.path().substring(f.path().lastIndexOf('.') + 1);
      assertTrue(f.name().endsWith(last), f.name());
    }
    assertTrue(boxes.size() > 30, boxes::toString);
  }

  /** What is written in the boxes is a job, key by key; values are ours. */
  @Test
  void aFilledSheetIsAJob() throws IOException {
    Files.writeString(
        folder.resolve("barn.yaml"),
        """
        units: in
        job: {number: 7, title: Barn, site: Fordham, client: A. Reed, mason: me, date: 2026-05-04}
        stone: {name: grey, thickness: 1 1/4}
        wall: {sheathing: 1/2, framing: 3 1/2, courses: [8, 16], backing: [{to: 9, kind: wood}]}
        openings:
          - mark: D1
            label: door
            count: 1
            at: 12'
            level: 7'
            width: 5'
            height: 6' 8"
            sill: 0
            ground: 4
            reveal: 4
            wall-left: 3'
            wall-right: 3'
            measured:
              width: {head: 60 1/8, middle: 60, sill: 59 7/8}
              soffit: {left: 0, centre: 1/16, right: 0}
              plumb: {left: 1/8, right: 0}
              centre-off: 0
        """);
    String text = Files.readString(folder.resolve("barn.yaml"));
    for (FormField f : FormField.ALL) {
      String last = f.path().substring(f.path().lastIndexOf('.') + 1);
      assertTrue(last.isEmpty() || text.contains(last + ":"), last);
    }
    int status = run("check", "barn.yaml");
    assertTrue(status <= Main.FINDINGS, () -> err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void onePageInBothLanguagesWithEveryBox() throws IOException {
    assertEquals(0, run("form", "form.pdf", "--paper", "a4"));
    try (var document = Loader.loadPDF(folder.resolve("form.pdf").toFile())) {
      assertEquals(1, document.getNumberOfPages());
      String text = new PDFTextStripper().getText(document);
      for (FormField f : FormField.ALL) {
        assertTrue(text.contains(f.name()), f.name());
        for (String tag : List.of("en", "es")) {
          String words = Words.of(tag).say("form." + f.words());
          assertTrue(text.contains(words), words);
        }
      }
    }
    byte[] first = Files.readAllBytes(folder.resolve("form.pdf"));
    assertEquals(2, run("form", "form.pdf"));
    assertEquals(first.length, Files.size(folder.resolve("form.pdf")));
    assertEquals(2, run("form", "a.pdf", "b.pdf"));
    assertFalse(Files.exists(folder.resolve("a.pdf")));
  }

  @Test
  void nothingTouchesAndEachNumberIsOnThePictureAndInOneBox() {
    for (String paper : List.of("letter", "a4", "legal", "tabloid")) {
      Page page =
          MeasuringForm.of(PaperSizes.named(paper).orElseThrow(), Words.of("en+es").withTongues())
              .pages()
              .get(0);
      assertEquals(List.of(), PageInspector.faults(page), paper);
    }
    List<Integer> numbers = new ArrayList<>();
    FormField.ALL.stream().map(FormField::place).filter(n -> n > 0).forEach(numbers::add);
    List<String> drawn = new ArrayList<>();
    Page page =
        MeasuringForm.of(PaperSizes.named("a4").orElseThrow(), Words.of("en+es")).pages().get(0);
    page.marks().stream()
        .filter(m -> m instanceof Mark.Label)
        .forEach(m -> drawn.add(((Mark.Label) m).text()));
    for (int i = 0; i < numbers.size(); i++) {
      assertEquals(i + 1, numbers.get(i));
      String number = Integer.toString(i + 1);
      assertTrue(drawn.stream().filter(number::equals).count() >= 2, number);
    }
  }
}
