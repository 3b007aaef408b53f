package headcourse.export;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.PropFinder;
import headcourse.bench.PropPlan;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.revision.Changes;
import headcourse.revision.Value;
import headcourse.rules.Finding;
import headcourse.rules.MaterialsTakeOff;
import headcourse.stock.StockPlan;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Everything computed, for other programs: {@code layout.json}. Fields may be added; none is
 * renamed. Lengths in millimetres, exact where they lie on the grid or an even part of it, else to
 * four decimals; angles in degrees.
 */
public final class LayoutJson extends MeasuredJson {
  private static final int FORMAT = 1;
  private final Map<String, String> blankOf = new TreeMap<>();
  private final StoneJson stones;

  private LayoutJson(Grid grid) {
    super(new JsonWriter(), grid);
    stones = new StoneJson(json, grid);
  }

  /** The file's text. */
  public static String write(ShopWork work) {
    LayoutJson w = new LayoutJson(work.job().grid());
    w.all(work);
    return w.json.toString();
  }

  private void all(ShopWork work) {
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      for (StockPlan.Cut c : b.cuts()) {
        if (c.part() != StockPlan.Part.SOFFIT) {
          blankOf.putIfAbsent(c.stone(), b.id());
        }
      }
    }
    json.object();
    json.key("format").value(FORMAT);
    var info = work.job().info();
    json.key("job").object();
    json.key("number").value(info.number());
    json.key("title").value(info.title());
    json.key("revision").value(info.revision());
    json.end();
    json.key("units").value(work.job().units().word());
    length("gridMm", work.job().grid().tick());
    json.key("openings").array();
    for (HeadWork each : work.heads()) {
      opening(work.job(), each);
    }
    json.endArray();
    json.key("blanks").array();
    for (StockPlan.CutBlank each : work.stock().blanks()) {
      blank(each);
    }
    json.endArray();
    json.key("offCuts").array();
    for (StockPlan.OffCut each : work.stock().offCuts()) {
      offCut(each);
    }
    json.endArray();
    json.key("order").array();
    for (StockPlan.OrderLine each : work.stock().order()) {
      order(each);
    }
    json.endArray();
    var m = work.materials();
    json.key("materials").object();
    json.key("stones").value(m.stones());
    json.key("stoneM2").value(m.stoneM2());
    json.key("stoneKg").value(m.stoneKg());
    json.key("soffitPiecesKg").value(MaterialsTakeOff.apartKg(work.heads()));
    json.key("mortarM3").value(m.mortarM3());
    json.key("mortarBags").value(m.bags());
    json.key("screws").value(m.screws());
    json.key("soffitScrews").value(MaterialsTakeOff.soffitScrews(work.heads()));
    json.key("mortarBedM3").value(m.mortar().bed());
    json.key("mortarScratchM3").value(m.mortar().scratch());
    json.key("mortarSoffitM3").value(m.mortar().soffit());
    json.key("mortarJointsM3").value(m.mortar().joints());
    json.key("mortarWasteM3").value(m.mortar().waste());
    json.end();
    json.key("findings").array();
    for (Finding each : work.findings()) {
      finding(each);
    }
    json.endArray();
    if (work.changes().compared()) {
      json.key("since").value(work.changes().since());
      json.key("changes").array();
      work.changes().items().forEach(this::change);
      json.endArray();
    }
    json.end();
  }

  private void opening(Job job, HeadWork head) {
    HeadLayout layout = head.layout();
    var opening = layout.opening();
    json.object();
    json.key("mark").value(opening.mark());
    json.key("count").value(opening.count());
    if (!opening.at().isEmpty()) {
      json.key("atMm").array();
      opening.at().forEach(at -> json.value(at.mm()));
      json.end();
    }
    if (opening.level() != null) {
      length("levelMm", opening.level());
    }
    length("widthMm", layout.halfWidth().times(2));
    json.key("head").object();
    json.key("shape").value(opening.head().shape());
    length("heightMm", opening.head().height());
    json.key("rhythm").value(opening.head().stones().rhythm().word());
    nullable("radiusMm", layout.curve() == null ? null : layout.curve().radius());
    nullable("strikingMm", layout.curve() == null ? null : layout.curve().striking());
    json.end();
    length("jambLeftMm", layout.jamb(Side.LEFT));
    length("jambRightMm", layout.jamb(Side.RIGHT));
    length("bearingLeftMm", layout.bearing(Side.LEFT).onWall());
    length("bearingRightMm", layout.bearing(Side.RIGHT).onWall());
    length("bearingTopLeftMm", layout.bearing(Side.LEFT).onTop());
    length("bearingTopRightMm", layout.bearing(Side.RIGHT).onTop());
    json.key("proof").object();
    json.key("status").value(layout.proof().status().word());
    json.key("cost").value(layout.proof().cost());
    json.key("bound").value(layout.proof().bound());
    Length wanting = layout.proof().shortfall();
    nullable("shortfallMm", wanting == null ? null : wanting.mm());
    json.end();
    PropFinder.find(job, head).ifPresent(this::props);
    if (head.lands() != null) {
      json.key("lands").object();
      json.key("builds").value(head.lands().builds());
      json.key("checked").value(head.lands().checked());
      json.key("unchecked").value(head.lands().unchecked());
      json.key("care").value(head.lands().care());
      json.end();
    }
    if (head.asSolid() != null) {
      new AsSolidJson(json, job, head).write();
    }
    json.key("stones").array();
    for (Piece each : head.pieces()) {
      stones.write(layout, each, blankOf.get(each.mark()));
    }
    json.endArray();
    json.end();
  }

  private void props(PropPlan p) {
    json.key("props").object();
    json.key("kind").value(p.curved() ? "centring" : "plank");
    json.key("loadKgPerM").value(p.loadKgPerM());
    nullable("spacingMm", p.spacing() == null ? null : p.spacing().mm());
    json.key("posts").value(p.posts());
    json.key("postKg").value(p.postKg());
    length("keyDropMm", p.keyDrop());
    json.end();
  }

  private void blank(StockPlan.CutBlank b) {
    json.object();
    json.key("id").value(b.id());
    json.key("stock").value(b.stock());
    json.key("stones").array();
    for (StockPlan.Cut c : b.cuts()) {
      json.object();
      json.key("mark").value(c.stone());
      length("atMm", c.at());
      json.key("turned").value(c.turned());
      json.key("part").value(c.part().word());
      length("upMm", c.up());
      json.end();
    }
    json.endArray();
    length("wasteMm", b.waste());
    json.key("offCutOf").value(b.offCut() ? b.id().substring(0, b.id().indexOf('/')) : null);
    length("lengthMm", b.length());
    json.end();
  }

  private void offCut(StockPlan.OffCut o) {
    json.object();
    json.key("id").value(o.id());
    json.key("blank").value(o.blank());
    length("lengthMm", o.length());
    length("faceMm", o.face());
    length("returnMm", o.returnLeg());
    json.key("stones").array();
    o.stones().forEach(json::value);
    json.endArray();
    json.end();
  }

  private void order(StockPlan.OrderLine o) {
    json.object();
    json.key("stock").value(o.stock());
    json.key("count").value(o.count());
    length("lengthMm", o.length());
    length("faceMm", o.face());
    length("returnMm", o.returnLeg());
    length("thicknessMm", o.thickness());
    json.key("price");
    if (o.price() == 0) {
      json.value((String) null);
    } else {
      json.value(o.price());
    }
    json.key("leadDays");
    if (o.lead() == null) {
      json.value((String) null);
    } else {
      json.value((long) o.lead());
    }
    json.key("orderBy").value(o.orderBy().isEmpty() ? null : o.orderBy());
    json.end();
  }

  private void finding(Finding f) {
    json.object();
    json.key("rule").value(f.rule());
    json.key("severity").value(f.severity().word());
    json.key("opening").value(f.opening());
    json.key("stone").value(f.stone());
    json.key("message").value(f.message());
    json.key("source").value(f.source());
    json.key("accepted").value(f.accepted());
    json.end();
  }

  private void change(Changes.Item item) {
    json.object();
    json.key("number").value(item.number());
    json.key("opening").value(item.opening());
    json.key("stone").value(item.stone().isEmpty() ? null : item.stone());
    json.key("kind").value(item.kind().name().toLowerCase(Locale.ROOT));
    json.key("differences").array();
    for (Changes.Difference d : item.differences()) {
      json.object();
      json.key("property").value(d.property().word());
      value("before", d.before());
      value("after", d.after());
      json.end();
    }
    json.endArray();
    json.end();
  }

  private void value(String key, Value value) {
    json.key(key).flatArray();
    if (!value.text().isEmpty()) {
      json.value(value.text());
    }
    value.numbers().forEach(n -> json.value(n.doubleValue()));
    json.endFlat();
  }
}
