package headcourse.bench;

import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How a head is kept on its marks as it goes up: after the key and after every few stones the outer
 * edge is measured from the centre line. Where it stands too far out by more than is allowed, the
 * next stone loses that much at its outer edge; where it falls short by more, the next joints are
 * opened by that much between them. The wall sheet prints this, and builds tried in numbers do it.
 *
 * @param allowed what an edge may be off before anything is done
 * @param places where it is checked, left side outwards, then right
 */
public record MarkChecks(Length allowed, List<Place> places) {
  /** After how many stones. */
  public static final int EVERY = 3;

  /** Copies the list. */
  public MarkChecks {
    places = List.copyOf(places);
  }

  /**
   * A place where the edge is measured.
   *
   * @param joint the joint beyond the edge
   * @param trimmed the stone that is trimmed where the edge stands too far out: the next that was
   *     not cut before; null where there is none
   * @param opened how many joints share what the edge falls short
   */
  public record Place(JointLine joint, PlacedStone trimmed, int opened) {}

  /** Those of a head. */
  public static MarkChecks of(Job job, HeadLayout head) {
    List<Place> places = new ArrayList<>();
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Map<Integer, PlacedStone> stones =
          head.stones().stream()
              .filter(s -> s.side() == side)
              .collect(Collectors.toMap(PlacedStone::index, s -> s));
      List<JointLine> joints =
          head.joints().stream()
              .filter(j -> j.side() == side && !j.inner().isEmpty() && !j.outer().isEmpty())
              .filter(j -> j.index() % EVERY == 0)
              .sorted(Comparator.comparingInt(JointLine::index))
              .toList();
      for (JointLine j : joints) {
        int next = j.index() + 1;
        while (stones.containsKey(next) && stones.get(next).fitted()) {
          next++;
        }
        int opened = Math.min(EVERY, stones.size() - j.index());
        places.add(new Place(j, stones.get(next), opened));
      }
    }
    return new MarkChecks(job.grid().tick(), places);
  }

  /** Those of a side, outwards. */
  public List<Place> on(Side side) {
    return places.stream().filter(p -> p.joint().side() == side).toList();
  }
}
