package headcourse.export;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.PlumbRake;
import headcourse.bench.SawPass;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.StoneSize;
import headcourse.layout.VSoffit;
import headcourse.units.Grid;
import headcourse.units.Length;

/** The stones of {@code layout.json}, with what belongs to each. */
final class StoneJson extends MeasuredJson {
  StoneJson(JsonWriter json, Grid grid) {
    super(json, grid);
  }

  /** A stone of a head, cut from a blank or, where it is null, from none. */
  void write(HeadLayout layout, Piece p, String blank) {
    PlacedStone s = p.stone();
    StoneSize size = StoneSize.of(layout, s);
    json.object();
    json.key("mark").value(p.mark());
    json.key("role").value(s.role().word());
    json.key("side").value(s.side().word());
    json.key("index").value(s.index());
    json.key("setOrder").value(p.setOrder());
    json.key("outlineMm").flatArray();
    for (Point v : s.outline().vertices(Tolerance.VERTEX)) {
      json.pair(mm(v.x()), mm(v.y()));
    }
    json.endFlat();
    length("bottomMm", size.bottom());
    length("topMm", size.top());
    length("heightMm", size.height());
    json.key("diagonalsMm").flatArray();
    json.value(mm(p.measures().rising()));
    json.value(mm(p.measures().falling()));
    json.endFlat();
    PlumbRake rake = PlumbRake.of(s);
    angle("rakeInnerDeg", rake.inner());
    angle("rakeOuterDeg", rake.outer());
    length("proudMm", s.proud());
    length("thicknessMm", p.thickness());
    length("returnMm", p.leg().depth());
    length("reliefMm", p.leg().relief());
    json.key("areaM2").value(p.mass().areaM2());
    json.key("massKg").value(p.mass().kg());
    json.key("chordDeviationMm").value(mm(s.chordDeviation()));
    length("vDepthMm", VSoffit.of(s).map(VSoffit::depth).orElse(Length.ZERO));
    json.key("soffitPieces").array();
    p.soffitPieces().forEach(this::soffitPiece);
    json.endArray();
    json.key("blank").value(blank);
    json.key("saw").array();
    for (SawPass pass : p.saw()) {
      json.object();
      json.key("edge").value(pass.edge().word());
      json.key("pass").value(pass.number());
      json.key("lay").value(pass.lay().word());
      angle("mitreDeg", pass.mitre());
      angle("tiltDeg", pass.tilt());
      if (pass.template()) {
        json.key("curved").value(true);
      }
      json.end();
    }
    json.endArray();
    json.key("notches").array();
    p.notches().forEach(this::notch);
    json.endArray();
    json.end();
  }

  private void soffitPiece(SoffitPiece s) {
    json.object();
    json.key("mark").value(s.mark());
    json.key("joint").value(s.joint().word());
    length("undersideMm", s.underside());
    length("upperMm", s.upper());
    length("lengthMm", s.length());
    length("depthMm", s.depth());
    length("thicknessMm", s.thickness());
    angle("leftOffSquareDeg", s.left().offSquare());
    json.key("leftLongPoint").value(s.left().longPoint().word());
    angle("rightOffSquareDeg", s.right().offSquare());
    json.key("rightLongPoint").value(s.right().longPoint().word());
    length("reliefMm", s.relief());
    json.key("massKg").value(s.massKg());
    json.key("seated").value(s.seated());
    json.key("held").value(s.held());
    json.key("notches").array();
    s.notches().forEach(this::soffitNotch);
    json.endArray();
    json.end();
  }

  private void soffitNotch(SoffitNotch n) {
    json.object();
    json.key("edge").value(n.edge().word());
    length("placeMm", n.place());
    length("mouthMm", n.mouth());
    length("runMm", n.run());
    angle("slantDeg", n.slant());
    length("coverMm", n.cover());
    length("plungeMm", n.plunge());
    Length screw = n.anchor().screw();
    nullable("screwMm", screw == null ? null : screw.mm());
    length("penetrationMm", n.anchor().penetration());
    json.key("holdsIn").value(screw == null ? null : n.anchor().holdsIn().word());
    json.end();
  }

  private void notch(Notch n) {
    json.object();
    json.key("edge").value(n.edge().word());
    length("heightMm", n.height());
    length("mouthMm", n.mouth());
    length("runMm", n.run());
    angle("slantDeg", n.slant());
    length("coverMm", n.cover());
    length("plungeMm", n.plunge());
    nullable("screwMm", n.screw() == null ? null : n.screw().mm());
    length("penetrationMm", n.penetration());
    json.key("holdsIn").value(n.anchor().holdsIn() == null ? null : n.anchor().holdsIn().word());
    json.end();
  }
}
