package headcourse.job.yaml;

import headcourse.job.Stone;
import headcourse.units.Length;
import java.util.List;

/** Reads {@code stone:}. */
final class StoneReader {
  private StoneReader() {}

  static Stone read(Section root) {
    Section s = root.section("stone");
    String name = s.text("name");
    Item kindItem = s.item("kind");
    Item densityItem = s.item("density");
    Double density = densityItem == null ? null : Quantity.DENSITY.read(densityItem, 500, 5000);
    // With a density of its own a stone may be of any kind.
    String kind =
        kindItem == null
            ? null
            : densityItem == null ? kindItem.word(StoneKinds.names()) : kindItem.text();
    double friction =
        s.get(
            "friction",
            StoneKinds.named(kind == null ? "" : kind).map(StoneKinds.Kind::friction).orElse(0.6),
            i -> i.number(0.1, 1.5));
    double typical = density != null ? density : 2250;
    double heaviest = density != null ? density : 3000;
    if (density == null && kind != null && StoneKinds.named(kind).isPresent()) {
      typical = StoneKinds.named(kind).get().typical();
      heaviest = StoneKinds.named(kind).get().heaviest();
    }
    Length thickness =
        s.needed("thickness", Range.of(0.25, 12), "the stone's thickness", Length.inches(1.25));
    boolean split = s.word("edges", List.of("sawn", "split"), "sawn").equals("split");
    s.done();
    return new Stone(
        name,
        kind == null ? "" : kind,
        typical,
        heaviest,
        friction,
        thickness,
        split ? Stone.Edges.SPLIT : Stone.Edges.SAWN);
  }
}
