import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A step of the build: cuts the lettering down to the characters that a sheet may bear, those of
 * European languages, figures, and the signs of drawings. Arguments: the folder of the whole fonts,
 * and the one for the cut ones.
 */
final class CutFonts {
  private static final List<String> FILES =
      List.of("DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf");

  /** What is neither an outline nor about one is left behind: hints, kerning, ligatures. */
  private static final List<String> TABLES =
      List.of("OS/2", "cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post");

  /** Pairs of first and last: Latin, Greek, Cyrillic; then punctuation to dingbats. */
  private static final int[] RANGES = {
    0x20, 0x7E, 0xA0, 0x24F, 0x2B0, 0x2DD, 0x370, 0x3FF, 0x400, 0x45F, 0x1E00, 0x1EFF, 0x2000,
    0x206F, 0x2070, 0x209C, 0x20A0, 0x20BF, 0x2100, 0x214F, 0x2150, 0x218F, 0x2190, 0x21FF, 0x2200,
    0x22FF, 0x2300, 0x23FF, 0x2500, 0x257F, 0x25A0, 0x25FF, 0x2600, 0x266F, 0x2700, 0x27BF
  };

  private CutFonts() {}

  public static void main(String[] folders) throws IOException {
    Path to = Files.createDirectories(Path.of(folders[1]));
    for (String file : FILES) {
      byte[] whole = Files.readAllBytes(Path.of(folders[0], file));
      try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(whole));
          OutputStream out = Files.newOutputStream(to.resolve(file))) {
        CmapLookup map = font.getUnicodeCmapLookup();
        TTFSubsetter cut = new TTFSubsetter(font, TABLES);
        for (int i = 0; i < RANGES.length; i += 2) {
          for (int c = RANGES[i]; c <= RANGES[i + 1]; c++) {
            if (map.getGlyphId(c) != 0) {
              cut.add(c);
            }
          }
        }
        cut.writeToStream(out);
      }
    }
  }
}
