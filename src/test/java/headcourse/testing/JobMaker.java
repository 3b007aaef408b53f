package headcourse.testing;

import headcourse.job.Above;
import headcourse.job.Accepted;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Bundle;
import headcourse.job.Care;
import headcourse.job.Checks;
import headcourse.job.Choosing;
import headcourse.job.CutStone;
import headcourse.job.Fastener;
import headcourse.job.Fitted;
import headcourse.job.Floor;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.JobInfo;
import headcourse.job.Language;
import headcourse.job.Limits;
import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.job.PaperSizes;
import headcourse.job.Papers;
import headcourse.job.Params;
import headcourse.job.Printing;
import headcourse.job.Props;
import headcourse.job.Report;
import headcourse.job.Setting;
import headcourse.job.Sheathing;
import headcourse.job.Spans;
import headcourse.job.Stock;
import headcourse.job.Stone;
import headcourse.job.Tools;
import headcourse.job.Wall;
import headcourse.text.Languages;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A job for tests, to be changed field by field; lengths are in inches unless {@code units} says.
 */
public final class JobMaker {
  public Units units = Units.INCH;
  public Length tick = Length.inches(1 / 16.0);

  /** Whether plain rectangles are drawn at full size, too. */
  public boolean everyOutline;

  public String paper = "letter";

  /** What a job may be printed in. */
  public static final Language[] LANGUAGES =
      Languages.choices().stream().map(Language::new).toArray(Language[]::new);

  public Language language = Language.EN;
  public double density = 2320;
  public double liftingDensity = 2320;
  public double friction = 0.65;
  public Above above = Above.NOTHING;
  public Length thickness = Length.inches(1.25);
  public Setting.Joints joints = Setting.Joints.DRY;
  public Length joint = Length.ZERO;
  public Length opens = Length.inches(1 / 64.0);
  public Length cutTolerance = Length.inches(1 / 32.0);
  public Care care = Care.ORDINARY;
  public Wall.Jambs jambs = Wall.Jambs.RETURNED;
  public Length depthOfCut = Length.inches(4);
  public Length grinderKerf = Length.inches(0.25);
  public List<AnchorKind> kinds = List.of(AnchorKind.WOOD_SCREW);
  public List<Length> lengths =
      List.of(
          Length.inches(2),
          Length.inches(2.5),
          Length.inches(3),
          Length.inches(3.5),
          Length.inches(4),
          Length.inches(4.5));
  public Length shank = Length.inches(3 / 16.0);
  public Length embedment = Length.inches(1);
  public Length scratch = Length.inches(0.5);
  public Sheathing sheathing = new Sheathing(Length.inches(0.5), false);
  public List<Backing> backing = List.of(new Backing(null, Backing.Kind.WOOD, "", 0.41));
  public List<Length> courses = List.of();
  public Stock stock = Stock.UNSAID;
  public List<Fitted> fitted = new ArrayList<>();
  public List<CutStone> cut = new ArrayList<>();
  public List<String> spoiled = new ArrayList<>();
  public List<Accepted> accepted = new ArrayList<>();
  public Limits limits = Limits.DEFAULT;
  public Props props = Props.DEFAULT;
  public long steps = 2_000_000;
  public Spans spans = Spans.NONE;
  public final List<OpeningMaker> openings = new ArrayList<>();

  /** One opening; the defaults are a 96 in door with soldiers 8 in wide beside a 10 in key. */
  public static final class OpeningMaker {
    public String mark = "D1";
    public String label = "Door";
    public int count = 1;
    public List<Length> at = List.of();
    public Length level;
    public Length width = Length.inches(96);
    public Length height = Length.inches(96);
    public Length reveal = Length.inches(4);
    public Length wallLeft;
    public Length wallRight;
    public Measured measured;
    public String shape = "soldier";
    public Length headHeight = Length.inches(12);
    public HeadSpec.Key key =
        new HeadSpec.Key(
            Length.inches(10), Length.inches(10), Length.ZERO, Length.ZERO, Length.ZERO);
    public Length min = Length.inches(5);
    public Length max = Length.inches(9);
    public Length target = Length.inches(8);
    public Length step = Length.inches(0.5);
    public Length jump;
    public Integer eachSide;
    public HeadSpec.Rhythm rhythm = HeadSpec.Rhythm.EVEN;
    public boolean mirror = true;
    public long seed = 1;
    public HeadSpec.Prefer prefer = HeadSpec.Prefer.TARGET;
    public Length give = Length.inches(0.5);
    public HeadSpec.Bearing bearing =
        new HeadSpec.Bearing(Length.inches(4), Length.inches(8), Length.inches(6));
    public Length clear = Length.inches(1.5);
    public Floor floor = Floor.UNSAID;
    public HeadSpec.Soffit soffit = HeadSpec.Soffit.RETURNED;
    public Length seat = Length.inches(1);
    public Map<String, Object> params = new HashMap<>();

    private Opening make(int i) {
      return new Opening(
          "openings[" + i + "]",
          mark,
          label,
          count,
          at,
          level,
          width,
          height,
          reveal,
          wallLeft,
          wallRight,
          measured,
          new HeadSpec(
              shape,
              headHeight,
              key,
              new HeadSpec.Stones(
                  min, max, target, step, jump, eachSide, rhythm, mirror, seed, prefer, give, null),
              bearing,
              clear,
              soffit,
              seat,
              new Params(params)),
          floor,
          Choosing.NONE);
    }
  }

  /** A job with one opening. */
  public static JobMaker one() {
    JobMaker m = new JobMaker();
    m.openings.add(new OpeningMaker());
    return m;
  }

  /** The first opening. */
  public OpeningMaker first() {
    return openings.get(0);
  }

  /** The job. */
  public Job make() {
    Map<Bundle, headcourse.job.Paper> papers = new EnumMap<>(Bundle.class);
    for (Bundle b : Bundle.values()) {
      papers.put(b, PaperSizes.named(paper).orElseThrow());
    }
    List<Opening> list = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) {
      list.add(openings.get(i).make(i));
    }
    return new Job(
        "test",
        new JobInfo(
            "26-001",
            "Test barn",
            "1 Test Lane",
            "A client",
            "A mason",
            "AB",
            "2026-05-04",
            "A",
            List.of(new JobInfo.Revision("A", "2026-05-04", "first issue")),
            ""),
        units,
        new Grid(tick),
        new Printing(new Papers(papers), language, "", false, everyOutline),
        new Stone(
            "Grey sandstone",
            "sandstone",
            density,
            liftingDensity,
            friction,
            thickness,
            Stone.Edges.SAWN),
        new Wall(
            Length.inches(0.5),
            scratch,
            sheathing,
            Length.inches(3.5),
            jambs,
            courses,
            above,
            backing),
        new Setting(joints, joint, opens, cutTolerance, care),
        new Tools(
            new Tools.Saw(
                Length.inches(1 / 8.0), depthOfCut, Angle.degrees(45), Length.inches(1 / 8.0)),
            new Tools.Grinder(Length.inches(4.5), grinderKerf)),
        new Fastener(
            kinds, lengths, shank, Length.inches(3 / 8.0), embedment, Length.inches(3 / 8.0)),
        props,
        list,
        stock,
        new Report(fitted, cut, spoiled),
        new Checks(limits, accepted),
        steps,
        spans);
  }
}
