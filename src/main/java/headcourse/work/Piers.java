package headcourse.work;

import headcourse.diag.Diagnostic;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The piers between openings whose places along the wall are given, and what runs onto them. */
final class Piers {
  private final Job job;
  private final List<Place> places;
  private final LengthFormat format;

  Piers(Job job) {
    this.job = job;
    this.places = Place.of(job);
    this.format = new LengthFormat(job.units(), job.grid());
  }

  /** Openings one inside another, and walls beside them that reach into the next one. */
  List<Diagnostic> contradictions() {
    List<Diagnostic> said = new ArrayList<>();
    TreeSet<String> told = new TreeSet<>();
    for (int i = 0; i < places.size(); i++) {
      Place a = places.get(i);
      for (Place b : places.subList(i + 1, places.size())) {
        if (!Place.beside(a, b)) {
          continue;
        }
        Length pier = b.left().minus(a.right());
        if (pier.picometres() < 0) {
          if (told.add(b.opening().path() + ".at")) {
            said.add(inside(a, b));
          }
          continue;
        }
        for (boolean left : new boolean[] {true, false}) {
          Opening own = left ? a.opening() : b.opening();
          Length wall = left ? own.wallRight() : own.wallLeft();
          String path = own.path() + (left ? ".wall-right" : ".wall-left");
          if (wall != null && wall.compareTo(pier) > 0 && told.add(path)) {
            said.add(wall(own, left ? b.opening() : a.opening(), path, pier, left));
          }
        }
      }
    }
    return said;
  }

  private Diagnostic inside(Place a, Place b) {
    return Diagnostic.error(
        job.spans().of(b.opening().path() + ".at"),
        b.opening().mark()
            + ": begins "
            + size(b.left())
            + " along the wall, but "
            + a.opening().mark()
            + " ends at "
            + size(a.right()),
        "correct at:, the centre line of each opening"
            + (Place.levelled(a, b)
                ? ""
                : "; give level: to both if they don't stand in one storey"));
  }

  private Diagnostic wall(Opening own, Opening other, String path, Length pier, boolean right) {
    return Diagnostic.error(
        job.spans().of(path),
        own.mark()
            + ": there can't be so much wall on the "
            + (right ? "right" : "left")
            + ", because "
            + other.mark()
            + " begins "
            + size(pier)
            + " from the jamb",
        "expected at most " + size(pier) + "; or correct at:");
  }

  /**
   * Two heads that overlap.
   *
   * @param one number of the opening on the left
   * @param other number of the one on the right; the same for two of one kind
   * @param refused what is wrong, and what might be written instead
   */
  record Clash(int one, int other, Solution.Refused refused) {}

  /**
   * Heads that overlap on the pier between them.
   *
   * @param heads one for each opening; null for one that is not to be looked at
   */
  List<Clash> clashes(List<HeadLayout> heads) {
    List<Clash> clashes = new ArrayList<>();
    TreeSet<String> told = new TreeSet<>();
    double widest = 0;
    for (Place p : places) {
      HeadLayout head = heads.get(p.number());
      widest = Math.max(widest, head == null ? 0 : reach(head, p));
    }
    for (int i = 0; i < places.size(); i++) {
      Place a = places.get(i);
      for (Place b : places.subList(i + 1, places.size())) {
        if (b.left().minus(a.right()).mm() > 2 * widest + job.setting().joint().mm()) {
          break;
        }
        boolean both = heads.get(a.number()) != null && heads.get(b.number()) != null;
        if (both && told.add(a.number() + " " + b.number())) {
          Clash clash = clash(a, heads.get(a.number()), b, heads.get(b.number()));
          if (clash != null) {
            clashes.add(clash);
          } else {
            told.remove(a.number() + " " + b.number());
          }
        }
      }
    }
    return clashes;
  }

  /** How far a head runs past its opening on the side where it runs farther; mm. */
  private static double reach(HeadLayout head, Place p) {
    double most = 0;
    for (Point[] e : p.edges(head, false)) {
      for (Point end : e) {
        most = Math.max(most, Math.max(end.x() - p.right().mm(), p.left().mm() - end.x()));
      }
    }
    return most;
  }

  private Clash clash(Place a, HeadLayout left, Place b, HeadLayout right) {
    boolean levelled = Place.levelled(a, b);
    double joint = job.setting().joint().mm();
    Gap gap = Gap.between(a.edges(left, levelled), b.edges(right, levelled), joint);
    if (levelled) {
      gap = Gap.lesser(gap, Gap.between(a.edges(left, true), b.jambs(), 0));
      gap = Gap.lesser(gap, Gap.between(a.jambs(), b.edges(right, true), 0));
    }
    if (gap == null || gap.room() > -Tolerance.VERTEX / 50) {
      return null;
    }
    return new Clash(a.number(), b.number(), refused(a, b, gap));
  }

  private Solution.Refused refused(Place a, Place b, Gap gap) {
    Length pier = b.left().minus(a.right());
    Length one = Length.mm(gap.left()).minus(a.right());
    Length two = b.left().minus(Length.mm(gap.right()));
    Length joint = Length.mm(gap.joint());
    String message =
        a.opening().mark()
            + " and "
            + b.opening().mark()
            + " overlap: the pier between them is "
            + size(pier)
            + ", "
            + a.opening().mark()
            + " runs "
            + size(one)
            + " past its jamb and "
            + b.opening().mark()
            + " "
            + size(two)
            + (joint.isPositive() ? ", with a joint of " + size(joint) : "")
            + ": "
            + size(one.plus(two).plus(joint).minus(pier))
            + " too much";
    List<Diagnostic> said = new ArrayList<>();
    String[] hints =
        Place.levelled(a, b)
            ? new String[0]
            : new String[] {
              "both are taken to stand in one storey; give level: to both if they don't"
            };
    said.add(Diagnostic.error(job.spans().of(a.opening().path() + ".at"), message, hints));
    if (a.number() != b.number()) {
      said.add(
          Diagnostic.note(
              job.spans().of(b.opening().path() + ".at"),
              b.opening().mark() + ": stands on the other side of that pier"));
    }
    return new Solution.Refused(said, proposals(a, b, pier.minus(joint), one, two), 1);
  }

  /** Less wall for the one head, for the other, or half of it for each. */
  private List<List<Change>> proposals(Place a, Place b, Length room, Length one, Length two) {
    List<List<Change>> all = new ArrayList<>();
    String right = a.opening().path() + ".wall-right";
    String left = b.opening().path() + ".wall-left";
    all.add(List.of(wall(right, room.minus(two))));
    all.add(List.of(wall(left, room.minus(one))));
    all.add(List.of(wall(right, room.half()), wall(left, room.half())));
    all.removeIf(c -> c.stream().anyMatch(x -> x.value().startsWith("-")));
    return all;
  }

  private Change wall(String path, Length wall) {
    String text = format.plain(job.grid().ticks(job.grid().floor(wall)));
    return new Change(path, text, "leaves the rest of the pier to the other head");
  }

  private String size(Length length) {
    return format.plainWithUnit(length);
  }
}
