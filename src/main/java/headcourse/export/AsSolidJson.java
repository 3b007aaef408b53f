package headcourse.export;

import headcourse.bench.HeadWork;
import headcourse.geom.Point;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.layout.PlacedStone;
import headcourse.statics.Standing;
import headcourse.statics.Yield;
import java.util.List;

/** How a head reads as if it were solid, in {@code layout.json}. */
final class AsSolidJson extends MeasuredJson {
  private static final String CAUTION =
      "an appearance check: the veneer carries nothing, the lintel by others does;"
          + " no structural design";

  private final Job job;
  private final HeadWork head;

  AsSolidJson(JsonWriter json, Job job, HeadWork head) {
    super(json, job.grid());
    this.job = job;
    this.head = head;
  }

  void write() {
    Standing s = head.asSolid().standing();
    json.key("asSolid").object();
    json.key("caution").value(CAUTION);
    json.key("verdict").value(s.verdict().word());
    json.key("friction").value(s.friction());
    json.key("thrustMost").value(s.most());
    number("thrust", s.thrust());
    number("thrustGreatest", s.greatest());
    json.key("weightKg").value(s.weightKg(job, head.layout()));
    nullable("depthLeastMm", s.least());
    number("margin", s.margin());
    nullable("pierMm", s.pier());
    json.key("walls").value(s.pushes() ? "give way" : "stand");
    json.key("yields").array();
    s.yields().forEach(this::yield);
    json.endArray();
    json.key("lineMm").array();
    for (Point p : s.line()) {
      json.pair(mm(p.x()), mm(p.y()));
    }
    json.endArray();
    json.key("cures").array();
    for (List<Change> cure : head.asSolid().cures()) {
      json.array();
      for (Change c : cure) {
        json.object();
        json.key("path").value(c.path());
        json.key("value").value(c.value());
        json.end();
      }
      json.endArray();
    }
    json.endArray();
    json.end();
  }

  /** Null where there is none, or no end to it. */
  private void number(String key, Double value) {
    json.key(key);
    if (value == null || value.isInfinite()) {
      json.value((String) null);
    } else {
      json.value(value);
    }
  }

  private void yield(Yield y) {
    List<PlacedStone> stones = head.layout().stones();
    json.object();
    json.key("left").value(y.joint() > 0 ? stones.get(y.joint() - 1).mark() : null);
    json.key("right").value(y.joint() < stones.size() ? stones.get(y.joint()).mark() : null);
    json.key("how").value(y.how().word());
    json.key("share").value(y.share());
    json.end();
  }
}
