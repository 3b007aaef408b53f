package headcourse.job.yaml;

import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.units.Length;
import java.util.List;
import java.util.Set;

/** The legs that a corner needs so that every stone of a job's flat heads can be cut from it. */
final class CornerLegs {
  /** Heads whose stones are as high as the head: of an arch only the layout tells. */
  private static final Set<String> FLAT = Set.of("soldier", "jack");

  private CornerLegs() {}

  /** Whether the job alone tells them. */
  static boolean known(List<Opening> openings) {
    return !openings.isEmpty() && openings.stream().allMatch(o -> FLAT.contains(o.head().shape()));
  }

  /** The face: the highest stone, key and all. */
  static Length face(List<Opening> openings) {
    Length most = Length.ZERO;
    for (Opening o : openings) {
      HeadSpec.Key key = o.head().key();
      Length high = o.head().height();
      most = most.max(key == null ? high : high.plus(key.rise()).plus(key.drop()));
    }
    return most;
  }

  /** The return: the deepest reveal, and as much more as its key stands out. */
  static Length back(List<Opening> openings) {
    Length most = Length.ZERO;
    for (Opening o : openings) {
      HeadSpec.Key key = o.head().key();
      Length proud = key == null ? Length.ZERO : key.proud().max(Length.ZERO);
      most = most.max(o.reveal().plus(proud));
    }
    return most;
  }
}
