package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Texts that would run as a formula or as a script, in every field that a job has, and what a file
 * would give away. Signs that begin a formula: OWASP, CSV Injection.
 */
class HostileTextsTest {
  private static final Pattern NUMBER =
      Pattern.compile("-?\\d+(\\.\\d+)?|-?\\d+/\\d+|-?\\d+ \\d+/\\d+");

  @TempDir Path folder;

  private static String job(String text) {
    String t = "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\t", "\\t") + "\"";
    return """
        job:
          {number: T, title: T, site: T, client: T, mason: T, drawn-by: T, revision: T,
           revisions: [{mark: T, date: 2026-04-20, note: T}]}
        units: in
        stone: {name: T, kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
        wall: {backing: [{to: 9 1/4, kind: wood, name: T}, {kind: board}]}
        openings:
          - {mark: D1, label: T, width: 8'}
        stock:
          corners:
            - {mark: STOCK, arris: 24, face: 14, return: 5, thickness: 1 1/4, count: 3}
        accept:
          - {rule: veneer-weight, reason: T}
        """
        .replaceAll("\\bT\\b", java.util.regex.Matcher.quoteReplacement(t));
  }

  private int draw(Path in, String job) throws IOException {
    Files.createDirectories(in);
    Files.writeString(in.resolve("barn.yaml"), job);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(said, true, StandardCharsets.UTF_8);
    int status = Main.run(List.of("draw", "barn.yaml"), in, print, print);
    assertTrue(status < 2 || job.contains("=1+1\", arris"), said.toString(StandardCharsets.UTF_8));
    return status;
  }

  private static Map<String, byte[]> files(Path in) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(in.resolve("out/barn"))) {
      for (Path p : all.toList()) {
        files.put(p.getFileName().toString(), Files.readAllBytes(p));
      }
    }
    return files;
  }

  /** Cells as a reader of RFC 4180 gets them. */
  private static List<String> cells(String csv) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < csv.length(); i++) {
      char c = csv.charAt(i);
      if (quoted) {
        if (c == '"' && i + 1 < csv.length() && csv.charAt(i + 1) == '"') {
          cell.append(c);
          i++;
        } else if (c == '"') {
          quoted = false;
        } else {
          cell.append(c);
        }
      } else if (c == '"') {
        quoted = true;
      } else if (c == ',' || c == '\n') {
        cells.add(cell.toString());
        cell.setLength(0);
      } else if (c != '\r') {
        cell.append(c);
      }
    }
    return cells;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+cmd|' /C calc'!A0;-2+3",
        "\t=1",
        "a;=1+1",
        "\"><script>alert(1)</script>",
        "'/><svg onload=alert(1)>",
        "]]>&lt;!--",
        "@SUM(A1)",
        "</text><image href='http://example.com/x'/>"
      })
  void runNowhere(String text) throws Exception {
    draw(folder, job(text).replace("STOCK", "C1"));
    Map<String, byte[]> files = files(folder);
    assertTrue(files.size() >= 9, files.keySet().toString());
    for (String name : files.keySet()) {
      String content = new String(files.get(name), StandardCharsets.UTF_8);
      if (name.endsWith(".csv")) {
        csv(content);
      } else if (name.endsWith(".svg") || name.endsWith(".html")) {
        markup(content, name.endsWith(".html") ? text : "");
      } else if (name.endsWith(".pdf")) {
        pdf(files.get(name));
      }
    }
  }

  private static void csv(String content) {
    List<String> cells = cells(content);
    assertTrue(cells.size() > 10);
    for (String c : cells) {
      assertTrue(
          c.isEmpty() || "=+-@\t\r\n".indexOf(c.charAt(0)) < 0 || NUMBER.matcher(c).matches(), c);
    }
  }

  /** Strictly parsed, it has no part that acts or loads, and the title is there as text. */
  private static void markup(String content, String text) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    String xml = content.replaceFirst("^<!DOCTYPE html>\\s*", "");
    Document d = factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    NodeList all = d.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      String tag = e.getTagName().toLowerCase(java.util.Locale.ROOT);
      assertFalse(List.of("script", "image", "iframe", "object", "foreignobject").contains(tag));
      for (int k = 0; k < e.getAttributes().getLength(); k++) {
        String name = e.getAttributes().item(k).getNodeName();
        String value = e.getAttributes().item(k).getNodeValue();
        assertFalse(name.startsWith("on"), name);
        assertFalse(name.endsWith("href") && value.contains(":"), value);
      }
    }
    if (!text.isEmpty()) {
      String title = d.getElementsByTagName("h1").item(0).getTextContent();
      assertEquals(text.strip(), title.strip());
    }
  }

  private static void pdf(byte[] bytes) throws IOException {
    try (PDDocument d = Loader.loadPDF(bytes)) {
      assertFalse(d.getDocumentCatalog().getCOSObject().containsKey(COSName.OPEN_ACTION));
      assertFalse(d.getDocumentCatalog().getCOSObject().containsKey(COSName.AA));
      String raw = new String(bytes, StandardCharsets.ISO_8859_1);
      assertFalse(raw.contains("/JavaScript") || raw.contains("/JS") || raw.contains("/Launch"));
    }
  }

  @Test
  void namesOfBlanksRunNowhereEither() throws Exception {
    draw(folder, job("Barn").replace("mark: STOCK", "mark: \"=1+1\""));
    if (Files.exists(folder.resolve("out/barn"))) {
      Map<String, byte[]> files = files(folder);
      csv(new String(files.get("cut-list.csv"), StandardCharsets.UTF_8));
      csv(new String(files.get("order-list.csv"), StandardCharsets.UTF_8));
    }
  }

  @Test
  void whoWhereAndWhenIsNotGivenAway() throws Exception {
    String user = System.getProperty("user.name");
    draw(folder.resolve("one"), job("Barn").replace("STOCK", "C1"));
    System.setProperty("user.name", "somebody-else");
    try {
      draw(folder.resolve("two/deeper"), job("Barn").replace("STOCK", "C1"));
    } finally {
      System.setProperty("user.name", user);
    }
    Map<String, byte[]> one = files(folder.resolve("one"));
    Map<String, byte[]> two = files(folder.resolve("two/deeper"));
    assertEquals(one.keySet(), two.keySet());
    for (String name : one.keySet()) {
      assertArrayEquals(one.get(name), two.get(name), name);
      String raw = new String(one.get(name), StandardCharsets.UTF_8);
      assertFalse(raw.contains(folder.toString()), name);
      assertFalse(raw.contains(System.getProperty("user.home") + "/"), name);
    }
  }
}
