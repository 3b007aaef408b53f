package headcourse.job;

import java.util.Map;

/**
 * The paper of each bundle.
 *
 * @param byBundle one paper for every bundle
 */
public record Papers(Map<Bundle, Paper> byBundle) {
  /** Copies the map; refuses a bundle without paper. */
  public Papers {
    byBundle = Map.copyOf(byBundle);
    for (Bundle b : Bundle.values()) {
      if (!byBundle.containsKey(b)) {
        throw new IllegalArgumentException("no paper for " + b);
      }
    }
  }

  /** The paper of a bundle. */
  public Paper of(Bundle bundle) {
    return byBundle.get(bundle);
  }
}
