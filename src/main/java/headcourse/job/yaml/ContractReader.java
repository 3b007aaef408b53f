package headcourse.job.yaml;

import headcourse.job.Answers;
import headcourse.job.Answers.Flashing;
import headcourse.job.Answers.Lintel;
import headcourse.job.Contract;
import headcourse.job.Opening;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads what a job says to the contractor: {@code notes:}, {@code answers:}, specifications. */
final class ContractReader {
  private static final double MOST_KG_PER_M = 100_000;

  private ContractReader() {}

  /**
   * Reads it.
   *
   * @param job {@code job:}, {@code setting} and {@code fastener} likewise, not done with
   */
  static Contract read(
      Section root, Section job, Section setting, Section fastener, List<Opening> openings) {
    List<String> notes = new ArrayList<>();
    for (Item i : root.list("notes")) {
      String note = i.text();
      if (note != null && note.isBlank()) {
        i.error("an empty note; expected a text");
      } else if (note != null) {
        notes.add(note);
      }
    }
    Section s = root.section("answers");
    Answers all = answers(s, Answers.NONE);
    Map<String, Answers> others = new LinkedHashMap<>();
    Section single = s.section("openings");
    for (Opening o : openings) {
      Item item = single.item(o.mark());
      if (item != null) {
        Section own = item.section();
        others.put(o.mark(), answers(own, all));
        own.done();
      }
    }
    single.done();
    s.done();
    return new Contract(
        job.text("mason-address"),
        job.text("delivery"),
        setting.text("mortar"),
        fastener.text("specification"),
        notes,
        all,
        others);
  }

  private static Answers answers(Section s, Answers otherwise) {
    Section l = s.section("lintel");
    Lintel usual = otherwise.lintel();
    Range bend = Range.of(0, 6);
    Lintel lintel =
        new Lintel(
            l.get("kind", usual.kind(), Item::text),
            l.get("size", usual.size(), Item::text),
            l.length("bearing", Range.POSITIVE, usual.bearing()),
            l.length("bends-before", bend, usual.before()),
            l.length("bends-after", bend, usual.after()),
            l.get(
                "allows",
                usual.allows(),
                i -> Quantity.MASS_PER_LENGTH.read(i, 0.1, MOST_KG_PER_M)));
    l.done();
    return new Answers(
        lintel,
        flashing(s, otherwise.flashing()),
        s.get("barrier", otherwise.barrier(), Item::text),
        s.get("props", otherwise.props(), Item::text));
  }

  private static Flashing flashing(Section s, Flashing otherwise) {
    if (!s.has("flashing")) {
      s.item("flashing");
      return otherwise;
    }
    Section f = s.section("flashing");
    Length from = f.length("from", Range.SIGNED, Length.ZERO);
    Length to = f.needed("to", Range.SIGNED, "the flashing's upper edge", from);
    if (s.in.sound(f.at("to"), f.at("from")) && f.has("to") && to.compareTo(from) <= 0) {
      s.in.error(
          f.at("to"),
          "the flashing ends below where it begins; expected more than " + s.in.say(from));
    }
    f.done();
    return new Flashing(from, to);
  }
}
