package headcourse.layout.flat;

import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Params;
import headcourse.job.ShapeDef;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.side.Fan;
import headcourse.layout.side.FanGeometry;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.List;

/** A flat arch: every joint points at one striking point on the centre line. */
public final class JackShape implements FlatShape {
  /**
   * Half an inch per foot of span for each 4 in of depth (BIA Technical Note 31A, 1967), as the
   * tangent of the skewback per foot of span.
   */
  private static final double USUAL_RATE = 0.5 / 4;

  /** Tangent of the flattest joint, off horizontal: what lies flatter is a slip of the pen. */
  private static final double FLATTEST = Math.tan(Math.toRadians(10));

  /** Least height of a head, mm. */
  private static final double LEAST = Length.inches(1).mm();

  /** Width of its foot that a key is offered which would have none, mm. */
  private static final double LEAST_FOOT = Length.inches(2).mm();

  private static final ShapeDef DEFINITION =
      new ShapeDef(
          "jack",
          List.of(
              new ParamDef(
                  "skewback", Kind.ANGLE, List.of(), "angle of the end joint off horizontal"),
              new ParamDef(
                  "rake",
                  Kind.ANGLE,
                  List.of(),
                  "lean of the skewback for each foot of span, as in 1/2 in 4"),
              new ParamDef(
                  "striking",
                  Kind.LENGTH,
                  List.of(),
                  "depth of the striking point below the soffit line"),
              new ParamDef(
                  "divide",
                  Kind.WORD,
                  List.of("top", "soffit", "angle"),
                  "what the stones are divided equally on"),
              new ParamDef(
                  "camber",
                  Kind.LENGTH_OR_RATE,
                  List.of(),
                  "rise of the soffit in the middle, or its rate of the span")));

  @Override
  public ShapeDef definition() {
    return DEFINITION;
  }

  @Override
  public FlatReading read(Job job, Opening opening) {
    TermsReader reader = new TermsReader(job, opening);
    FlatTerms terms = reader.read();
    Fan fan = fan(reader, terms);
    double camber = camber(opening);
    if (reader.problems.isEmpty()) {
      keyAgrees(reader, terms, fan);
    }
    if (reader.problems.isEmpty()) {
      keyHasFoot(reader, terms, fan);
    }
    if (reader.problems.isEmpty()) {
      double striking = fan.striking(terms, targetEnd(terms));
      reader.keyStands(terms, fan.lines(terms, striking), true);
    }
    if (reader.problems.isEmpty() && camber > 0 && camber < job.grid().tick().mm() / 2) {
      reader.problem(
          "head.camber",
          "a camber of less than half a step of the grid can't be cut; leave it out, or give "
              + reader.format().plainWithUnit(job.grid().tick())
              + " or more");
    }
    if (reader.problems.isEmpty() && camber > terms.mm(terms.height()) - LEAST) {
      reader.problem("head.camber", "the camber leaves less than 1 in of the head in the middle");
    }
    if (!reader.problems.isEmpty()) {
      return reader.refused();
    }
    return FlatReading.of(new FlatHead(terms, new FanGeometry(terms, fan, camber), reader.remarks));
  }

  private static double camber(Opening opening) {
    Params params = opening.head().params();
    double width = TermsReader.halfWidth(opening).mm() * 2;
    return params
        .length("camber")
        .map(Length::mm)
        .or(() -> params.angle("camber").map(a -> width * a.tan()))
        .orElse(0.0);
  }

  private static Fan fan(TermsReader reader, FlatTerms terms) {
    Params params = terms.head().params();
    Angle skewback = params.angle("skewback").orElse(null);
    Angle rake = params.angle("rake").orElse(null);
    Length striking = params.length("striking").orElse(null);
    int given = (skewback == null ? 0 : 1) + (rake == null ? 0 : 1) + (striking == null ? 0 : 1);
    if (given > 1) {
      reader.problem(
          "head",
          "a jack arch takes one of skewback, rake and striking, not " + given + " of them");
    }
    double steep = Double.NaN;
    double depth = Double.NaN;
    if (skewback != null) {
      steep = skewback.tan();
      if (!(skewback.degrees() >= 30 && skewback.degrees() < 90)) {
        reader.problem(
            "head.skewback", "the skewback is measured off horizontal: from 30° to less than 90°");
      }
    } else if (striking != null) {
      depth = striking.mm();
    } else {
      // tan γ = rate · span in feet, and the joint through the jamb has tan γ = half span / depth.
      depth = Length.inches(6).mm() / (rake == null ? USUAL_RATE : rake.tan());
    }
    double lowest = Math.max(terms.mm(terms.drop()), 0);
    if (!Double.isNaN(depth) && !(depth > lowest && Double.isFinite(depth))) {
      reader.problem(
          striking != null ? "head.striking" : "head.rake",
          "the joints would meet above the lower end of the key");
    } else if (depth < TermsReader.halfWidth(terms.opening()).mm() * FLATTEST) {
      reader.problem(
          striking != null ? "head.striking" : "head.rake",
          "the joint at the jamb would lie flatter than 10° off horizontal");
    }
    return new Fan(steep, depth, divide(params), keyBottom(reader, terms), keyTop(terms));
  }

  private static Fan.Divide divide(Params params) {
    return switch (params.word("divide").orElse("soffit")) {
      case "top" -> Fan.Divide.TOP;
      case "angle" -> Fan.Divide.ANGLE;
      default -> Fan.Divide.SOFFIT;
    };
  }

  /** A key whose size is left open is as wide below as a stone is meant to be. */
  private static double keyBottom(TermsReader reader, FlatTerms terms) {
    HeadSpec.Key key = terms.head().key();
    if (key == null || key.bottom() == null && key.top() != null) {
      return Double.NaN;
    }
    return key.bottom() == null ? reader.openKey().bottom().mm() : key.bottom().mm();
  }

  private static double keyTop(FlatTerms terms) {
    HeadSpec.Key key = terms.head().key();
    return key == null || key.top() == null ? Double.NaN : key.top().mm();
  }

  /** A fan that follows its end strikes deepest where it ends farthest out; this stands for all. */
  private static long targetEnd(FlatTerms terms) {
    return Math.floorDiv(terms.half() + terms.bearing().target().picometres(), terms.tick());
  }

  /** A key that hangs nearly to the striking point would come to an edge that nobody can cut. */
  private static void keyHasFoot(TermsReader reader, FlatTerms terms, Fan fan) {
    double striking = fan.striking(terms, targetEnd(terms));
    double line = 2 * fan.keyLine(terms, striking);
    double joint = terms.mm(terms.joint());
    double foot = line * (striking - terms.mm(terms.drop())) / striking - joint;
    if (Double.isNaN(foot) || foot >= terms.mm(1)) {
      return;
    }
    LengthFormat format = reader.format();
    Grid grid = terms.job().grid();
    double left = Math.min(LEAST_FOOT, (line - joint) / 2);
    Length drop = Length.mm(striking * (1 - (left + joint) / line));
    reader.problem(
        "head.key.drop",
        "the key's sides are joints of the fan, and nothing of it is left "
            + format.plainWithUnit(terms.length(terms.drop()))
            + " below the soffit line");
    if (drop.mm() > terms.mm(1)) {
      reader.changes.add(
          List.of(
              new Change(
                  terms.opening().path() + ".head.key.drop",
                  format.plain(grid.ticks(grid.floor(drop))),
                  "leaves its lower end wide enough to cut")));
    }
  }

  /** Where both widths of the key are given they must be those of one fan, within a tick. */
  private static void keyAgrees(TermsReader reader, FlatTerms terms, Fan fan) {
    if (Double.isNaN(fan.bottom()) || Double.isNaN(fan.top())) {
      return;
    }
    double striking = fan.striking(terms, targetEnd(terms));
    double implied = fan.impliedTop(terms, striking);
    if (Math.abs(implied - fan.top()) <= terms.mm(1) + 1e-9) {
      return;
    }
    LengthFormat format = reader.format();
    String top = format.plain(Length.mm(implied));
    Fan other = new Fan(fan.skewback(), fan.depth(), fan.divide(), Double.NaN, fan.top());
    double down = other.keyLine(terms, striking) * (striking - terms.mm(terms.drop())) / striking;
    String bottom = format.plain(Length.mm(2 * down - terms.mm(terms.joint())));
    String path = terms.opening().path() + ".head.key";
    reader.problems.add(
        Diagnostic.error(
            terms.job().spans().of(path + ".top"),
            "the key's sides are joints of the fan: "
                + format.plainWithUnit(terms.head().key().bottom())
                + " at the bottom makes "
                + format.plainWithUnit(Length.mm(implied))
                + " at the top, not "
                + format.plainWithUnit(terms.head().key().top())));
    reader.changes.add(
        List.of(new Change(path + ".top", top, "what the fan makes of the bottom width")));
    reader.changes.add(
        List.of(new Change(path + ".bottom", bottom, "what the fan makes of the top width")));
    reader.changes.add(List.of(new Change(path + ".top", null, "the fan says how wide it is")));
  }
}
