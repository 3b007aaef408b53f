package headcourse.layout.curved;

import headcourse.geom.Point;
import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Around;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Sets out a curved head on a soffit that is struck: divides it, bounds it, cuts its stones. */
final class CurvedHeadSolver {
  private final CurvedSpec given;
  private final SoffitCurve struck;
  private final Intrados intrados;
  private final boolean trial;

  CurvedHeadSolver(CurvedSpec given, SoffitCurve struck) {
    this(given, struck, false);
  }

  private CurvedHeadSolver(CurvedSpec given, SoffitCurve struck, boolean trial) {
    this.trial = trial;
    this.given = given;
    this.struck = struck;
    this.intrados = struck.intrados();
  }

  /** The stones of the same head with another number a side; none where it can't be. */
  private List<PlacedStone> others(int each) {
    HeadSpec head = given.head();
    CurvedSpec other =
        new CurvedSpec(
            given.job(), given.opening().with(head.with(head.stones().withEachSide(each))));
    try {
      CurvedHeadSolver solver = new CurvedHeadSolver(other, struck, true);
      // Whether it fits is soon known; why it does not takes a look at all other numbers.
      return solver.counts().isEmpty() ? List.of() : solver.solve().stones();
    } catch (NoHead e) {
      return List.of();
    } finally {
      given.took(other.effort());
    }
  }

  /** The numbers of stones a side that keep the limits of the job. */
  List<Integer> counts() throws NoHead {
    refuseWhatIsForFlatHeads();
    double half = CrownKey.half(given, intrados, ExtradosPlan.of(given, intrados).forKey());
    return new DivisionSolver(given, Divider.of(given, intrados, half)).counts();
  }

  HeadLayout solve() throws NoHead {
    refuseWhatIsForFlatHeads();
    ExtradosPlan plan = ExtradosPlan.of(given, intrados);
    double half = CrownKey.half(given, intrados, plan.forKey());
    DivisionSolver.Best best = new DivisionSolver(given, Divider.of(given, intrados, half)).solve();
    Division division = best.division();
    CrownKey.check(given, division);
    Extrados extrados = plan.over(given, division);
    List<PlacedStone> stones = new StoneComposer(given, division, extrados).stones();
    checkKeyTop(stones);
    List<JointLine> joints = joints(division, extrados);
    HeadLayout head = head(best, stones, joints, extrados);
    checkWalls(division, head.bearing(Side.RIGHT).onWall());
    if (trial) {
      return head;
    }
    Divider divider = Divider.of(given, intrados, half);
    ArrisCheck.remark(given, stones, divider, division, this::others);
    return head(best, stones, joints, extrados);
  }

  private HeadLayout head(
      DivisionSolver.Best best,
      List<PlacedStone> stones,
      List<JointLine> joints,
      Extrados extrados) {
    return new HeadLayout(
        given.opening(),
        given.half(),
        stones,
        joints,
        new HeadLayout.Curve(
            struck.whole(),
            SoffitCurve.mirroredWhole(extrados.half()),
            struck.centres(),
            struck.radius(),
            null,
            struck.places(),
            around(best.division())),
        best.proof(),
        given.remarks());
  }

  private void refuseWhatIsForFlatHeads() throws NoHead {
    HeadSpec.Rhythm rhythm = given.head().stones().rhythm();
    if (rhythm != HeadSpec.Rhythm.EVEN && rhythm != HeadSpec.Rhythm.GRADED) {
      throw given.refuse(
          "stones.rhythm",
          "rhythm " + rhythm.word() + " is for flat heads; a curved one is even or graded",
          given.change("stones.rhythm", "even", "all stones alike"));
    }
    if (given.head().stones().widths() != null) {
      throw given.refuse(
          "stones.widths",
          "widths stone by stone are for flat heads; a curved one divides its soffit by a number"
              + " (each-side) or a target",
          given.change("stones.widths", null, "the soffit is divided"));
    }
    if (given.job().report().fitted().stream()
        .anyMatch(f -> f.opening().equals(given.opening().mark()))) {
      throw given.refuse(
          "stones",
          "stones already cut can be fitted into flat heads only; a curved head's stones are cut"
              + " to the full-size template");
    }
  }

  private void checkKeyTop(List<PlacedStone> stones) throws NoHead {
    HeadSpec.Key key = given.head().key();
    if (key == null || key.bottom() == null || key.top() == null) {
      return;
    }
    double top = stones.get(stones.size() / 2).feet().rightTop().mm() * 2;
    if (Math.abs(top - key.top().mm()) > given.tick()) {
      throw given.contradiction(
          "key.top",
          List.of("key.bottom"),
          "its lower width of " + given.say(key.bottom().mm()) + " and sides square to the soffit",
          key.top().mm(),
          top);
    }
  }

  private void checkWalls(Division division, Length bearing) throws NoHead {
    double wall = given.wall();
    if (bearing.mm() <= wall + 1e-6) {
      return;
    }
    double slope = division.lines().get(division.each()).along().x();
    boolean ring = given.word("extrados", ExtradosPlan.CONCENTRIC).equals(ExtradosPlan.CONCENTRIC);
    String key = ring ? "height" : "shoulder";
    throw given.refuse(
        List.of(key),
        "the head runs "
            + given.say(bearing.mm())
            + " past the jamb, the wall only "
            + given.say(wall),
        wall < given.tick()
            ? List.of()
            : List.of(given.lower(key, ring ? wall / slope : wall, "ends where the wall does")));
  }

  private List<JointLine> joints(Division division, Extrados extrados) {
    List<JointLine> joints = new ArrayList<>();
    for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
      for (int i = 0; i <= division.each(); i++) {
        joints.add(joint(division, extrados, side, i));
      }
    }
    return joints;
  }

  private JointLine joint(Division division, Extrados extrados, Side side, int i) {
    CutLine line = division.lines().get(i);
    boolean centre = i == 0 && !division.key();
    CutLine edge = centre ? line : division.outer(i);
    Point soffit = intrados.at(intrados.crossing(edge, 0, 0));
    Point top = extrados.head(edge);
    Point head = extrados.head(line);
    boolean left = side == Side.LEFT;
    String letter = left ? "L" : "R";
    return new JointLine(
        side,
        i,
        left ? line.foot().mirrored() : line.foot(),
        left ? head.mirrored() : head,
        given.job().grid().snapMm(soffit.x()),
        given.job().grid().snapMm(top.x()),
        centre ? "" : i == 0 ? "K" : letter + i,
        i == division.each() ? "" : letter + (i + 1));
  }

  private List<Around> around(Division division) {
    List<Around> around = new ArrayList<>();
    for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
      for (CutLine line : division.lines()) {
        around.add(new Around(side, line.joint(), Length.mm(line.s())));
      }
    }
    return around;
  }
}
