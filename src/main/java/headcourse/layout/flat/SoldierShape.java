package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.KeySize;
import java.util.List;

/** Stones upright beside a tapered key, whose rake dies out over the first few. */
public final class SoldierShape implements FlatShape {
  private static final ShapeDef DEFINITION =
      new ShapeDef(
          "soldier",
          List.of(
              new ShapeDef.ParamDef(
                  "ease",
                  ShapeDef.Kind.COUNT,
                  List.of(),
                  "stones over which the key's rake dies out")));

  @Override
  public ShapeDef definition() {
    return DEFINITION;
  }

  @Override
  public FlatReading read(Job job, Opening opening) {
    TermsReader reader = new TermsReader(job, opening);
    HeadSpec.Key key = reader.openKey();
    FlatTerms terms = reader.read();
    reader.keyTapers(key);
    if (!reader.problems.isEmpty()) {
      return reader.refused();
    }
    int ease = opening.head().params().count("ease").orElse(1);
    KeySize size = KeySize.upright(terms, key);
    reader.keyStands(
        terms, SoldierLines.of(size.soffit(), size.top(), terms.height(), ease), false);
    if (!reader.problems.isEmpty()) {
      return reader.refused();
    }
    return FlatReading.of(
        new FlatHead(terms, new SoldierGeometry(terms, size, ease), reader.remarks));
  }
}
