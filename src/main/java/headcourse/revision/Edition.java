package headcourse.revision;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.PlumbRake;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.layout.StoneSize;
import headcourse.stock.StockPlan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One revision of a job, as far as it is compared.
 *
 * @param revision its mark; may be empty
 * @param openings in the job's order
 */
public record Edition(String revision, List<Opening> openings) {
  /** Copies the openings. */
  public Edition {
    openings = List.copyOf(openings);
  }

  /** An opening with its head. */
  record Opening(String mark, Map<Property, Value> values, List<Stone> stones) {}

  /** A stone, by its full mark. */
  record Stone(String mark, Map<Property, Value> values) {}

  /** The edition that a job worked out is. */
  public static Edition of(Job job, List<HeadWork> heads, StockPlan stock) {
    Map<String, String> stockOf = new TreeMap<>();
    for (StockPlan.CutBlank b : stock.blanks()) {
      b.cuts().stream()
          .filter(c -> c.part() != StockPlan.Part.SOFFIT)
          .forEach(c -> stockOf.putIfAbsent(c.stone(), b.stock()));
    }
    List<Opening> openings = new ArrayList<>();
    for (HeadWork head : heads) {
      List<Stone> stones = new ArrayList<>();
      for (Piece p : head.pieces()) {
        stones.add(new Stone(p.mark(), values(head.layout(), p, stockOf.get(p.mark()))));
      }
      openings.add(new Opening(head.layout().opening().mark(), values(head.layout()), stones));
    }
    return new Edition(job.info().revision(), openings);
  }

  private static Map<Property, Value> values(HeadLayout layout) {
    var opening = layout.opening();
    var curve = layout.curve();
    Map<Property, Value> v = new EnumMap<>(Property.class);
    v.put(Property.COUNT, Value.of(opening.count()));
    v.put(Property.SHAPE, Value.of(opening.head().shape()));
    v.put(Property.WIDTH, Value.of(layout.halfWidth().times(2).mm()));
    v.put(Property.HEIGHT, Value.of(opening.head().height().mm()));
    v.put(Property.BEARING_LEFT, Value.of(layout.bearing(Side.LEFT).onWall().mm()));
    v.put(Property.BEARING_RIGHT, Value.of(layout.bearing(Side.RIGHT).onWall().mm()));
    if (curve != null && curve.radius() != null) {
      v.put(Property.RADIUS, Value.of(curve.radius()));
    }
    if (curve != null && curve.striking() != null) {
      v.put(Property.STRIKING, Value.of(curve.striking()));
    }
    return v;
  }

  private static Map<Property, Value> values(HeadLayout layout, Piece p, String stock) {
    StoneSize size = StoneSize.of(layout, p.stone());
    PlumbRake rake = PlumbRake.of(p.stone());
    Map<Property, Value> v = new EnumMap<>(Property.class);
    v.put(Property.BOTTOM, Value.of(size.bottom().mm()));
    v.put(Property.TOP, Value.of(size.top().mm()));
    v.put(Property.HEIGHT, Value.of(size.height().mm()));
    v.put(Property.RAKE_INNER, Value.of(rake.inner().degrees()));
    v.put(Property.RAKE_OUTER, Value.of(rake.outer().degrees()));
    v.put(Property.THICKNESS, Value.of(p.thickness().mm()));
    v.put(Property.RETURN, Value.of(p.leg().depth().mm()));
    v.put(Property.RELIEF, Value.of(p.leg().relief().mm()));
    v.put(Property.PROUD, Value.of(p.stone().proud().mm()));
    v.put(Property.NOTCHES, new Value("", p.notches().stream().map(n -> n.height().mm()).toList()));
    v.put(
        Property.SCREWS,
        new Value(
            "",
            p.notches().stream()
                .map(Notch::screw)
                .filter(Objects::nonNull)
                .map(s -> s.mm())
                .toList()));
    if (stock != null) {
      v.put(Property.STOCK, Value.of(stock));
    }
    return v;
  }
}
