package headcourse.testing;

import headcourse.job.Change;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Writes changes into the text of a job file as a mason would: the file is loaded as plain maps and
 * lists, the text of the value put in its place, and all of it written out again. Shares nothing
 * with the way in which the program tries changes.
 */
public final class JobText {
  private static final Pattern PART = Pattern.compile("([^.\\[\\]]+)|\\[(\\d+)\\]");

  private JobText() {}

  private static Yaml yaml() {
    LoaderOptions loading = new LoaderOptions();
    DumperOptions dumping = new DumperOptions();
    dumping.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
    Resolver asText =
        new Resolver() {
          @Override
          protected void addImplicitResolvers() {
            // Every scalar stays the text it is.
          }
        };
    return new Yaml(
        new SafeConstructor(loading), new Representer(dumping), dumping, loading, asText);
  }

  /** The text with changes in it. */
  public static String with(String text, List<Change> changes) {
    Object root = yaml().load(text);
    for (Change c : changes) {
      List<Object> path = new ArrayList<>();
      Matcher m = PART.matcher(c.path());
      while (m.find()) {
        path.add(m.group(1) != null ? m.group(1) : (Object) Integer.valueOf(m.group(2)));
      }
      put(root, path, c.value());
    }
    return yaml().dump(root);
  }

  @SuppressWarnings("unchecked")
  private static void put(Object root, List<Object> path, String value) {
    Object at = root;
    for (Object key : path.subList(0, path.size() - 1)) {
      if (key instanceof Integer i) {
        at = ((List<Object>) at).get(i);
        continue;
      }
      Map<String, Object> map = (Map<String, Object>) at;
      if (!(map.get(key) instanceof Map) && !(map.get(key) instanceof List)) {
        map.put((String) key, new LinkedHashMap<String, Object>());
      }
      at = map.get(key);
    }
    Object last = path.get(path.size() - 1);
    if (value == null) {
      ((Map<String, Object>) at).remove(last);
    } else if (last instanceof Integer i) {
      ((List<Object>) at).set(i, yaml().load(value));
    } else {
      ((Map<String, Object>) at).put((String) last, yaml().load(value));
    }
  }
}
