package headcourse.layout.flat;

import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Params;
import headcourse.job.Setting;
import headcourse.job.Stock;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The job with one value changed. */
final class Edits {
  private Edits() {}

  static Opening head(Opening o, HeadSpec head) {
    return new Opening(
        o.path(),
        o.mark(),
        o.label(),
        o.count(),
        o.width(),
        o.height(),
        o.reveal(),
        o.wallLeft(),
        o.wallRight(),
        o.measured(),
        head);
  }

  private static Opening head(
      Opening o, HeadSpec.Key key, HeadSpec.Stones stones, HeadSpec.Bearing bearing, Length clear) {
    HeadSpec h = o.head();
    return head(
        o,
        new HeadSpec(
            h.shape(), h.height(), key, stones, bearing, clear, h.soffit(), h.seat(), h.params()));
  }

  static Opening key(Opening o, Length bottom, Length top) {
    HeadSpec h = o.head();
    HeadSpec.Key k = h.key();
    return head(
        o,
        new HeadSpec.Key(bottom, top, k.rise(), k.drop(), k.proud()),
        h.stones(),
        h.bearing(),
        h.clear());
  }

  static Opening clear(Opening o, Length clear) {
    HeadSpec h = o.head();
    return head(o, h.key(), h.stones(), h.bearing(), clear);
  }

  static Opening bearing(Opening o, Length min, Length max) {
    HeadSpec h = o.head();
    Length target = h.bearing().target();
    return head(o, h.key(), h.stones(), new HeadSpec.Bearing(min, max, target), h.clear());
  }

  private static Opening stones(Opening o, HeadSpec.Stones stones) {
    HeadSpec h = o.head();
    return head(o, h.key(), stones, h.bearing(), h.clear());
  }

  static Opening widths(Opening o, Length min, Length max) {
    HeadSpec.Stones s = o.head().stones();
    return stones(
        o,
        new HeadSpec.Stones(
            min,
            max,
            s.target(),
            s.step(),
            s.jump(),
            s.eachSide(),
            s.rhythm(),
            s.mirror(),
            s.seed(),
            s.give()));
  }

  static Opening steps(Opening o, Length step, Length jump) {
    HeadSpec.Stones s = o.head().stones();
    return stones(
        o,
        new HeadSpec.Stones(
            s.min(),
            s.max(),
            s.target(),
            step,
            jump,
            s.eachSide(),
            s.rhythm(),
            s.mirror(),
            s.seed(),
            s.give()));
  }

  static Opening rhythm(Opening o, HeadSpec.Rhythm rhythm, Integer eachSide) {
    HeadSpec.Stones s = o.head().stones();
    return stones(
        o,
        new HeadSpec.Stones(
            s.min(),
            s.max(),
            s.target(),
            s.step(),
            s.jump(),
            eachSide,
            rhythm,
            s.mirror(),
            s.seed(),
            s.give()));
  }

  static Opening params(Opening o, Params params) {
    HeadSpec h = o.head();
    return head(
        o,
        new HeadSpec(
            h.shape(),
            h.height(),
            h.key(),
            h.stones(),
            h.bearing(),
            h.clear(),
            h.soffit(),
            h.seat(),
            params));
  }

  static Job joint(Job j, Length joint) {
    Setting s = j.setting();
    return job(
        j,
        j.grid(),
        new Setting(s.joints(), joint, s.opens(), s.cutTolerance(), s.care()),
        j.stock());
  }

  static Job grid(Job j, Length tick) {
    return job(j, new Grid(tick), j.setting(), j.stock());
  }

  static Job arris(Job j, Stock.Item item, Length arris) {
    List<Stock.Item> items = new ArrayList<>();
    for (Stock.Item i : j.stock().items()) {
      items.add(
          i != item
              ? i
              : new Stock.Item(
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
    }
    return job(j, j.grid(), j.setting(), new Stock(items, j.stock().spare()));
  }

  static Job fitted(Job j, Fitted one, Fitted other) {
    List<Fitted> all = new ArrayList<>(j.fitted());
    all.replaceAll(f -> f == one ? other : f);
    return job(j, j.grid(), j.setting(), j.stock(), all);
  }

  private static Job job(Job j, Grid grid, Setting setting, Stock stock) {
    return job(j, grid, setting, stock, j.fitted());
  }

  private static Job job(Job j, Grid grid, Setting setting, Stock stock, List<Fitted> fitted) {
    return new Job(
        j.name(),
        j.info(),
        j.units(),
        grid,
        j.printing(),
        j.stone(),
        j.wall(),
        setting,
        j.tools(),
        j.fastener(),
        j.props(),
        j.openings(),
        stock,
        fitted,
        j.spoiled(),
        j.accepted(),
        j.limits(),
        j.steps(),
        j.spans());
  }
}
