package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.layout.Bearing;
import headcourse.layout.HeadLayout;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.rules.MaterialsTakeOff;
import headcourse.sheet.Amounts;
import headcourse.stock.StockPlan;
import headcourse.text.Words;
import headcourse.units.Decimals;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;

/** What is said of a choice, in one language or in both. */
final class ChoiceText {
  private final Words words;
  private final Job job;
  private final LengthFormat format;

  /** Texts for choices of a job. */
  ChoiceText(Words words, Job job) {
    this.words = words;
    this.job = job;
    this.format = new LengthFormat(job.units(), job.grid());
  }

  /** What is seen: key, count × width, rhythm, shape and joints. */
  String seen(Choice c) {
    return words.say(w -> key(w, c) + " · " + stones(w, c) + " · " + look(w, c));
  }

  /** The key's two widths, and how it compares with a stone on the soffit line. */
  String key(Words w, Choice c) {
    return c.head().stones().stream()
        .filter(s -> s.role() == Role.KEY)
        .findFirst()
        .map(
            k ->
                w.say(
                    "choose.key",
                    format.withUnit(k.bottom()),
                    format.withUnit(k.top()),
                    proportion(c)))
        .orElseGet(() -> w.say("choose.no-key"));
  }

  static String proportion(Choice c) {
    return Decimals.fixed(c.proportion(), 2);
  }

  /** How many a side, and how wide. */
  String stones(Words w, Choice c) {
    if (!c.left().equals(c.right())) {
      return w.say(
          "choose.sides",
          c.left().size(),
          widths(w, c.left()),
          c.right().size(),
          widths(w, c.right()));
    }
    return w.say("choose.stones", c.left().size(), widths(w, c.left()));
  }

  private String widths(Words w, List<Length> widths) {
    Length least = widths.stream().reduce(Length::min).orElseThrow();
    Length most = widths.stream().reduce(Length::max).orElseThrow();
    String low = format.withUnit(least);
    String high = format.withUnit(most);
    return low.equals(high) ? low : w.say("choose.from-to", low, high);
  }

  /** Shape, rhythm and joints. */
  String look(Words w, Choice c) {
    boolean even = c.look().rhythm() == Rhythm.EVEN;
    String shape = w.sayOr("contractor.shape-" + c.look().shape(), c.look().shape());
    String rhythm = even ? "" : ", " + w.say("choose.rhythm-" + c.look().rhythm().word());
    String joints =
        c.look().joint().isZero()
            ? w.say("choose.dry")
            : w.say("choose.mortar", format.withUnit(c.look().joint()));
    return shape + rhythm + ", " + joints;
  }

  /** What passes the jambs, and the nearest joint. */
  String bond(Choice c) {
    HeadLayout head = c.head();
    Bearing left = head.bearing(Side.LEFT);
    Bearing right = head.bearing(Side.RIGHT);
    return words.say(
        w -> {
          String passes =
              both(w, "choose.bond", left.onWall(format.grid()), right.onWall(format.grid()));
          String top =
              head.fanned()
                  ? both(
                      w, "choose.bond-top", left.onTop(format.grid()), right.onTop(format.grid()))
                  : "";
          String near = head.curved() ? "choose.nearest-curved" : "choose.nearest";
          return passes + top + "; " + w.say(near, Limit.MOST.withUnit(format, c.lap()));
        });
  }

  private String both(Words w, String key, Length left, Length right) {
    return left.equals(right)
        ? w.say(key + "-alike", format.withUnit(left))
        : w.say(key, format.withUnit(left), format.withUnit(right));
  }

  /** Stones and blanks; of a choice that is worked out. */
  String blanks(Choice c) {
    StockPlan plan = c.worked().orElseThrow().stock();
    int stones = c.head().stones().size() * c.head().opening().count();
    if (job.stock().items().isEmpty()) {
      return words.say("choose.blanks-none", stones);
    }
    int lying = plan.blanks().size();
    int missing = c.blanks() - lying;
    String sure =
        plan.price() > 0
            ? words.say(plan.proved() ? "choose.cheapest" : "choose.cheap")
            : plan.proved()
                ? words.say("choose.least")
                : words.say("choose.at-least", plan.lowerBound());
    return words.say("choose.blanks", stones, lying, sure)
        + (missing > 0 ? words.say("choose.missing", missing) : "");
  }

  /** How surely it lands. */
  String lands(Choice c) {
    String often =
        words.say(
            "choose.lands",
            Decimals.grouped(c.lands().landedChecked()),
            Decimals.grouped(c.lands().builds()));
    return often + "; " + room(c);
  }

  /** Room for the worst drift, or what is wanting of it. */
  String room(Choice c) {
    return c.shortfall().isZero()
        ? words.say("choose.room")
        : words.say("choose.short", Limit.LEAST.withUnit(format, c.shortfall()));
  }

  /** Price where the stock has one, and mass; the findings of severity error. */
  String amounts(Choice c) {
    ShopWork work = c.worked().orElseThrow();
    List<String> parts = new ArrayList<>();
    if (work.stock().price() > 0) {
      parts.add(words.say("choose.price", Decimals.fixed(work.stock().price(), 2)));
    }
    double mass = work.materials().stoneKg() + MaterialsTakeOff.apartKg(work.heads());
    parts.add(words.say("choose.mass", new Amounts(job.units()).mass(mass)));
    if (c.faulty()) {
      parts.add(words.say("choose.faults", String.join(", ", c.faults())));
    }
    return String.join(". ", parts);
  }
}
