package headcourse.layout.fitted;

import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.StoneChange;
import headcourse.layout.StoneChange.Kind;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares a head with what it was before stones were fitted. */
final class StoneChanges {
  private StoneChanges() {}

  /** Stones nobody measured that differ; those measured are what they are. */
  static List<StoneChange> between(HeadLayout before, HeadLayout now) {
    List<StoneChange> all = new ArrayList<>();
    for (PlacedStone s : now.stones()) {
      if (s.fitted()) {
        continue;
      }
      Optional<PlacedStone> old = find(before, s.mark());
      if (old.isEmpty()) {
        all.add(new StoneChange(s.mark(), Kind.NEW, null, null, s.bottom(), s.top(), Length.ZERO));
      } else {
        compare(now, old.get(), s).ifPresent(all::add);
      }
    }
    for (PlacedStone s : before.stones()) {
      if (find(now, s.mark()).isEmpty()) {
        all.add(new StoneChange(s.mark(), Kind.GONE, s.bottom(), s.top(), null, null, Length.ZERO));
      }
    }
    return all;
  }

  private static Optional<PlacedStone> find(HeadLayout head, String mark) {
    return head.stones().stream().filter(s -> s.mark().equals(mark)).findFirst();
  }

  private static Optional<StoneChange> compare(HeadLayout now, PlacedStone a, PlacedStone b) {
    if (a.feet().equals(b.feet()) && a.role() == b.role()) {
      return Optional.empty();
    }
    boolean same =
        width(a).equals(width(b))
            && topWidth(a).equals(topWidth(b))
            && lean(a).equals(lean(b))
            && a.role() == b.role();
    // Past the jamb the return is cut away, so where a stone stands there changes how it is cut.
    Kind kind = same && !reaches(now, a) && !reaches(now, b) ? Kind.MOVED : Kind.RECUT;
    return Optional.of(
        new StoneChange(b.mark(), kind, a.bottom(), a.top(), b.bottom(), b.top(), shift(a, b)));
  }

  private static Length width(PlacedStone s) {
    return s.feet().rightSoffit().minus(s.feet().leftSoffit());
  }

  private static Length topWidth(PlacedStone s) {
    return s.feet().rightTop().minus(s.feet().leftTop());
  }

  private static Length lean(PlacedStone s) {
    return s.feet().leftTop().minus(s.feet().leftSoffit());
  }

  private static boolean reaches(HeadLayout head, PlacedStone s) {
    return outer(s).compareTo(head.jamb(s.side())) > 0 && !s.edges(FaceEdge.Where.SOFFIT).isEmpty();
  }

  private static Length outer(PlacedStone s) {
    return s.side() == Side.LEFT ? s.feet().leftSoffit().negated() : s.feet().rightSoffit();
  }

  private static Length shift(PlacedStone a, PlacedStone b) {
    Length left = b.feet().leftSoffit().minus(a.feet().leftSoffit());
    Length right = b.feet().rightSoffit().minus(a.feet().rightSoffit());
    return left.plus(right).half().times(b.side() == Side.LEFT ? -1 : 1);
  }
}
