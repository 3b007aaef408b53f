package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.EdgeName;
import headcourse.bench.Lands;
import headcourse.bench.StackUp;
import headcourse.bench.builds.Tally;
import headcourse.job.Backing;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Limits;
import headcourse.job.Measured;
import headcourse.job.Setting;
import headcourse.job.Stock;
import headcourse.layout.Drift;
import headcourse.layout.HeadLayout;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.statics.AsSolid;
import headcourse.statics.Standing;
import headcourse.stock.StockPlan;
import headcourse.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** For every rule a job that it speaks of, and one so near to it that it keeps silent on. */
final class RuleExamples {
  /** A pair of jobs. */
  record Example(Consumer<Scene> fires, Consumer<Scene> silent) {}

  private final Map<String, Example> examples = new LinkedHashMap<>();

  private RuleExamples() {
    ends();
    courses();
    arches();
    pieces();
    screws();
    work();
  }

  static Map<String, Example> all() {
    return new RuleExamples().examples;
  }

  private void add(String rule, Consumer<Scene> fires, Consumer<Scene> silent) {
    examples.put(rule, new Example(fires, silent));
  }

  private static Length in(double inches) {
    return Length.inches(inches);
  }

  private static HeadSpec.Key key(double rise) {
    return new HeadSpec.Key(in(10), in(10), in(rise), Length.ZERO, Length.ZERO);
  }

  private static StackUp stack(double wanting) {
    Shortfall shortfall = new Shortfall(Length.ZERO, in(wanting), Length.ZERO);
    Drift drift = new Drift(in(0.5), in(0.5), Length.ZERO, in(0.25));
    return new StackUp(Side.LEFT, 6, drift, in(4.5 - wanting), shortfall);
  }

  /** A head that lands so often when it is checked, else breaks the clear distance of a joint. */
  private static Lands lands(int checked) {
    Tally.Miss none = new Tally.Miss(0, 0);
    Tally.Miss joint = new Tally.Miss(10_000 - checked, in(0.2).mm());
    return new Lands(
        new Tally(10_000, checked, 8000, joint, none, none),
        false,
        "ordinary",
        Lands.Mover.FENCE,
        in(0.1),
        6,
        in(0.1));
  }

  /** A head of 2400 in² that would push so much. */
  private static AsSolid solid(Standing.Verdict verdict, double thrust) {
    Change height = new Change("openings[0].head.height", "15 1/2", "makes the head deeper");
    Standing standing =
        new Standing(
            verdict,
            0.65,
            2.5,
            2400 * 25.4 * 25.4,
            thrust,
            Double.POSITIVE_INFINITY,
            in(12).mm(),
            in(12).mm(),
            List.of(),
            true,
            List.of(),
            List.of());
    boolean stands = verdict == Standing.Verdict.STANDS;
    return new AsSolid(standing, stands ? List.of() : List.of(List.of(height)));
  }

  private static HeadLayout.Remark remark(String key, String... values) {
    return new HeadLayout.Remark(key, "said in English", List.of(values));
  }

  /** Every kind of remark that the rule passes on. */
  private static void remarked(Scene s) {
    s.remarks.add(remark("rounded", "head.height", "12\""));
    s.remarks.add(remark("key-bottom", "8 1/16\""));
    s.remarks.add(remark("key-top", "6 1/8\""));
    s.remarks.add(remark("key-open", "8\""));
    s.remarks.add(remark("rise", "9\"", "1/8"));
    s.remarks.add(remark("shoulder", "4\""));
    s.remarks.add(remark("as-drawn", "L1, R2"));
  }

  private void ends() {
    add("as-made", RuleExamples::remarked, s -> s.remarks.add(remark("string")));
    add("bearing-asked", s -> s.bearing = in(3.9), s -> s.bearing = in(4));
    add("bearing-least", s -> s.bearing = in(3.9), s -> s.bearing = in(4));
    add("joint-at-jamb", s -> s.job.first().clear = in(3.25), s -> s.job.first().clear = in(3));
    add("wall-beside", s -> s.job.first().wallLeft = in(4.5), s -> s.job.first().wallLeft = in(5));
    add("stack-up", s -> s.stackUp = stack(0.25), s -> s.stackUp = stack(0));
    add("lands", s -> s.lands = lands(9499), s -> s.lands = lands(9500));
    add("sliver", s -> s.job.first().wallRight = in(6), s -> s.job.first().wallRight = in(7));
    add(
        "leftover",
        s -> s.change("R3", p -> p.bottom = p.top = in(3.9)),
        s -> s.change("R3", p -> p.bottom = p.top = in(4)));
    add(
        "four-corners",
        s -> s.job.courses = List.of(in(0), in(6), in(12), in(18)),
        s -> s.job.courses = List.of(in(0), in(5), in(11), in(18)));
    add(
        "stacked-joints",
        s -> s.job.courses = List.of(in(-6), in(0), in(6)),
        s -> s.job.courses = List.of(in(-5), in(0), in(5)));
  }

  private void courses() {
    add(
        "course-miss",
        s -> s.job.courses = List.of(in(0), in(7), in(13.9), in(20)),
        s -> s.job.courses = List.of(in(0), in(7), in(14), in(20)));
  }

  private void arches() {
    add("arch-depth", s -> arch(s, "jack", 96, 11), s -> arch(s, "jack", 96, 12));
    add("key-rise", s -> s.job.first().key = key(4.1), s -> s.job.first().key = key(4));
    add(
        "segmental-rise",
        s -> {
          arch(s, "segmental", 96, 12);
          s.rise = in(7.9);
        },
        s -> {
          arch(s, "segmental", 96, 12);
          s.rise = in(8);
        });
    add(
        "odd-with-key",
        s -> {
          arch(s, "jack", 96, 12);
          s.right = 5;
        },
        s -> arch(s, "jack", 96, 12));
    add("minor-arch", s -> arch(s, "jack", 73, 12), s -> arch(s, "jack", 72, 12));
    add(
        "jack-camber",
        s -> arch(s, "jack", 72, 12),
        s -> {
          arch(s, "jack", 72, 12);
          s.job.first().params.put("camber", in(0.75));
        });
    add(
        "reads-as-hanging",
        s -> s.asSolid = solid(Standing.Verdict.PUSHES, 3.104),
        s -> s.asSolid = solid(Standing.Verdict.STANDS, 2.5));
    add(
        "wall-takes-thrust",
        s -> {
          // A pier of √(2 · 2 · 2400) = 98 in; half of it is more than 48.
          s.asSolid = solid(Standing.Verdict.STANDS, 2);
          s.job.first().wallLeft = in(48);
        },
        s -> {
          s.asSolid = solid(Standing.Verdict.STANDS, 2);
          s.job.first().wallLeft = in(49);
        });
    add("joint-width", s -> mortar(s, 1 / 16.0), s -> mortar(s, 1 / 8.0));
    add(
        "sharp-arris",
        s -> s.change("R6", p -> p.lean = p.h * Math.tan(Math.toRadians(31))),
        s -> s.change("R6", p -> p.lean = p.h * Math.tan(Math.toRadians(29))));
    add(
        "chord-deviation",
        s -> s.change("R1", p -> p.chordDeviation = 3.3),
        s -> s.change("R1", p -> p.chordDeviation = 3.1));
    add(
        "soffit-hold",
        s -> s.change("K", p -> p.soffit(false)),
        s -> s.change("K", p -> p.soffit(true)));
    add("key-v", s -> s.change("K", p -> p.vee(2)), s -> s.change("K", p -> p.vee(0)));
  }

  private static void arch(Scene s, String shape, double width, double depth) {
    s.job.first().shape = shape;
    s.job.first().width = in(width);
    s.job.first().headHeight = in(depth);
  }

  private static void mortar(Scene s, double joint) {
    arch(s, "jack", 96, 12);
    s.job.joints = Setting.Joints.MORTAR;
    s.job.joint = in(joint);
  }

  private void pieces() {
    add("veneer-weight", s -> weight(s, 145), s -> weight(s, 140));
    add(
        "adhered-design",
        s -> {
          s.job.limits = new Limits(2022, Map.of());
          s.change("K", p -> p.areaM2 = 361 * Figures.M2_PER_IN2);
        },
        s -> s.change("K", p -> p.areaM2 = 361 * Figures.M2_PER_IN2));
    add("veneer-thickness", s -> s.job.thickness = in(2.75), s -> s.job.thickness = in(2.625));
    add(
        "veneer-face",
        s -> s.change("K", p -> p.top = in(36.1)),
        s -> s.change("K", p -> p.top = in(36)));
    add(
        "veneer-area",
        s -> s.change("K", p -> p.areaM2 = 721 * Figures.M2_PER_IN2),
        s -> s.change("K", p -> p.areaM2 = 720 * Figures.M2_PER_IN2));
    add("thickness-range", s -> s.job.thickness = in(1.625), s -> s.job.thickness = in(1.5));
    add(
        "return-least",
        s -> s.each(p -> p.returnDepth = in(2.9)),
        s -> s.each(p -> p.returnDepth = in(3)));
    add(
        "face-least",
        s -> s.change("R2", p -> p.bottom = in(1.9)),
        s -> s.change("R2", p -> p.bottom = in(2)));
    add("bed-least", s -> s.bed = in(0.4375), s -> s.bed = in(0.5));
    add("scratch-coat", s -> s.scratch = in(0.8125), s -> s.scratch = in(0.75));
    add("bed-wedge", s -> outOfLevel(s, 0.8125), s -> outOfLevel(s, 0.75));
    add("widths-agree", s -> widths(s, 95.375), s -> widths(s, 95.5));
    add("lath", s -> {}, s -> s.scratch = Length.ZERO);
    add("overhead-bond", s -> {}, s -> s.each(p -> p.returnDepth = Length.ZERO));
  }

  private static void outOfLevel(Scene s, double by) {
    Measured.Level left = new Measured.Level(in(-48), in(-by / 2));
    Measured.Level right = new Measured.Level(in(48), in(by / 2));
    s.job.first().measured =
        new Measured(null, null, null, List.of(left, right), null, null, Length.ZERO);
  }

  // At head, middle and sill, jambs that lean out by 1/4 in and 1/8 in.
  private static void widths(Scene s, double sill) {
    s.job.first().measured =
        new Measured(in(96.375), in(96.125), in(sill), List.of(), in(0.25), in(0.125), Length.ZERO);
  }

  private static void weight(Scene s, double lbPerFt3) {
    s.job.liftingDensity = lbPerFt3 * Figures.KG_PER_LB / Figures.M3_PER_FT3;
  }

  private void screws() {
    EdgeName out = EdgeName.OUTER;
    Length screw = in(2.5);
    add(
        "screw-reach",
        s -> s.each(p -> p.only(PieceMaker.notch(out, 7, 0.5, 0.5, null, 0, true, "joint"))),
        s -> s.each(p -> p.only(PieceMaker.notch(out, 7, 0.5, 0.5, screw, 1, true, "joint"))));
    add(
        "screw-holds",
        s ->
            s.each(
                p ->
                    p.only(
                        PieceMaker.loose(
                            Anchor.Hold.NOTHING, new Backing(null, Backing.Kind.BOARD, "", 0)))),
        s -> {});
    add(
        "screw-kind",
        s ->
            s.each(
                p ->
                    p.only(
                        PieceMaker.loose(
                            Anchor.Hold.OTHER_KIND, new Backing(null, Backing.Kind.STEEL, "", 0)))),
        s -> {});
    add("slot-kerf", s -> s.job.grinderKerf = in(3 / 16.0), s -> s.job.grinderKerf = in(0.25));
    add("screw-bending", s -> s.each(p -> p.liftingKg = 14.0), s -> s.each(p -> p.liftingKg = 4.0));
    add(
        "screw-withdrawal",
        s -> {},
        s ->
            s.each(
                p ->
                    p.only(
                        PieceMaker.loose(
                            Anchor.Hold.NOTHING, new Backing(null, Backing.Kind.GAP, "", 0)))));
    add(
        "notch-reach",
        s -> s.each(p -> p.only(PieceMaker.notch(out, 7, 0.5, 0.5, screw, 1, false, "L1"))),
        s -> {});
    add(
        "notch-shows",
        s -> s.each(p -> p.only(PieceMaker.notch(out, 7, 0.5, 0.5, screw, 1, true, ""))),
        s -> {});
    add(
        "screw-cover",
        s -> s.each(p -> p.only(PieceMaker.notch(out, 7, 0.37, 0.5, screw, 1, true, "L1"))),
        s -> s.each(p -> p.only(PieceMaker.notch(out, 7, 0.375, 0.5, screw, 1, true, "L1"))));
    add(
        "screw-edge",
        s -> s.each(p -> p.only(PieceMaker.notch(out, 9.75, 0.5, 0.5, screw, 1, true, "L1"))),
        s -> s.each(p -> p.only(PieceMaker.notch(out, 9.5, 0.5, 0.5, screw, 1, true, "L1"))));
    add(
        "screw-count",
        s -> s.change("R1", p -> p.top = in(16.5)),
        s -> s.change("R1", p -> p.top = in(16)));
    add("screw-ends", s -> tall(s, 19.5), s -> tall(s, 19));
    add(
        "screw-size",
        s -> s.limit("screw-shank", in(0.25)),
        s -> s.limit("screw-shank", in(3 / 16.0)));
  }

  private static void tall(Scene s, double height) {
    s.job.first().headHeight = in(height);
    s.change(
        "R1", p -> p.only(PieceMaker.notch(EdgeName.OUTER, 7, 0.5, 0.5, in(2.5), 1, true, "R2")));
  }

  private void work() {
    add(
        "saw-reach",
        s -> s.each(p -> p.saw = List.of(PieceMaker.pass(4.5, 0, false))),
        s -> s.each(p -> p.saw = List.of(PieceMaker.pass(4, 0, true))));
    add(
        "grinder-reach",
        s -> s.limit("grinder-flange", in(3.6)),
        s -> s.limit("grinder-flange", in(3.5)));
    add(
        "no-blank",
        s ->
            s.unfit.add(
                new StockPlan.Unfit(
                    "D1-R2", StockPlan.Part.WHOLE, shortFace(), in(8.25), in(12), in(4))),
        s -> {});
    StockPlan.OrderLine line =
        new StockPlan.OrderLine(
            "X1", Stock.Kind.CORNER, in(24), in(14), in(5), in(1.25), 4, 0, 0, null, "");
    add(
        "spare",
        s -> {
          s.order.add(line);
          s.job.stock = new Stock(List.of(), 0.05);
        },
        s -> {
          s.order.add(line);
          s.job.stock = new Stock(List.of(), 0.1);
        });
    add("waste", s -> s.blanks.add(blank(6.5)), s -> s.blanks.add(blank(6)));
    add(
        "other-width",
        s -> s.savings.add(new StockPlan.Saving("D7", in(7.375), in(8), 10)),
        s -> {});
    add(
        "lifting",
        s -> s.change("K", p -> p.liftingKg = 50 * Figures.KG_PER_LB),
        s -> s.change("K", p -> p.liftingKg = 49.9 * Figures.KG_PER_LB));
    add(
        "lifting-reach",
        s -> s.change("K", p -> p.liftingKg = 29.5 * Figures.KG_PER_LB),
        s -> s.change("K", p -> p.liftingKg = 29.3 * Figures.KG_PER_LB));
    add("overhead-prop", s -> {}, s -> s.limit("overhead-prop", 50.0));
    add("scaffold", s -> s.job.first().height = in(132), s -> s.job.first().height = in(131));
    add("silica", s -> {}, s -> uncut(s));
    add("grinder-guard", s -> {}, s -> uncut(s));
    add("dry-closing", s -> {}, s -> s.limit("dry-closing", in(12.5)));
    add("movement-joint", s -> s.job.first().width = in(145), s -> s.job.first().width = in(144));
    add("framing-deflection", s -> {}, s -> s.worked = false);
    add("carries-nothing", s -> {}, s -> s.worked = false);
  }

  private static void uncut(Scene s) {
    s.each(
        p -> {
          p.saw = List.of();
          p.notches = List.of();
        });
  }

  private static StockPlan.Reason shortFace() {
    return new StockPlan.Reason(
        StockPlan.Why.SHORT,
        Stock.Kind.CORNER,
        in(1.25),
        List.of(new StockPlan.Shortage(StockPlan.Measure.FACE, in(12), in(11))));
  }

  private static StockPlan.CutBlank blank(double waste) {
    return new StockPlan.CutBlank(
        "C1#1", "C1", Stock.Kind.CORNER, in(24), in(14), List.of(), in(waste));
  }
}
