package headcourse.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every word on paper stands in every language, and every key that the code says exists. */
class WordsTest {
  private static final Path WORDS = Path.of("src/main/resources/headcourse/words");
  private static final Path CODE = Path.of("src/main/java");
  private static final Pattern VALUE = Pattern.compile("\\{[0-9]}");

  private static Properties load(Path file) throws IOException {
    Properties p = new Properties();
    try (Reader in = Files.newBufferedReader(file)) {
      p.load(in);
    }
    return p;
  }

  private static TreeMap<String, Properties> files(String language) throws IOException {
    TreeMap<String, Properties> all = new TreeMap<>();
    try (Stream<Path> list = Files.list(WORDS.resolve(language))) {
      for (Path f : list.sorted().toList()) {
        all.put(f.getFileName().toString().replace(".properties", ""), load(f));
      }
    }
    return all;
  }

  private static List<String> others() {
    return Languages.tags().stream().filter(t -> !t.equals("en")).toList();
  }

  @Test
  void everyFolderIsALanguage() throws IOException {
    try (Stream<Path> list = Files.list(WORDS)) {
      List<String> folders =
          list.filter(Files::isDirectory).map(p -> p.getFileName().toString()).sorted().toList();
      assertEquals(folders, Languages.tags().stream().sorted().toList());
    }
    assertEquals("en", Languages.tags().get(0));
    assertEquals(List.of("en", "es", "en+es", "es+en"), Languages.choices());
  }

  @Test
  void allLanguagesHaveTheSameKeys() throws IOException {
    TreeMap<String, Properties> en = files("en");
    assertTrue(en.size() > 5, "too few files: " + en.keySet());
    for (String language : others()) {
      TreeMap<String, Properties> other = files(language);
      assertEquals(en.keySet(), other.keySet(), language);
      for (String name : en.keySet()) {
        TreeSet<Object> a = new TreeSet<>(en.get(name).keySet());
        assertEquals(a, new TreeSet<>(other.get(name).keySet()), language + "/" + name);
        for (Object key : a) {
          assertTrue(key.toString().startsWith(name + "."), key + " stands in " + name);
          for (Properties p : List.of(en.get(name), other.get(name))) {
            assertTrue(!p.getProperty(key.toString()).isBlank(), key + " is blank");
          }
        }
      }
    }
  }

  @Test
  void allLanguagesTakeTheSameValues() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String language : others()) {
      TreeMap<String, Properties> other = files(language);
      files("en")
          .forEach(
              (name, en) -> {
                for (String key : en.stringPropertyNames()) {
                  String text = other.get(name).getProperty(key, "");
                  if (!values(en.getProperty(key)).equals(values(text))) {
                    wrong.add(language + ": " + key);
                  }
                }
              });
    }
    assertEquals(List.of(), wrong);
  }

  /** One word for one thing; those of an arch are said of arches alone. */
  @Test
  void anArchHasWordsOfItsOwn() {
    Words flat = Words.of("es");
    Words arch = flat.ofArch(true);
    assertTrue(flat.say("board.how").contains("la línea del sofito;"), flat.say("board.how"));
    assertTrue(arch.say("board.how").contains("la línea del intradós;"), arch.say("board.how"));
    assertEquals("canto del intradós", arch.say("ticket.edge-soffit"));
    String both = Words.of("en+es").ofArch(true).say("ticket.soffit-mirror", "D1-L1");
    assertEquals("D1-L1: the mirror image / la simétrica", both);
    assertTrue(
        Words.of("en").ofArch(true).say("wall.level-after-three").contains("soffit to the form"));
    assertTrue(Words.of("en").say("wall.level-after-three").contains("soffit to the line"));
  }

  /** Words that were tried on sheets and misread, each with the one that took its place. */
  @Test
  void wordsThatMisleadStayOut() throws IOException {
    Map<String, String> english =
        Map.of(
            "\\b[Tt]icks?\\b", "the grid itself",
            "\\bmay bend\\b", "limit",
            "sharper chips", "arrises of {0} or less chip",
            "\\b[Ii]mposts?\\b", "springing",
            "after local rules", "per the local code",
            "under every return", "over every return",
            "\\b(top|bottom) long\\b", "long edge at the top, at the foot",
            "as noted|change and send again", "make corrections noted, revise and resubmit");
    Map<String, String> spanish =
        Map.of(
            "[Vv]ueltas?(?! al)", "retorno",
            "[Pp]lanilla", "cuadro",
            "[Dd]esplome", "desvío",
            "punta (arriba|abajo)", "lado largo",
            "[Tt]ablero(?! de trazado|$| el eje)", "forro; tablero de trazado",
            "=disco \\{", "inclinar el disco",
            "[Ss]ofito \\(|\\(intradós|sofito, intradós", "sofito (flat), intradós (arch)",
            "reglas locales", "código local");
    List<String> found = new ArrayList<>();
    for (String language : List.of("en", "es")) {
      Map<String, String> words = language.equals("en") ? english : spanish;
      for (Properties p : files(language).values()) {
        for (String key : p.stringPropertyNames()) {
          words.forEach(
              (wrong, right) -> {
                if (Pattern.compile(wrong).matcher("=" + p.getProperty(key)).find()) {
                  found.add(key + ": say " + right);
                }
              });
        }
      }
    }
    assertEquals(List.of(), found);
  }

  private static TreeSet<String> values(String text) {
    TreeSet<String> found = new TreeSet<>();
    Matcher m = VALUE.matcher(text);
    while (m.find()) {
      found.add(m.group());
    }
    return found;
  }

  /** Whole keys in the code exist; beginnings of keys, which the code completes, begin one. */
  @Test
  void everyKeyInTheCodeExists() throws IOException {
    TreeMap<String, Properties> en = files("en");
    TreeSet<String> keys = new TreeSet<>();
    en.values().forEach(p -> keys.addAll(p.stringPropertyNames()));
    Pattern quoted =
        Pattern.compile("\"((?:" + String.join("|", en.keySet()) + ")\\.[a-z0-9_.-]*)\"(\\s*\\+)?");
    List<String> missing = new ArrayList<>();
    int seen = 0;
    try (Stream<Path> tree = Files.walk(CODE)) {
      for (Path f : tree.filter(p -> p.toString().endsWith(".java")).sorted().toList()) {
        String code = Files.readString(f);
        // Field paths of the job file look alike; only what is said on paper counts.
        boolean sheet =
            f.toString().replace('\\', '/').matches(".*/(sheet|render|rules|export)/.*");
        Matcher m = quoted.matcher(code);
        while (sheet && m.find()) {
          String key = m.group(1);
          boolean begins = m.group(2) != null || key.endsWith("-") || key.endsWith(".");
          String next = keys.ceiling(key);
          boolean there = begins ? next != null && next.startsWith(key) : keys.contains(key);
          seen++;
          if (!there) {
            missing.add(f.getFileName() + ": " + key);
          }
        }
      }
    }
    assertEquals(List.of(), missing);
    assertTrue(seen > 100, "too few keys found in the code: " + seen);
  }
}
