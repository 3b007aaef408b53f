package headcourse.testing;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Stock;
import headcourse.job.yaml.JobReader;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import headcourse.testing.JobMaker.OpeningMaker;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The job file of a job for tests, as a mason would write it, and jobs read from texts. */
public final class JobYaml {
  private final JobMaker job;
  private final Grid fine;
  private final StringBuilder out = new StringBuilder();

  private JobYaml(JobMaker job) {
    this.job = job;
    this.fine = new Grid(Length.inches(1 / 512.0));
  }

  /** Reads a job's text. */
  public static Outcome<Job> read(String text) {
    return JobReader.read(
        "job.yaml",
        text.getBytes(StandardCharsets.UTF_8),
        Shapes.definitions(),
        RuleBook.limits(),
        name -> Optional.empty());
  }

  /** Reads a job's text that is a good one. */
  public static Job job(String text) {
    Outcome<Job> read = read(text);
    return read.value()
        .orElseThrow(
            () ->
                new AssertionError(
                    read.diagnostics().stream().map(Diagnostic::message).toList() + "\n" + text));
  }

  /** The text of a job. */
  public static String of(JobMaker maker) {
    JobYaml y = new JobYaml(maker);
    y.write();
    return y.out.toString();
  }

  private void line(int in, String key, Object value) {
    if (value instanceof Length l) {
      out.append("  ".repeat(in)).append(key).append(": ").append(say(l)).append('\n');
    } else if (value != null) {
      out.append("  ".repeat(in)).append(key).append(": ").append(value).append('\n');
    }
  }

  private String say(Length l) {
    if (job.units == Units.MILLIMETRE) {
      return BigDecimal.valueOf(l.picometres(), 9).stripTrailingZeros().toPlainString();
    }
    long parts = fine.nearest(l);
    if (!fine.holds(l)) {
      return BigDecimal.valueOf(l.picometres(), 9).stripTrailingZeros().toPlainString() + " mm";
    }
    return BigDecimal.valueOf(parts)
        .divide(BigDecimal.valueOf(512))
        .stripTrailingZeros()
        .toPlainString();
  }

  private void write() {
    line(0, "units", job.units == Units.INCH ? "in" : "mm");
    line(0, "grid", job.tick);
    line(0, "paper", job.paper);
    out.append("stone:\n");
    line(1, "density", job.density + " kg/m3");
    line(1, "thickness", job.thickness);
    out.append("setting:\n");
    line(1, "joints", job.joints.name().toLowerCase(java.util.Locale.ROOT));
    line(1, "joint", job.joint);
    line(1, "opens", job.opens);
    line(1, "cut-tolerance", job.cutTolerance);
    out.append("openings:\n");
    job.openings.forEach(this::opening);
    stock();
    fitted();
    if (!job.spoiled.isEmpty()) {
      line(0, "spoiled", job.spoiled);
    }
    line(0, "steps", job.steps);
  }

  private void opening(OpeningMaker o) {
    out.append("  - mark: ").append(o.mark).append('\n');
    line(2, "count", o.count);
    if (!o.at.isEmpty()) {
      line(2, "at", o.count == 1 ? o.at.get(0) : o.at.stream().map(this::say).toList());
    }
    line(2, "level", o.level);
    line(2, "width", o.width);
    line(2, "height", o.height);
    line(2, "reveal", o.reveal);
    line(2, "wall-left", o.wallLeft);
    line(2, "wall-right", o.wallRight);
    if (o.measured != null) {
      measured(o.measured);
    }
    out.append("    head:\n");
    line(3, "shape", o.shape);
    line(3, "height", o.headHeight);
    key(o.key);
    out.append("      stones:\n");
    line(4, "min", o.min);
    line(4, "max", o.max);
    line(4, "target", o.target);
    line(4, "step", o.step);
    line(4, "jump", o.jump);
    line(4, "each-side", o.eachSide);
    line(4, "rhythm", o.rhythm.word());
    line(4, "mirror", o.mirror);
    line(4, "seed", o.seed);
    line(4, "give", o.give.mm() + " mm");
    out.append("      bearing:\n");
    line(4, "min", o.bearing.min());
    line(4, "max", o.bearing.max());
    line(4, "target", o.bearing.target());
    line(3, "clear", o.clear);
    line(3, "soffit", o.soffit.word());
    line(3, "seat", o.seat);
    List<String> own =
        Shapes.named(o.shape).orElseThrow().definition().params().stream()
            .map(p -> p.name())
            .toList();
    for (Map.Entry<String, Object> e : new TreeMap<>(o.params).entrySet()) {
      if (own.contains(e.getKey())) {
        Object v = e.getValue();
        boolean rate = e.getKey().equals("camber");
        line(
            3,
            e.getKey(),
            v instanceof Double d
                ? BigDecimal.valueOf(Math.round(d * 1000), 3).toPlainString()
                : !(v instanceof Angle a)
                    ? v
                    : rate
                        ? BigDecimal.valueOf(a.tan() * 12).toPlainString() + " in 12"
                        : BigDecimal.valueOf(a.degrees()).toPlainString());
      }
    }
  }

  private void key(HeadSpec.Key key) {
    if (key == null) {
      line(3, "key", "none");
      return;
    }
    out.append("      key:\n");
    line(4, "bottom", key.bottom());
    line(4, "top", key.top());
    line(4, "rise", key.rise());
    line(4, "drop", key.drop());
    line(4, "proud", key.proud());
  }

  private void measured(Measured m) {
    out.append("    measured:\n");
    if (m.widthHead() != null || m.widthMiddle() != null || m.widthSill() != null) {
      out.append("      width:\n");
      line(4, "head", m.widthHead());
      line(4, "middle", m.widthMiddle());
      line(4, "sill", m.widthSill());
    }
    if (m.plumbLeft() != null || m.plumbRight() != null) {
      out.append("      plumb:\n");
      line(4, "left", m.plumbLeft());
      line(4, "right", m.plumbRight());
    }
    line(3, "centre-off", m.centreOff());
  }

  private void stock() {
    if (job.stock.items().isEmpty()) {
      return;
    }
    out.append("stock:\n");
    for (Stock.Kind kind : Stock.Kind.values()) {
      boolean corner = kind == Stock.Kind.CORNER;
      List<Stock.Item> items =
          job.stock.items().stream().filter(i -> i.kind() == kind && !i.toOrder()).toList();
      if (!items.isEmpty()) {
        line(1, corner ? "corners" : "flats", "");
      }
      for (Stock.Item i : items) {
        out.append("    - mark: ").append(i.mark()).append('\n');
        line(3, corner ? "arris" : "length", i.length());
        line(3, corner ? "face" : "height", i.face());
        if (corner) {
          line(3, "return", i.returnLeg());
        }
        line(3, "thickness", i.thickness());
        line(3, "count", i.count());
      }
    }
  }

  private void fitted() {
    String opening = "";
    for (Fitted f : job.fitted) {
      if (opening.isEmpty()) {
        out.append("fitted:\n");
      }
      if (!f.opening().equals(opening)) {
        opening = f.opening();
        out.append("  ").append(opening).append(":\n");
      }
      out.append("    ").append(f.stone()).append(":\n");
      line(3, "bottom", f.bottom());
      line(3, "top", f.top());
      line(3, "height", f.height());
      line(3, "piece", f.piece().isEmpty() ? null : f.piece());
    }
  }
}
