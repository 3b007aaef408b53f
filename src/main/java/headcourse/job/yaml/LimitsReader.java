package headcourse.job.yaml;

import headcourse.job.Limits;
import headcourse.job.ShapeDef;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code limits:}, the thresholds of rules. */
final class LimitsReader {
  private LimitsReader() {}

  static Limits read(Section s, List<ShapeDef.ParamDef> defs) {
    String edition = s.word("edition", List.of("2016", "2022"), "2016");
    Map<String, Object> values = new LinkedHashMap<>();
    for (ShapeDef.ParamDef def : defs) {
      Item item = s.item(def.name());
      Object value = item == null ? null : ParamReader.read(item, def);
      if (value != null) {
        values.put(def.name(), value);
      }
    }
    s.done();
    return new Limits(Integer.parseInt(edition), values);
  }
}
