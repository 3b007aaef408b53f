package headcourse.layout.flat;

import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Jambs;
import headcourse.layout.Solution;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.Lines;
import headcourse.layout.side.SideCheck;
import headcourse.layout.side.SplitMix;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Brings what a job asks of a flat head onto the grid, and refuses what can't be. */
final class TermsReader {
  private final Job job;
  private final Opening opening;
  private final Grid grid;
  private final LengthFormat format;
  final List<Diagnostic> problems = new ArrayList<>();
  final List<List<Change>> changes = new ArrayList<>();
  final List<Remark> remarks = new ArrayList<>();

  TermsReader(Job job, Opening opening) {
    this.job = job;
    this.opening = opening;
    this.grid = job.grid();
    this.format = new LengthFormat(job.units(), job.grid());
  }

  /** The terms; meaningless where a problem stands. */
  FlatTerms read() {
    HeadSpec head = opening.head();
    HeadSpec.Stones stones = head.stones();
    HeadSpec.Key key = head.key();
    long seed = stones.seed();
    Jambs jambs = Jambs.of(opening);
    boolean even = jambs.even();
    long left = even ? halfWidth(opening).picometres() : jambs.left().picometres();
    long right = even ? left : jambs.right().picometres();
    boolean mixed = stones.rhythm() == HeadSpec.Rhythm.MIXED;
    return new FlatTerms(
        job,
        opening,
        grid.tick().picometres(),
        halfWidth(opening).picometres(),
        Math.min(left, right),
        Math.max(left, right),
        Math.max(1, snapped("head.height", head.height())),
        key == null ? 0 : snapped("head.key.rise", key.rise()),
        key == null ? 0 : snapped("head.key.drop", key.drop()),
        joint(key == null),
        new FlatTerms.Widths(
            Math.max(1, grid.ceil(stones.min())),
            grid.floor(stones.max()),
            stones.target().picometres(),
            mixed ? grid.ceil(stones.step().abs()) : step(stones),
            stones.jump() == null ? Long.MAX_VALUE : grid.floor(stones.jump())),
        usable(),
        new FlatTerms.SideTerms(wall(opening.wallLeft()), seed, left),
        new FlatTerms.SideTerms(
            wall(opening.wallRight()), stones.mirror() ? seed : new SplitMix(seed).next(), right));
  }

  /** Adds a problem at a place of the opening. */
  void problem(String path, String message, String... hints) {
    problems.add(Diagnostic.error(job.spans().of(opening.path() + "." + path), message, hints));
  }

  /** Refuses a key that leaves no joint beside it clear of the jambs, whatever the stones are. */
  void keyStands(FlatTerms terms, Lines lines, boolean fan) {
    HeadSpec.Key key = opening.head().key();
    SideCheck check = new SideCheck(terms, lines, fan);
    if (key == null || check.keyStands()) {
      return;
    }
    long half = fan ? lines.startSoffit() : Math.max(lines.startSoffit(), lines.startTop());
    boolean lean = half > lines.startSoffit() && job.spans().given(at("head.key.top"));
    String path = lean || key.bottom() == null ? "head.key.top" : "head.key.bottom";
    long most = 2 * (check.before() - terms.joint());
    Length width = terms.length(2 * half);
    boolean covers = width.compareTo(new Length(2 * terms.half())) >= 0;
    problem(
        path,
        opening.mark()
            + ": the key is "
            + format.plainWithUnit(width)
            + " wide, the opening "
            + format.plainWithUnit(new Length(2 * terms.half()))
            + (covers
                ? ": a key stands over the middle of an opening, with stones to both sides"
                : ": no joint beside it stands "
                    + format.plainWithUnit(opening.head().clear())
                    + " clear of the jambs"));
    if (!fan) {
      usualKey(key);
    }
    if (most > 0 && !covers) {
      changes.add(
          List.of(
              new Change(
                  at(path),
                  format.plain(terms.length(most)),
                  "leaves the joints beside it clear of the jambs")));
    }
  }

  /** Proposes a key as wide as a stone is meant to be, with the taper that it has, and none. */
  private void usualKey(HeadSpec.Key key) {
    Length width = grid.snap(opening.head().stones().target());
    if (width.compareTo(key.bottom()) < 0) {
      String path = at("head.key.");
      List<Change> all = new ArrayList<>();
      all.add(new Change(path + "bottom", format.plain(width), "a key as wide as a stone"));
      if (job.spans().given(path + "top")) {
        String top = format.plain(grid.snap(width.plus(key.top()).minus(key.bottom())));
        all.add(new Change(path + "top", top, "keeps the key's taper"));
      }
      changes.add(all);
    }
    changes.add(List.of(new Change(at("head.key"), "none", "a head without a key")));
  }

  /** Refuses a key that tapers the wrong way. */
  void keyTapers(HeadSpec.Key key) {
    if (key == null || key.top().compareTo(key.bottom()) >= 0) {
      return;
    }
    problem(
        "head.key.top",
        opening.mark()
            + ": the key is "
            + format.plainWithUnit(key.top())
            + " wide at the top and "
            + format.plainWithUnit(key.bottom())
            + " at the foot: it would slide down between its neighbours");
    String path = opening.path() + ".head.key.";
    String narrower = format.plain(key.bottom());
    String wider = format.plain(key.top());
    changes.add(List.of(new Change(path + "top", narrower, "no narrower at the top")));
    changes.add(List.of(new Change(path + "bottom", wider, "no wider at the foot")));
  }

  private String at(String path) {
    return opening.path() + "." + path;
  }

  FlatReading refused() {
    return new FlatReading(null, new Solution.Refused(problems, changes, 1));
  }

  LengthFormat format() {
    return format;
  }

  /** The key with what was left open filled in: as wide as a stone is meant to be, no taper. */
  HeadSpec.Key openKey() {
    HeadSpec.Key key = opening.head().key();
    if (key == null || key.bottom() != null && key.top() != null) {
      return key;
    }
    Length one = key.bottom() != null ? key.bottom() : key.top();
    if (one == null) {
      one = grid.snap(opening.head().stones().target());
      remarks.add(
          new Remark(
              "key-open",
              "the key's width is left open; it is made " + format.plainWithUnit(one) + " wide",
              List.of(format.plainWithUnit(one))));
    }
    return new HeadSpec.Key(
        key.bottom() == null ? one : key.bottom(),
        key.top() == null ? one : key.top(),
        key.rise(),
        key.drop(),
        key.proud());
  }

  /** Half of the width at the head as measured, else as drawn. */
  static Length halfWidth(Opening opening) {
    return Jambs.of(opening).width().half();
  }

  private static long wall(Length wall) {
    return wall == null ? Long.MAX_VALUE : wall.picometres();
  }

  private long step(HeadSpec.Stones stones) {
    return stones.rhythm() == HeadSpec.Rhythm.GRADED
        ? snapped("head.stones.step", stones.step())
        : 0;
  }

  private long snapped(String path, Length given) {
    long nearest = grid.nearest(given);
    if (!grid.holds(given)) {
      String made = format.plainWithUnit(grid.ticks(nearest));
      remarks.add(
          new Remark(
              "rounded",
              path + " is made " + made + ", the nearest on the grid",
              List.of(path, made)));
    }
    return nearest;
  }

  private long joint(boolean keyless) {
    Length joint = job.setting().joint();
    boolean on = grid.holds(joint);
    if (on && !(keyless && grid.nearest(joint) % 2 != 0)) {
      return grid.nearest(joint);
    }
    long unit = keyless ? 2 : 1;
    long below = Math.floorDiv(grid.floor(joint), unit) * unit;
    String why =
        on
            ? "the joint on the centre line is an odd number of grid steps wide, so that the stones"
                + " on either side of it can't begin on the grid"
            : "the joint is not a whole number of grid steps, so that the stones can't be either";
    String low = format.plain(grid.ticks(below));
    String high = format.plain(grid.ticks(below + unit));
    problems.add(Diagnostic.error(job.spans().of("setting.joint"), why));
    for (String value : List.of(low, high)) {
      changes.add(
          List.of(new Change("setting.joint", value, "puts every stone's edges on the grid")));
    }
    return grid.nearest(joint);
  }

  /** The longest corner's arris less a clean cut at each end, where the yard names corners. */
  private long usable() {
    if (opening.head().soffit() != HeadSpec.Soffit.RETURNED) {
      return Long.MAX_VALUE;
    }
    Length clean = job.tools().saw().cleanCut().times(2);
    return job.stock().items().stream()
        .filter(i -> i.kind() == Stock.Kind.CORNER)
        .mapToLong(i -> grid.floor(i.length().minus(clean)))
        .max()
        .orElse(Long.MAX_VALUE);
  }
}
