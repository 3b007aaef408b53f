package headcourse.job.yaml;

import headcourse.job.Backing;
import headcourse.job.Sheathing;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads {@code wall.backing} and {@code wall.sheathing}: what an anchor may hold in. */
final class BackingReader {
  /**
   * Specific gravities of timber (a handbook's table; the lightest is taken where the job names
   * none).
   */
  private static final Map<String, Double> SPECIES =
      Map.of("douglas-fir", 0.51, "southern-pine", 0.59, "spruce", 0.41);

  private static final List<String> WORDS = List.of("douglas-fir", "southern-pine", "spruce");
  private static final double LIGHTEST = 0.41;

  private BackingReader() {}

  static Sheathing sheathing(Section wall) {
    Reading in = wall.in;
    Length usual = in.or(0.5, 12);
    Item item = wall.item("sheathing");
    if (item == null || !item.isMap()) {
      Length given = item == null ? null : item.length(Range.NOT_NEGATIVE);
      return new Sheathing(given == null ? usual : given, false);
    }
    Section s = item.section();
    Length thickness = s.length("thickness", Range.NOT_NEGATIVE, usual);
    boolean holds = s.flag("holds", false);
    s.done();
    return new Sheathing(thickness, holds);
  }

  static List<Backing> backing(Section wall) {
    double gravity = gravity(wall, LIGHTEST);
    List<Item> items = wall.list("backing");
    List<Backing> found = new ArrayList<>();
    Length below = Length.ZERO;
    for (int i = 0; i < items.size(); i++) {
      Section s = items.get(i).section();
      Backing b = line(s, gravity);
      boolean last = i + 1 == items.size();
      if (b.to() == null && !s.has("to") && !last) {
        items.get(i).error("no height; expected to:, which only the last line may leave out");
      } else if (b.to() != null && b.to().compareTo(below) <= 0) {
        String why = found.isEmpty() ? "must be above the soffit line" : "must rise";
        s.in.error(s.at("to"), "heights " + why + "; expected more than " + s.in.say(below));
      }
      below = b.to() == null ? below : b.to();
      found.add(b);
    }
    return found.isEmpty()
        ? List.of(new Backing(null, Backing.Kind.WOOD, "", gravity))
        : List.copyOf(found);
  }

  private static Backing line(Section s, double usual) {
    Length to = s.length("to", Range.SIGNED, null);
    if (!s.has("kind")) {
      s.in.error(
          s.path, "kind: is missing; expected one of " + String.join(", ", Backing.Kind.words()));
    }
    Backing.Kind kind = Backing.Kind.of(s.word("kind", Backing.Kind.words(), "wood"));
    String name = s.text("name");
    double gravity = kind == Backing.Kind.WOOD ? gravity(s, usual) : 0;
    s.done(
        k ->
            k.equals("species") || k.equals("gravity")
                ? "key " + Reading.quoted(k) + " is for kind wood; expected no such key"
                : null);
    return new Backing(to, kind, name, gravity);
  }

  /** By number, else by species, else the usual. */
  private static double gravity(Section s, double usual) {
    String species = s.word("species", WORDS, null);
    Double given = s.get("gravity", null, i -> i.number(0.2, 1.2));
    if (given != null) {
      return given;
    }
    return species == null ? usual : SPECIES.get(species);
  }
}
