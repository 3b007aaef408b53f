package headcourse.job.yaml;

import headcourse.job.Bundle;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.job.Papers;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Reads {@code paper:}: a word for all bundles, or one for each. */
final class PaperReader {
  private static final Range ROLL = Range.of(8, 60);

  private PaperReader() {}

  static Papers read(Section root) {
    Paper usual = PaperSizes.named(root.in.units == Units.INCH ? "letter" : "a4").orElseThrow();
    Map<Bundle, Paper> map = new EnumMap<>(Bundle.class);
    Item item = root.item("paper");
    if (item == null || !item.isMap()) {
      Paper all = item == null ? null : paper(item);
      for (Bundle b : Bundle.values()) {
        map.put(b, all == null ? usual : sheet(b, all, usual));
      }
      return new Papers(map);
    }
    Section s = item.section();
    for (Bundle b : Bundle.values()) {
      map.put(b, sheet(b, s.get(b.word(), usual, PaperReader::paper), usual));
    }
    s.done();
    return new Papers(map);
  }

  // Only outlines run on along a roll; other bundles are cut from it as its largest sheets.
  private static Paper sheet(Bundle bundle, Paper paper, Paper usual) {
    if (!paper.roll() || bundle == Bundle.FULL_SIZE) {
      return paper;
    }
    Paper largest = usual;
    for (Paper p : PaperSizes.all()) {
      if (p.family() == paper.family() && p.width().compareTo(paper.width()) <= 0) {
        largest = p;
      }
    }
    return largest;
  }

  private static Paper paper(Item item) {
    String s = item.raw("a paper size");
    if (s != null && s.startsWith("roll ")) {
      Length width = Lengths.read(s.substring(5).strip(), ROLL, item.in(), item::error);
      return width == null ? null : PaperSizes.roll(width, item.in().units);
    }
    List<String> words = new ArrayList<>(PaperSizes.all().stream().map(Paper::name).toList());
    words.add("roll 24in");
    String word = s == null ? null : item.word(words);
    return word == null ? null : PaperSizes.named(word).orElse(null);
  }
}
