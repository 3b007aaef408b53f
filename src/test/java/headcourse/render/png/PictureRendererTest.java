package headcourse.render.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The picture in pixels, read back by the JDK, against the SVG that it is made of. */
class PictureRendererTest {
  private static final Pattern STONE =
      Pattern.compile(
          "class=\"stone\".*?<path d=\"M([-0-9.]+)[ ,]([-0-9.]+)L([-0-9.]+)[ ,]([-0-9.]+)");

  private static byte[] elevation() throws IOException {
    return Files.readAllBytes(Path.of("out", "granary-store", "elevation-D1.svg"));
  }

  private static BufferedImage read(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private static boolean dark(BufferedImage image, double x, double y) {
    for (int dx = -2; dx <= 2; dx++) {
      for (int dy = -2; dy <= 2; dy++) {
        int rgb = image.getRGB((int) Math.round(x) + dx, (int) Math.round(y) + dy);
        if ((rgb & 0xFF) < 100) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void stonesStandWhereTheFileSays() throws Exception {
    byte[] svg = elevation();
    String text = new String(svg, StandardCharsets.UTF_8);
    Matcher box = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"").matcher(text);
    assertTrue(box.find());
    double scale = PictureRenderer.WIDTH / Double.parseDouble(box.group(1));
    BufferedImage image = read(PictureRenderer.png(svg));
    assertEquals(PictureRenderer.WIDTH, image.getWidth());
    assertEquals(Double.parseDouble(box.group(2)) * scale, image.getHeight(), 1);
    assertEquals(0xFFFFFFFF, image.getRGB(1, 1));
    Matcher m = Pattern.compile("(?s)" + STONE.pattern()).matcher(text);
    int edges = 0;
    while (m.find()) {
      double x = (Double.parseDouble(m.group(1)) + Double.parseDouble(m.group(3))) / 2;
      double y = (Double.parseDouble(m.group(2)) + Double.parseDouble(m.group(4))) / 2;
      assertTrue(dark(image, x * scale, y * scale), m.group());
      edges++;
    }
    assertTrue(edges > 10, "stones found: " + edges);
  }

  @Test
  void sameFileSameBytes() throws Exception {
    assertArrayEquals(PictureRenderer.png(elevation()), PictureRenderer.png(elevation()));
  }

  /** Lettered in the sheets' own font: a text is as wide as the font says. */
  @Test
  void lettersAreTheSheetsOwn() throws Exception {
    BufferedImage image =
        read(
            PictureRenderer.png(
                svg(
                    "<text x=\"10\" y=\"50\" font-size=\"20\" font-family=\"\'DejaVu Sans Condensed\'\">"
                        + "MMMMM</text>")));
    int first = Integer.MAX_VALUE;
    int last = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        if ((image.getRGB(x, y) & 0xFF) < 128) {
          first = Math.min(first, x);
          last = Math.max(last, x);
        }
      }
    }
    // An M of this font is 0.777 em wide by its advance.
    assertEquals(5 * 0.777 * 20 * 16, last - first, 70);
  }

  private static byte[] svg(String content) {
    return ("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
            + " width=\"100\" height=\"100\" viewBox=\"0 0 100 100\">"
            + content
            + "</svg>")
        .getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void nothingFromOutsideIsReadAndNothingRuns() throws Exception {
    String outside = Path.of("out", "granary-store", "elevation-D1.svg").toUri().toString();
    byte[] image = svg("<image width=\"100\" height=\"100\" xlink:href=\"" + outside + "\"/>");
    assertThrows(IOException.class, () -> PictureRenderer.png(image));
    BufferedImage still =
        read(
            PictureRenderer.png(
                svg(
                    "<rect id=\"r\" width=\"100\" height=\"100\" fill=\"white\"/>"
                        + "<script type=\"text/ecmascript\">document.getElementById('r')"
                        + ".setAttribute('fill', 'black')</script>")));
    assertEquals(0xFFFFFFFF, still.getRGB(800, 800));
  }
}
