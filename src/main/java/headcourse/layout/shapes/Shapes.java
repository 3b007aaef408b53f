package headcourse.layout.shapes;

import headcourse.job.ShapeDef;
import headcourse.layout.HeadShape;
import headcourse.layout.curved.EllipticalHead;
import headcourse.layout.curved.FourCentredHead;
import headcourse.layout.curved.PointedHead;
import headcourse.layout.curved.SegmentalHead;
import headcourse.layout.curved.SemicircularHead;
import headcourse.layout.curved.ThreeCentredHead;
import headcourse.layout.flat.JackShape;
import headcourse.layout.flat.SoldierShape;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.ServiceLoader.Provider;
import java.util.stream.Stream;

/**
 * The head shapes. A new one is a file that implements {@link HeadShape}, and a line here; or, in a
 * jar of one's own on the class path, a line in its {@code META-INF/services}.
 */
public final class Shapes {
  private Shapes() {}

  private static final List<HeadShape> OWN =
      List.of(
          new SoldierShape(),
          new JackShape(),
          new SegmentalHead(),
          new SemicircularHead(),
          new ThreeCentredHead(),
          new EllipticalHead(),
          new PointedHead(),
          new FourCentredHead());

  private static final List<HeadShape> ALL =
      Stream.concat(OWN.stream(), ServiceLoader.load(HeadShape.class).stream().map(Provider::get))
          .toList();

  /** What the job reader must know of them. */
  public static List<ShapeDef> definitions() {
    return ALL.stream().map(HeadShape::definition).toList();
  }

  /** The shape with a name. */
  public static Optional<HeadShape> named(String name) {
    return ALL.stream().filter(s -> s.definition().name().equals(name)).findFirst();
  }
}
