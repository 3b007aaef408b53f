package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertFalse;

import headcourse.bench.EdgeName;
import headcourse.bench.ExposedEdge;
import headcourse.bench.SawPass;
import headcourse.diag.Severity;
import headcourse.job.Bundle;
import headcourse.layout.shapes.Shapes;
import headcourse.revision.Property;
import headcourse.rules.Finding;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys that are put together from a choice: every choice has its words. */
class WordsOfChoicesTest {
  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyChoiceHasWords(String language) {
    List<String> keys = new ArrayList<>();
    for (ExposedEdge.Why w : ExposedEdge.Why.values()) {
      keys.add("ticket.dress-" + lower(w));
    }
    for (EdgeName e : EdgeName.values()) {
      keys.add("ticket.edge-short-" + e.word());
    }
    for (EdgeName e : List.of(EdgeName.INNER, EdgeName.OUTER, EdgeName.LEFT, EdgeName.RIGHT)) {
      keys.add("wall.edge-" + e.word());
    }
    for (SawPass.Lay l : SawPass.Lay.values()) {
      keys.add("ticket.lay-" + l.word());
    }
    for (SawPass.Part p : SawPass.Part.values()) {
      keys.add("ticket.part-" + lower(p));
    }
    for (Severity s : Severity.values()) {
      keys.add("contractor.severity-" + s.word());
    }
    for (Finding.SourceStatus s : Finding.SourceStatus.values()) {
      keys.add("contractor.status-" + lower(s));
    }
    for (Property p : Property.values()) {
      keys.add("contractor.p-" + lower(p));
    }
    for (Bundle b : Bundle.values()) {
      keys.add("frame.bundle-" + b.word());
    }
    Shapes.definitions().forEach(d -> keys.add("contractor.shape-" + d.name()));
    Words words = Words.of(language);
    for (String key : keys) {
      assertFalse(words.say(key).isBlank(), key);
    }
  }

  private static String lower(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT);
  }
}
