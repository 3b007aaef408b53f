package headcourse.guards;

import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.Yaml;

/** A value of {@code layout.json}. */
record Json(Object value) {
  /** A file; JSON is YAML. */
  static Json of(String text) {
    return new Json(new Yaml().load(text));
  }

  Json get(String key) {
    return new Json(((Map<?, ?>) value).get(key));
  }

  List<Json> list(String key) {
    return get(key).list();
  }

  List<Json> list() {
    return ((List<?>) value).stream().map(Json::new).toList();
  }

  double number(String key) {
    return get(key).number();
  }

  double number() {
    return ((Number) value).doubleValue();
  }

  int whole(String key) {
    return ((Number) get(key).value).intValue();
  }

  String text(String key) {
    return (String) get(key).value;
  }

  boolean has(String key) {
    return value instanceof Map<?, ?> m && m.get(key) != null;
  }
}
