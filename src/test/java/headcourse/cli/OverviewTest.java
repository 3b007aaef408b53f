package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page that shows a job's folder: whole, by itself, safe. */
class OverviewTest {
  private static final String JOB =
      """
      units: in
      language: en+es
      job:
        title: 'Barn <script>alert(1)</script> & "more"'
        site: 'a < b'
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - {mark: D1, width: 8'}
        - {mark: W2, width: 6'}
      """;

  @TempDir Path folder;

  private Path draw(String... more) throws Exception {
    Files.writeString(folder.resolve("barn.yaml"), JOB);
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    List<String> args = new java.util.ArrayList<>(List.of("draw", "barn.yaml"));
    args.addAll(List.of(more));
    int status =
        Main.run(
            args,
            folder,
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    assertEquals(0, status, () -> err.toString(StandardCharsets.UTF_8));
    return folder.resolve("out/barn/index.html");
  }

  /** The file keeps to the part of HTML's syntax that is also XML, so a strict parser reads it. */
  private static Element parsed(String html) throws Exception {
    String first = "<!DOCTYPE html>\n";
    assertTrue(html.startsWith(first));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(html.substring(first.length()))))
        .getDocumentElement();
  }

  private static List<Element> all(Element root, String name) {
    NodeList found = root.getElementsByTagName(name);
    List<Element> list = new java.util.ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      list.add((Element) found.item(i));
    }
    return list;
  }

  @Test
  void showsEveryPageAndLeadsToEveryFile() throws Exception {
    Path index = draw();
    Element root = parsed(Files.readString(index));
    assertTrue(all(root, "h1").get(0).getTextContent().startsWith("Barn <script>"));
    Set<String> ids = new HashSet<>();
    for (Element e : all(root, "*")) {
      assertTrue(e.getAttribute("id").isEmpty() || ids.add(e.getAttribute("id")));
    }
    Set<String> targets = new HashSet<>();
    for (Element a : all(root, "a")) {
      String href = a.getAttribute("href");
      String file = href.contains("#") ? href.substring(0, href.indexOf('#')) : href;
      if (file.isEmpty()) {
        assertTrue(ids.contains(href.substring(1)), href);
      } else {
        assertTrue(Files.exists(index.resolveSibling(file)), href);
      }
      targets.add(href);
    }
    try (var files = Files.list(index.getParent())) {
      for (Path f : files.toList()) {
        String name = f.getFileName().toString();
        assertTrue(name.equals("index.html") || targets.contains(name), name);
      }
    }
    for (String pdf : List.of("bench.pdf", "wall.pdf", "contractor.pdf", "full-size.pdf", "order.pdf")) {
      try (var document = org.apache.pdfbox.Loader.loadPDF(index.resolveSibling(pdf).toFile())) {
        int pages = document.getNumberOfPages();
        assertTrue(targets.contains(pdf + "#page=" + pages), pdf);
        assertFalse(targets.contains(pdf + "#page=" + (pages + 1)), pdf);
      }
    }
    assertEquals(
        // And the picture of the openings before them.
        targets.stream().filter(t -> t.contains("#page=")).count() + 1, all(root, "svg").size());
    assertTrue(all(root, "svg").stream().allMatch(s -> !s.getAttribute("aria-label").isEmpty()));
  }

  @Test
  void needsNothingFromElsewhereAndNoScript() throws Exception {
    Element root = parsed(Files.readString(draw()));
    for (Element e : all(root, "*")) {
      assertFalse(
          Set.of("script", "link", "iframe", "object", "embed", "img", "base", "form")
              .contains(e.getTagName()),
          e::getTagName);
      for (int i = 0; i < e.getAttributes().getLength(); i++) {
        var a = e.getAttributes().item(i);
        assertFalse(a.getNodeName().startsWith("on"), a::getNodeName);
        assertFalse(a.getNodeName().equals("src"), a::getNodeName);
        assertFalse(a.getNodeValue().contains("://"), a::getNodeValue);
      }
    }
    assertFalse(all(root, "style").get(0).getTextContent().matches("(?s).*(url\\(|@import).*"));
    assertTrue(
        all(root, "meta").stream()
            .anyMatch(
                m ->
                    m.getAttribute("name").equals("viewport")
                        && m.getAttribute("content").contains("width=device-width")));
  }

  @Test
  void isWrittenOnlyWithTheWhole() throws Exception {
    assertFalse(Files.exists(draw("--only", "bench,json")));
  }
}
