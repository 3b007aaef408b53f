package headcourse.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An earlier layout.json is read whole or refused with a reason, whatever it holds. */
class EditionReaderTest {
  private static String kept() throws IOException {
    return Files.readString(Path.of("out/cart-door/layout.json"));
  }

  private static Outcome<Edition> read(String text) {
    return EditionReader.read("old.json", text.getBytes(StandardCharsets.UTF_8), null);
  }

  @Test
  void whatTheProgramWroteIsRead() throws IOException {
    Edition e = read(kept()).value().orElseThrow();
    int stones = kept().split("\"setOrder\"", -1).length - 1;
    assertEquals("D1", e.openings().get(0).mark());
    assertEquals(stones, e.openings().get(0).stones().size());
    assertTrue(Changes.between(e, e).items().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "{",
        "{\"format\": 2}",
        "{\"format\": 1}",
        "{\"format\": 1, \"format\": 1}",
        "{\"format\": 1e999}",
        "{\"format\": 01}",
        "{\"format\": 1,}",
        "{\"format\": NaN}",
        "{\"format\": 1, \"blanks\": {}, \"openings\": [], \"job\": {\"revision\": \"A\"}}",
        "{\"format\": 1, \"blanks\": [], \"openings\": [], \"job\": {\"revision\": \"\\u0007\"}}",
        "{\"format\": 1, \"blanks\": [], \"openings\": [], \"job\": {\"revision\": \"\\ud800\"}}",
        "{\"format\": 1, \"blanks\": [], \"openings\": [{}], \"job\": {\"revision\": \"A\"}}",
        "{\"format\": 1, \"blanks\": [], \"openings\": [], \"job\": {\"revision\": \"A\"}} x"
      })
  void othersAreRefusedWithAReason(String text) {
    Outcome<Edition> read = read(text);
    assertTrue(read.value().isEmpty());
    assertTrue(read.diagnostics().get(0).message().startsWith("old.json can't be compared with: "));
    assertFalse(read.diagnostics().get(0).hints().isEmpty());
  }

  @Test
  void deepAndHugeFilesAreRefused() {
    assertTrue(read("[".repeat(1_000_000)).value().isEmpty());
    assertTrue(read("{\"a\":".repeat(500_000)).value().isEmpty());
    assertTrue(EditionReader.read("x", new byte[(4 << 20) + 1], null).value().isEmpty());
    assertTrue(EditionReader.read("x", new byte[] {(byte) 0xFF}, null).value().isEmpty());
  }

  @Test
  void spoiledBytesNeverThrow() throws IOException {
    byte[] whole = kept().getBytes(StandardCharsets.UTF_8);
    long seed = 41;
    Random random = new Random(seed);
    int refused = 0;
    for (int i = 0; i < 300; i++) {
      byte[] b = whole.clone();
      for (int k = 0; k < 4; k++) {
        b[random.nextInt(b.length)] = (byte) random.nextInt(128);
      }
      Outcome<Edition> read = EditionReader.read("x", b, null);
      assertEquals(read.value().isEmpty(), !read.diagnostics().isEmpty(), "seed " + seed);
      refused += read.value().isEmpty() ? 1 : 0;
    }
    assertTrue(refused > 100, "refused " + refused);
  }
}
