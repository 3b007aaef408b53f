package headcourse.sheet.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.layout.PlacedStone;
import headcourse.render.svg.SvgRenderer;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomArches;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** SVG elevations of curved heads have true arcs, with radii in proportion, and parse. */
class ArchSvgTest {
  private static final Pattern ARC = Pattern.compile("A\\s*([0-9.]+)[ ,]+([0-9.]+)");

  @Test
  void everyArcOfEveryStoneIsAnArc() throws Exception {
    Set<String> shapes = new TreeSet<>();
    for (long seed = 1; seed <= 24; seed++) {
      JobMaker m = RandomArches.job(seed);
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isEmpty()) {
        continue;
      }
      shapes.add(m.first().shape);
      var head = work.get().heads().get(0);
      byte[] file = SvgRenderer.render(ElevationSvg.page(work.get(), head), "arch");
      String svg = new String(file, StandardCharsets.UTF_8);
      var factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      var document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
      NodeList paths = document.getElementsByTagNameNS("*", "path");
      double drawn = 0;
      for (int i = 0; i < paths.getLength(); i++) {
        Matcher arc = ARC.matcher(((Element) paths.item(i)).getAttribute("d"));
        while (arc.find()) {
          drawn =
              Math.max(
                  drawn,
                  Math.max(Double.parseDouble(arc.group(1)), Double.parseDouble(arc.group(2))));
        }
      }
      double radius = 0;
      for (PlacedStone s : head.layout().stones()) {
        for (Edge e : s.outline().edges()) {
          if (e instanceof Arc a) {
            radius = Math.max(radius, a.radius());
          } else if (e instanceof EllipticArc a) {
            radius = Math.max(radius, Math.max(a.rx(), a.ry()));
          }
        }
      }
      String which = "seed " + seed + ", " + m.first().shape;
      assertTrue(drawn > 0, which + " has no arc");
      // A scale is a whole reduction (one of the ladder's), so the greatest radius tells it.
      double reduction = radius / drawn;
      assertEquals(Math.rint(reduction), reduction, 1e-3 * reduction, which);
    }
    assertEquals(6, shapes.size(), "shapes seen: " + shapes);
  }
}
