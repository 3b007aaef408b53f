package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The values of a job that may be turned when a flat head can't be set out. */
final class Knobs {
  /** How far either way a value is tried that has no easier way. */
  private static final int TRIES = 20;

  private final FlatTerms terms;
  private final Job job;
  private final Opening opening;
  private final Grid grid;
  private final LengthFormat format;
  private final Telling telling;
  private final List<Knob> knobs = new ArrayList<>();

  private Knobs(FlatTerms terms, LengthFormat format) {
    this.terms = terms;
    this.job = terms.job();
    this.opening = terms.opening();
    this.grid = job.grid();
    this.format = format;
    this.telling = new Telling(terms, format);
  }

  static List<Knob> of(FlatTerms terms, LengthFormat format) {
    Knobs k = new Knobs(terms, format);
    k.widths();
    k.bearing();
    k.differences();
    k.key();
    FanKnobs.addTo(k.knobs, terms, format);
    k.count();
    k.wholeJob();
    FittedKnobs.addTo(k.knobs, terms, format);
    return k.knobs;
  }

  /** A length that is easier to keep the one way. */
  private void length(
      String path,
      Length base,
      int way,
      Length limit,
      BiFunction<Opening, Length, Opening> with,
      Function<HeadLayout, String> tells,
      String reason) {
    long ticks = way < 0 ? grid.ceil(base) : grid.floor(base);
    long far = Math.abs(grid.nearest(limit) - ticks);
    knobs.add(
        new Knob(
            opening.path() + ".head." + path,
            ticks,
            way,
            far,
            Math.max(1, ticks == 0 ? grid.nearest(opening.head().stones().target()) : ticks),
            v -> new Knob.Asked(job, with.apply(opening, grid.ticks(v))),
            v -> format.plain(grid.ticks(v)),
            tells,
            reason));
  }

  private void widths() {
    HeadSpec.Stones s = opening.head().stones();
    length(
        "stones.max",
        s.max(),
        1,
        s.max().times(2),
        (o, v) -> Edits.widths(o, s.min(), v),
        telling::tooWide,
        "lets the stones be wider");
    length(
        "stones.min",
        s.min(),
        -1,
        s.min().half(),
        (o, v) -> Edits.widths(o, v, s.max()),
        telling::tooNarrow,
        "lets the stones be narrower");
  }

  private void bearing() {
    HeadSpec.Bearing b = opening.head().bearing();
    length(
        "bearing.min",
        b.min(),
        -1,
        Length.ZERO,
        (o, v) -> Edits.bearing(o, v, b.max()),
        telling::shortBearing,
        "lets the ends bear less");
    length(
        "bearing.max",
        b.max(),
        1,
        b.max().plus(opening.head().stones().max().times(2)),
        (o, v) -> Edits.bearing(o, b.min(), v),
        telling::longBearing,
        "lets the ends run farther onto the wall");
    length(
        "clear",
        opening.head().clear(),
        -1,
        Length.ZERO,
        Edits::clear,
        telling::tooNear,
        "lets a joint come nearer to the jamb line");
  }

  private void differences() {
    HeadSpec.Stones s = opening.head().stones();
    if (s.rhythm() == Rhythm.MIXED && s.step().isPositive()) {
      length(
          "stones.step",
          s.step(),
          -1,
          Length.ZERO,
          (o, v) -> Edits.steps(o, v, s.jump()),
          h -> "",
          "lets neighbours differ by less");
    }
    boolean picked = s.rhythm() == Rhythm.MIXED || s.rhythm() == Rhythm.FROM_STOCK;
    if (picked && s.jump() != null) {
      length(
          "stones.jump",
          s.jump(),
          1,
          s.jump().max(s.max().minus(s.min())),
          (o, v) -> Edits.steps(o, s.step(), v),
          h -> "",
          "lets neighbours differ by more");
    }
    if (s.rhythm() == Rhythm.GRADED) {
      either("stones.step", s.step(), 1, (o, v) -> Edits.steps(o, v, s.jump()), "grades otherwise");
    }
  }

  private void either(
      String path,
      Length base,
      long unit,
      BiFunction<Opening, Length, Opening> with,
      String reason) {
    long units = grid.nearest(base) / unit;
    knobs.add(
        new Knob(
            opening.path() + ".head." + path,
            units,
            0,
            TRIES,
            Math.max(Math.abs(units), grid.nearest(opening.head().stones().target()) / unit),
            v -> new Knob.Asked(job, with.apply(opening, grid.ticks(v * unit))),
            v -> format.plain(grid.ticks(v * unit)),
            h -> "",
            reason));
  }

  private void key() {
    HeadSpec.Key key = opening.head().key();
    boolean jack = opening.head().shape().equals("jack");
    if (key == null || jack && key.bottom() != null && key.top() != null) {
      return;
    }
    if (key.bottom() != null) {
      key("key.bottom", key.bottom(), (o, v) -> Edits.key(o, v, key.top()));
    } else if (jack && key.top() != null) {
      key("key.top", key.top(), (o, v) -> Edits.key(o, key.bottom(), v));
    }
  }

  /** A key as narrow as half a stone, or half as wide again as it is. */
  private void key(String path, Length base, BiFunction<Opening, Length, Opening> with) {
    long least = Math.max(1, grid.nearest(opening.head().stones().min()) / 4);
    long most = grid.nearest(base) * 3 / 4;
    knobs.add(
        new Knob(
            opening.path() + ".head." + path,
            grid.nearest(base) / 2,
            0,
            most,
            Math.max(1, grid.nearest(base) / 2.0),
            v ->
                v < least || v > most
                    ? null
                    : new Knob.Asked(job, with.apply(opening, grid.ticks(2 * v))),
            v -> format.plain(grid.ticks(2 * v)),
            h -> "",
            "moves every joint by half of the difference"));
  }

  private void count() {
    HeadSpec.Stones s = opening.head().stones();
    String stones = opening.path() + ".head.stones.";
    if (s.eachSide() != null) {
      knobs.add(
          new Knob(
              stones + "each-side",
              s.eachSide(),
              0,
              3,
              s.eachSide(),
              v -> v < 1 ? null : new Knob.Asked(job, Edits.rhythm(opening, s.rhythm(), (int) v)),
              Long::toString,
              telling::otherCount,
              "another number of stones"));
    }
    List<Rhythm> others = new ArrayList<>(List.of(Rhythm.EVEN, Rhythm.GRADED, Rhythm.MIXED));
    others.remove(s.rhythm());
    others.remove(Rhythm.GRADED);
    for (Rhythm r : others) {
      knobs.add(
          new Knob(
              stones + "rhythm",
              0,
              1,
              1,
              1,
              v -> new Knob.Asked(job, Edits.rhythm(opening, r, s.eachSide())),
              v -> r.word(),
              h -> "",
              r == Rhythm.EVEN ? "makes all stones equal" : "lets widths vary"));
    }
  }

  /** What touches every opening is offered only where there is one. */
  private void wholeJob() {
    if (job.openings().size() > 1) {
      return;
    }
    Length joint = job.setting().joint();
    if (!job.setting().dry() && joint.isPositive()) {
      long unit = opening.head().key() == null ? 2 : 1;
      knobs.add(
          new Knob(
              "setting.joint",
              terms.joint() / unit,
              0,
              4,
              Math.max(1, terms.joint() / (double) unit),
              v -> v < 1 ? null : new Knob.Asked(Edits.joint(job, grid.ticks(v * unit)), opening),
              v -> format.plain(grid.ticks(v * unit)),
              h -> "",
              "moves every joint a little farther than the one before"));
    }
    if (opening.head().soffit() == HeadSpec.Soffit.RETURNED) {
      job.stock().items().stream()
          .filter(i -> i.kind() == Stock.Kind.CORNER)
          .max(Comparator.comparing(Stock.Item::length))
          .ifPresent(this::arris);
    }
  }

  private void arris(Stock.Item item) {
    long ticks = grid.floor(item.length());
    knobs.add(
        new Knob(
            item.path() + ".arris",
            ticks,
            1,
            ticks,
            ticks,
            v -> new Knob.Asked(Edits.arris(job, item, grid.ticks(v)), opening),
            v -> format.plain(grid.ticks(v)),
            h ->
                "the longest corner, "
                    + item.mark()
                    + ", yields "
                    + telling.size(grid.ticks(terms.usable()))
                    + " after its clean cuts, and the stones need more",
            "corners as long as the stones need"));
  }
}
