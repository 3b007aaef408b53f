package headcourse.testing;

import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.layout.Change;
import headcourse.units.Angle;
import headcourse.units.AngleParser;
import headcourse.units.Length;
import headcourse.units.NotationException;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes a change into a job the way a user would: by its path and the text of its value. */
public final class ChangeWriter {
  private ChangeWriter() {}

  /** Changes the job; refuses a path it does not know. */
  public static void write(JobMaker maker, Change change) {
    JobMaker.OpeningMaker o = maker.first();
    HeadSpec.Key k = o.key;
    HeadSpec.Bearing b = o.bearing;
    String v = change.value();
    if (change.path().startsWith("fitted.")) {
      maker.fitted.replaceAll(f -> f.path().equals(change.path()) ? fitted(maker, f, v) : f);
      return;
    }
    switch (change.path()) {
      case "setting.joint" -> maker.joint = length(maker, v);
      case "openings[0].head.stones.min" -> o.min = length(maker, v);
      case "openings[0].head.stones.max" -> o.max = length(maker, v);
      case "openings[0].head.stones.step" -> o.step = length(maker, v);
      case "openings[0].head.stones.jump" -> o.jump = length(maker, v);
      case "openings[0].head.stones.each-side" -> o.eachSide = Integer.valueOf(v);
      case "openings[0].head.stones.rhythm" ->
          o.rhythm = HeadSpec.Rhythm.valueOf(v.toUpperCase(Locale.ROOT));
      case "openings[0].head.bearing.min" ->
          o.bearing = new HeadSpec.Bearing(length(maker, v), b.max(), b.target());
      case "openings[0].head.bearing.max" ->
          o.bearing = new HeadSpec.Bearing(b.min(), length(maker, v), b.target());
      case "openings[0].head.clear" -> o.clear = length(maker, v);
      case "openings[0].head.key.bottom" ->
          o.key = new HeadSpec.Key(length(maker, v), k.top(), k.rise(), k.drop(), k.proud());
      case "openings[0].head.key.top" ->
          o.key = new HeadSpec.Key(k.bottom(), length(maker, v), k.rise(), k.drop(), k.proud());
      case "openings[0].head.striking" -> o.params.put("striking", length(maker, v));
      case "openings[0].head.skewback" -> o.params.put("skewback", angle(v, maker.units));
      case "openings[0].head.rake" -> o.params.put("rake", angle(v, maker.units));
      case "stock.corners[0].arris" -> maker.stock = corners(maker.stock, length(maker, v));
      default -> throw new IllegalArgumentException("no such place: " + change.path());
    }
  }

  /** A width alone, or a map of bottom, top and height. */
  private static Fitted fitted(JobMaker maker, Fitted f, String v) {
    if (!v.startsWith("{")) {
      return new Fitted(f.path(), f.opening(), f.stone(), length(maker, v), null, null);
    }
    Length[] sizes = new Length[3];
    for (String part : v.substring(1, v.length() - 1).split(", ")) {
      String[] keyValue = part.split(": ");
      sizes[List.of("bottom", "top", "height").indexOf(keyValue[0])] = length(maker, keyValue[1]);
    }
    return new Fitted(f.path(), f.opening(), f.stone(), sizes[0], sizes[1], sizes[2]);
  }

  private static Stock corners(Stock stock, Length arris) {
    List<Stock.Item> items = new ArrayList<>(stock.items());
    Stock.Item i = items.get(0);
    items.set(
        0,
        new Stock.Item(
            i.path(),
            i.mark(),
            i.kind(),
            arris,
            i.face(),
            i.returnLeg(),
            i.thickness(),
            i.count(),
            i.toOrder(),
            i.price()));
    return new Stock(items, stock.spare());
  }

  private static Angle angle(String text, Units units) {
    try {
      return AngleParser.parse(text, units);
    } catch (NotationException e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  private static Length length(JobMaker maker, String text) {
    if (maker.units == Units.MILLIMETRE) {
      return Length.mm(Double.parseDouble(text));
    }
    boolean negative = text.startsWith("-");
    double sum = 0;
    for (String part : text.substring(negative ? 1 : 0).split(" ")) {
      String[] f = part.split("/");
      sum +=
          f.length == 1
              ? Double.parseDouble(f[0])
              : Double.parseDouble(f[0]) / Integer.parseInt(f[1]);
    }
    return Length.inches(negative ? -sum : sum);
  }
}
