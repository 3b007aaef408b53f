package headcourse.layout.curved;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import java.util.ArrayList;
import java.util.List;

/**
 * A curved shape: it names its own keys and strikes the right half of its soffit; the rest is the
 * same for all. {@link SegmentalHead} is the one to copy for a new shape.
 */
abstract class CurvedShape implements HeadShape {
  private final ShapeDef definition;

  /**
   * A shape.
   *
   * @param name the word after {@code shape:}
   * @param own the keys that only it has
   */
  CurvedShape(String name, ParamDef... own) {
    List<ParamDef> all = new ArrayList<>(List.of(own));
    all.addAll(COMMON);
    definition = new ShapeDef(name, all);
  }

  private static final List<ParamDef> COMMON =
      List.of(
          new ParamDef(
              "extrados",
              Kind.WORD,
              List.of("concentric", "level", "stepped"),
              "what the stones run up to: a ring of one depth, a level line, the wall's courses"),
          length("top", "level: height of the line above the soffit's crown; default the depth"),
          length(
              "shoulder",
              "level, stepped: how far the head runs past the jambs; default the depth"),
          length(
              "course", "stepped: height of the wall's courses, where wall.courses is not given"),
          new ParamDef(
              "arris",
              Kind.WORD,
              List.of("straight", "worked"),
              "whether a stone's lower edge stays straight or is worked to the curve"),
          length(
              "arris-limit",
              "how far a straight arris may stand off the curve; default 1/8 in, 3 mm"));

  /** A key that holds a length. */
  static ParamDef length(String name, String help) {
    return new ParamDef(name, Kind.LENGTH, List.of(), help);
  }

  @Override
  public final ShapeDef definition() {
    return definition;
  }

  @Override
  public final Solution setOut(Job job, Opening opening) {
    CurvedSpec given = new CurvedSpec(job, opening);
    try {
      given.checkLengths(definition.params());
      HeadLayout head = new CurvedHeadSolver(given, strike(given)).solve();
      return new Solution.Solved(head, given.effort());
    } catch (NoHead e) {
      return e.refused();
    }
  }

  @Override
  public final List<Arrangement> arrangements(Job job, Opening opening) {
    CurvedSpec given = new CurvedSpec(job, opening);
    List<Arrangement> all = new ArrayList<>();
    try {
      given.checkLengths(definition.params());
      SoffitCurve struck = strike(given);
      for (int n : new CurvedHeadSolver(given, struck).counts()) {
        if (setOut(job, HeadShape.withEachSide(opening, n)) instanceof Solution.Solved s) {
          all.add(HeadShape.made(job, s.head(), true));
        }
      }
    } catch (NoHead e) {
      return List.of();
    }
    return all;
  }

  /**
   * Strikes the soffit.
   *
   * @param given what the job gives
   * @throws NoHead where measures contradict each other or make no such curve
   */
  abstract SoffitCurve strike(CurvedSpec given) throws NoHead;
}
