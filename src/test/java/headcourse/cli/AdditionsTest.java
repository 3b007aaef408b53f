package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.layout.HeadShape;
import headcourse.layout.curved.ShallowHead;
import headcourse.rules.ChalkLineRule;
import headcourse.sheet.NotepadSheet;
import headcourse.sheet.SheetComposer;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A shape, a rule and a sheet that the program has never heard of, added as the contributor's guide
 * says, each by its file and one line: a process that finds them on its class path draws with them.
 */
class AdditionsTest {
  private static final String JOB =
      """
      units: in
      stone: {density: 138 lb/ft3, thickness: 1 1/4}
      openings: [{mark: A1, width: 4', head: {shape: shallow, height: 9}}]
      """;

  @TempDir Path folder;
  private Path added;

  @BeforeEach
  void add() throws IOException {
    added = Files.createDirectories(folder.resolve("added"));
    service(HeadShape.class.getName(), ShallowHead.class);
    service("headcourse.rules.Rule", ChalkLineRule.class);
    service(SheetComposer.class.getName(), NotepadSheet.class);
    words("en", "added.chalk-line={0} wide: chalk its outline", "added.notepad=Notes of the day");
    words("es", "added.chalk-line={0} de ancho: trace", "added.notepad=Notas del día");
    Files.writeString(folder.resolve("a.yaml"), JOB);
  }

  private void service(String of, Class<?> provider) throws IOException {
    Path services = Files.createDirectories(added.resolve("META-INF/services"));
    Files.writeString(services.resolve(of), provider.getName() + "\n");
  }

  private void words(String language, String... lines) throws IOException {
    Path words = Files.createDirectories(added.resolve("headcourse/words/" + language));
    Files.write(words.resolve("added.properties"), List.of(lines));
  }

  private String run(int status, String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    command.add(added + File.pathSeparator + System.getProperty("java.class.path"));
    command.add("headcourse.cli.Main");
    command.addAll(List.of(args));
    Path out = folder.resolve("out.txt");
    Process p =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    assertEquals(status, p.waitFor(), () -> read(out));
    return read(out);
  }

  private static String read(Path p) {
    try {
      return Files.readString(p);
    } catch (IOException e) {
      return e.toString();
    }
  }

  private String text(String bundle) throws IOException {
    Path pdf = folder.resolve("out/a/" + bundle + ".pdf");
    try (PDDocument d = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(d);
    }
  }

  @Test
  void shapeRuleAndSheetAreDrawnWith() throws Exception {
    String said = run(Main.FINDINGS, "draw", "a.yaml");
    assertTrue(said.contains("[chalk-line] A1: 48\" wide: chalk its outline"), said);
    assertTrue(text("contractor").contains("shallow"), text("contractor"));
    assertTrue(text("wall").contains("Notes of the day"), text("wall"));
    assertTrue(read(folder.resolve("out/a/layout.json")).contains("\"shape\": \"shallow\""));
    assertTrue(run(Main.DONE, "rules").contains("chalk-line"));
  }

  @Test
  void itsThresholdCanBeSetAndItsFindingTakenOnOneself() throws Exception {
    Files.writeString(folder.resolve("a.yaml"), JOB + "limits: {chalk-line: 60}\nlanguage: es\n");
    String said = run(Main.DONE, "draw", "a.yaml");
    assertTrue(!said.contains("chalk-line"), said);
    assertTrue(text("wall").contains("Notas del día"), text("wall"));
    Files.writeString(
        folder.resolve("a.yaml"),
        JOB + "accept: [{rule: chalk-line, reason: string line is up}]\n");
    run(Main.DONE, "check", "a.yaml");
  }

  /**
   * Words with every letter exchanged for a Greek one: what is still Latin was not in a word list.
   */
  private static String disguised(String line) {
    int at = line.indexOf('=') + 1;
    StringBuilder out = new StringBuilder(line.substring(0, at));
    String text = line.substring(at);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      out.append(c >= 'a' && c <= 'z' ? (char) (GREEK + (c - 'a') % 24) : c);
    }
    return out.toString();
  }

  private static final char GREEK = '\u03b1';

  @Test
  void aLanguageIsAFolderAndALine() throws Exception {
    Path all = Path.of("src/main/resources/headcourse/words/en");
    try (Stream<Path> files = Files.list(all)) {
      for (Path f : files.toList()) {
        List<String> lines = Files.readAllLines(f).stream().map(AdditionsTest::disguised).toList();
        Path to = Files.createDirectories(added.resolve("headcourse/words/el"));
        Files.write(to.resolve(f.getFileName()), lines);
      }
    }
    words("el", disguised("added.chalk-line={0} wide"), disguised("added.notepad=Notes"));
    Files.writeString(added.resolve("headcourse/words/languages"), "el\n");
    for (String job : List.of("granary-store", "chapel-arches")) {
      String text = Files.readString(Path.of("jobs", job + ".yaml"));
      Files.writeString(
          folder.resolve("a.yaml"),
          text.replaceAll("(?m)^(language|frame|revises|pile):.*\n", "") + "language: el\n");
      String said = run(Main.FINDINGS, "draw", "a.yaml");
      Set<String> latin = new TreeSet<>();
      for (String bundle : List.of("bench", "wall", "contractor", "full-size")) {
        try (PDDocument d = Loader.loadPDF(folder.resolve("out/a/" + bundle + ".pdf").toFile())) {
          assertEquals("el", d.getDocumentCatalog().getLanguage(), said);
        }
        latin.addAll(latin(text(bundle)));
      }
      latin.removeAll(latin(text + " notes of the added sheet"));
      assertEquals(Set.of(), latin, job + "\n" + context(latin));
    }
  }

  private String context(Set<String> words) throws IOException {
    StringBuilder out = new StringBuilder();
    for (String bundle : List.of("bench", "wall", "contractor", "full-size")) {
      text(bundle)
          .lines()
          .filter(l -> latin(l).stream().anyMatch(words::contains))
          .limit(9)
          .forEach(l -> out.append(bundle).append(": ").append(l).append('\n'));
    }
    return out.toString();
  }

  private static Set<String> latin(String text) {
    Set<String> all = new TreeSet<>();
    // A title stays as it was published; it follows its publisher's letters.
    String ours = text.replaceAll("\\b(BIA|OSHA|NIOSH|TMS|NCMA|IRC) .*", "");
    Matcher m = Pattern.compile("[a-z]{3,}").matcher(ours);
    while (m.find()) {
      all.add(m.group());
    }
    return all;
  }
}
