package headcourse.cure;

import headcourse.job.Change;
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
import java.util.function.Function;
import java.util.function.LongFunction;

/** The values of a job that may be turned when a head can't be set out. */
final class Dials {
  /** How far either way a value is tried that has no easier way. */
  private static final int TRIES = 20;

  private static final Function<HeadLayout, String> NOTHING = h -> "";

  private final Job job;
  private final Opening opening;
  private final HeadSpec head;
  private final Grid grid;
  private final LengthFormat format;
  private final ShortfallWords telling;
  private final boolean flat;
  private final List<Dial> dials = new ArrayList<>();

  private Dials(Job job, Opening opening, boolean flat) {
    this.job = job;
    this.opening = opening;
    this.head = opening.head();
    this.grid = job.grid();
    this.format = new LengthFormat(job.units(), grid);
    this.telling = new ShortfallWords(job, opening);
    this.flat = flat;
  }

  /**
   * Those of an opening.
   *
   * @param flat whether its head is a flat one
   */
  static List<Dial> of(Job job, Opening opening, boolean flat) {
    Dials d = new Dials(job, opening, flat);
    d.widths();
    if (flat) {
      d.bearing();
    }
    d.clear();
    d.differences();
    d.key();
    if (head(opening).shape().equals("jack")) {
      d.dials.add(new FanDial(job, opening).dial());
    }
    d.count();
    d.rhythm();
    if (job.openings().size() == 1) {
      // What touches every opening is offered only where there is one.
      d.joint();
      d.corners();
    }
    if (flat) {
      Recut.addTo(d.dials, job, opening);
    }
    return d.dials;
  }

  /**
   * Those that a head could be steadied with that reads as hanging.
   *
   * @param flat whether its head is a flat one
   */
  static List<Dial> steadying(Job job, Opening opening, boolean flat) {
    Dials d = new Dials(job, opening, flat);
    Length height = d.head.height();
    d.length("height", height, 1, height.times(4), NOTHING, "makes the head deeper");
    d.head
        .params()
        .length("rise")
        .ifPresent(
            r -> d.length("rise", r, 1, opening.width().half(), NOTHING, "makes the arch rise"));
    if (d.head.shape().equals("jack")) {
      d.dials.add(new FanDial(job, opening).dial());
    }
    d.key();
    d.lighterKey();
    if (flat) {
      d.longer();
    }
    return d.dials;
  }

  /** What stands out of a key weighs where a head bears it least. */
  private void lighterKey() {
    if (head.key() != null) {
      String reason = "takes weight off the middle";
      length("key.rise", head.key().rise(), -1, Length.ZERO, NOTHING, reason);
      length("key.drop", head.key().drop(), -1, Length.ZERO, NOTHING, reason);
    }
  }

  /** Ends that bear more; what they may bear goes with it. */
  private void longer() {
    HeadSpec.Bearing b = head.bearing();
    long ticks = grid.floor(b.target());
    long more = Math.max(ticks, grid.nearest(head.stones().target())) * 4;
    String reason = "lets the ends bear more";
    dials.add(
        new Dial(
            path("bearing.target"),
            ticks,
            1,
            more,
            more / 4.0,
            v -> {
              Length aim = grid.ticks(v);
              List<Change> all = new ArrayList<>();
              all.addAll(one(path("bearing.min"), format.plain(aim), reason));
              all.addAll(one(path("bearing.target"), format.plain(aim), reason));
              if (aim.plus(head.stones().max()).compareTo(b.max()) > 0) {
                String most = format.plain(grid.snap(aim.plus(head.stones().max())));
                all.addAll(one(path("bearing.max"), most, reason));
              }
              return all;
            },
            NOTHING));
  }

  private static HeadSpec head(Opening opening) {
    return opening.head();
  }

  private String path(String key) {
    return opening.path() + ".head." + key;
  }

  private static List<Change> one(String path, String value, String reason) {
    return List.of(new Change(path, value, reason));
  }

  /** A length that is easier to keep the one way. */
  private void length(
      String key,
      Length base,
      int way,
      Length limit,
      Function<HeadLayout, String> tells,
      String r) {
    long ticks = way < 0 ? grid.ceil(base) : grid.floor(base);
    dials.add(
        new Dial(
            path(key),
            ticks,
            way,
            Math.max(0, way * (grid.nearest(limit) - ticks)),
            Math.max(1, ticks == 0 ? grid.nearest(head.stones().target()) : ticks),
            v -> one(path(key), format.plain(grid.ticks(v)), r),
            tells));
  }

  private void widths() {
    HeadSpec.Stones s = head.stones();
    Length wide = s.max().times(2);
    Length most = flat ? s.max().plus(wide) : s.max().times(4);
    length("stones.max", s.max(), 1, most, telling::tooWide, "lets the stones be wider");
    Length least = flat ? s.min().half() : s.min().half().half();
    length("stones.min", s.min(), -1, least, telling::tooNarrow, "lets the stones be narrower");
  }

  private void bearing() {
    HeadSpec.Bearing b = head.bearing();
    Function<HeadLayout, String> little = telling::shortBearing;
    length("bearing.min", b.min(), -1, Length.ZERO, little, "lets the ends bear less");
    Length most = b.max().plus(head.stones().max().times(2));
    Function<HeadLayout, String> much = telling::longBearing;
    length("bearing.max", b.max(), 1, most, much, "lets the ends run farther onto the wall");
  }

  private void clear() {
    Function<HeadLayout, String> near = flat ? telling::tooNear : NOTHING;
    String reason = "lets a joint come nearer to the jamb line";
    length("clear", head.clear(), -1, Length.ZERO, near, reason);
  }

  private void differences() {
    HeadSpec.Stones s = head.stones();
    if (s.rhythm() == Rhythm.MIXED && s.step().isPositive()) {
      String reason = "lets neighbours differ by less";
      length("stones.step", s.step(), -1, Length.ZERO, NOTHING, reason);
    }
    boolean picked = s.rhythm() == Rhythm.MIXED || s.rhythm() == Rhythm.FROM_STOCK;
    if (picked && s.jump() != null) {
      Length most = s.jump().max(s.max().minus(s.min()));
      length("stones.jump", s.jump(), 1, most, NOTHING, "lets neighbours differ by more");
    }
    if (s.rhythm() == Rhythm.GRADED) {
      long ticks = grid.nearest(s.step());
      String at = path("stones.step");
      either(
          at,
          ticks,
          TRIES,
          Math.max(Math.abs(ticks), grid.nearest(s.target())),
          v -> one(at, format.plain(grid.ticks(v)), "grades otherwise"));
    }
  }

  private void either(
      String path, long base, long limit, double whole, LongFunction<List<Change>> writes) {
    dials.add(new Dial(path, base, 0, limit, Math.max(1, whole), writes, NOTHING));
  }

  private void key() {
    HeadSpec.Key key = head.key();
    boolean upright = head.shape().equals("soldier");
    if (key == null || !upright && key.bottom() != null && key.top() != null) {
      return;
    }
    if (key.bottom() != null) {
      Length taper = upright ? key.top().minus(key.bottom()) : Length.ZERO;
      boolean both = upright && job.spans().given(path("key.top"));
      key("key.bottom", key.bottom(), both ? key.top() : null, taper);
    } else if (key.top() != null) {
      key("key.top", key.top(), null, Length.ZERO);
    }
  }

  /** A key as narrow as half a stone, or half as wide again; no wider below than above. */
  private void key(String key, Length base, Length top, Length taper) {
    long least = Math.max(1, grid.nearest(head.stones().min()) / 4);
    long most = grid.nearest(base) * 3 / 4;
    String reason = "moves every joint by half of the difference";
    either(
        path(key),
        grid.nearest(base) / 2,
        most,
        grid.nearest(base) / 2.0,
        v -> {
          Length width = grid.ticks(2 * v);
          if (v < least || v > most) {
            return null;
          }
          List<Change> all = new ArrayList<>(one(path(key), format.plain(width), reason));
          if (top != null && width.compareTo(top) > 0) {
            String upper = format.plain(grid.snap(width.plus(taper)));
            all.add(new Change(path("key.top"), upper, "keeps the key's taper"));
          }
          return all;
        });
  }

  private void count() {
    HeadSpec.Stones s = head.stones();
    if (s.eachSide() != null) {
      String at = path("stones.each-side");
      dials.add(
          new Dial(
              at,
              s.eachSide(),
              0,
              3,
              s.eachSide(),
              v -> v < 1 ? null : one(at, Long.toString(v), "another number of stones"),
              telling::otherCount));
      String open = "leaves the number of stones open";
      dials.add(new Dial(at, 0, 1, 1, 1, v -> one(at, null, open), telling::otherCount));
    }
  }

  private void rhythm() {
    for (Rhythm r : flat ? List.of(Rhythm.EVEN, Rhythm.MIXED) : List.of(Rhythm.EVEN)) {
      // Mixed widths may take long where none come out, and with them all the pile.
      boolean slow = r == Rhythm.MIXED && head.stones().rhythm() == Rhythm.FROM_STOCK;
      if (r == head.stones().rhythm() || slow) {
        continue;
      }
      String reason = r == Rhythm.EVEN ? "makes all stones equal" : "lets widths vary";
      List<Change> changes = new ArrayList<>(one(path("stones.rhythm"), r.word(), reason));
      if (head.stones().step().picometres() < 0) {
        // Only graded widths may grow.
        changes.add(new Change(path("stones.step"), null, "is for graded stones"));
      }
      dials.add(new Dial(path("stones.rhythm"), 0, 1, 1, 1, v -> changes, NOTHING));
    }
  }

  private void joint() {
    Length joint = job.setting().joint();
    if (job.setting().dry() || !joint.isPositive()) {
      return;
    }
    long unit = head.key() == null ? 2 : 1;
    long base = grid.nearest(joint) / unit;
    String reason = "moves every joint a little farther than the one before";
    either(
        "setting.joint",
        base,
        4,
        base,
        v -> v < 1 ? null : one("setting.joint", format.plain(grid.ticks(v * unit)), reason));
  }

  private void corners() {
    if (!flat || head.soffit() != HeadSpec.Soffit.RETURNED) {
      return;
    }
    job.stock().items().stream()
        .filter(i -> i.kind() == Stock.Kind.CORNER && i.path().startsWith("stock."))
        .filter(i -> job.spans().given(i.path() + ".arris"))
        .max(Comparator.comparing(Stock.Item::length))
        .ifPresent(this::corner);
  }

  private void corner(Stock.Item item) {
    long ticks = grid.floor(item.length());
    Length usable = item.length().minus(job.tools().saw().cleanCut().times(2));
    String at = item.path() + ".arris";
    dials.add(
        new Dial(
            at,
            ticks,
            1,
            ticks,
            ticks,
            v -> one(at, format.plain(grid.ticks(v)), "corners as long as the stones need"),
            h ->
                "the longest corner, "
                    + item.mark()
                    + ", yields "
                    + format.plainWithUnit(grid.ticks(grid.floor(usable)))
                    + " after its clean cuts, and the stones need more"));
  }
}
