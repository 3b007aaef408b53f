package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.sheet.frame.Frame;
import headcourse.testing.JobYaml;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Jobs of many openings are printed by another way, with the same bytes. */
class ManyOpeningsTest {
  private final List<String> said = Collections.synchronizedList(new ArrayList<>());

  private Map<String, byte[]> printed(ShopWork work, int many) throws IOException {
    Map<String, byte[]> all = new TreeMap<>();
    try (Scratch scratch = new Scratch()) {
      OutputWriter writer =
          new OutputWriter(work, Frame.plain(), new byte[] {1}, scratch, many, n -> {}, said::add);
      for (var e : writer.print(o -> o != Arguments.Output.PNG, "").entrySet()) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        e.getValue().to(Channels.newChannel(out));
        all.put(e.getKey(), out.toByteArray());
      }
    }
    return all;
  }

  @Test
  void pageByPageIsTheSame() throws IOException {
    ShopWork work =
        WorkUp.of(
                JobYaml.job(Files.readString(Path.of("jobs/chapel-arches.yaml"))),
                name -> Optional.empty())
            .value()
            .orElseThrow();
    Map<String, byte[]> few = printed(work, 5);
    assertTrue(said.stream().noneMatch(s -> s.endsWith(" pages")), said::toString);
    Map<String, byte[]> many = printed(work, 4);
    assertTrue(
        said.stream().anyMatch(s -> s.matches("drawing bench.pdf, 2 of \\d+ pages")),
        said::toString);
    assertEquals(few.keySet(), many.keySet());
    for (String name : few.keySet()) {
      if (!name.equals("index.html")) {
        assertArrayEquals(few.get(name), many.get(name), name);
      }
    }
    // Its pictures are named, and an opening leads to its own.
    String index = new String(many.get("index.html"), StandardCharsets.UTF_8);
    assertEquals(1, index.split("<svg", -1).length - 1);
    assertTrue(index.contains("<a href=\"elevation-A1.svg\">A1</a>"));
    assertTrue(index.contains("<a href=\"wall.pdf#page=2\">"));
    String whole = new String(few.get("index.html"), StandardCharsets.UTF_8);
    assertFalse(whole.contains("<a href=\"elevation-A1.svg\">A1</a>"));
    assertEquals(whole.split("#page=", -1).length, index.split("#page=", -1).length);
  }

  @Test
  void whatIsKeptOnTheDiskComesBack() throws IOException {
    byte[] much = new byte[300_000];
    for (int i = 0; i < much.length; i++) {
      much[i] = (byte) (i * 31 >> 3);
    }
    try (Scratch scratch = new Scratch()) {
      List<Content> kept = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        int from = i * 1000;
        kept.add(scratch.onDisk(out -> out.write(much, from, much.length - from)));
      }
      for (int i = 2; i >= 0; i--) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        kept.get(i).to(Channels.newChannel(out));
        assertArrayEquals(Arrays.copyOfRange(much, i * 1000, much.length), out.toByteArray());
      }
    }
  }
}
