package headcourse.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.yaml.JobOutline;
import headcourse.job.yaml.KeyTable;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import headcourse.rules.RuleCard;
import headcourse.sheet.form.FormField;
import headcourse.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The page's fields are the measuring sheet's, and every rule has its place among them. */
class FieldsTest {
  private static final KeyTable TABLE = KeyTable.of(Shapes.definitions(), RuleBook.limits());

  private static Map<String, List<Field>> fields(String head) {
    String job = "openings:\n  - mark: D1\n    head: " + head + "\n";
    JobOutline outline =
        JobOutline.of("a.yaml", job.getBytes(StandardCharsets.UTF_8)).value().orElseThrow();
    return new Fields(TABLE, Words.of("en")).of(outline, 0);
  }

  @Test
  void theMeasuringSheetsFieldsComeFirstInItsOrder() {
    List<String> form =
        FormField.ALL.stream().map(FormField::path).filter(p -> !p.isEmpty()).toList();
    List<String> page =
        fields("{shape: soldier}").values().stream()
            .flatMap(List::stream)
            .map(f -> f.path(0))
            .toList();
    assertEquals(form, page.subList(0, form.size()));
  }

  @Test
  void everyFieldIsAKeyOfTheReaders() {
    for (String shape : Shapes.definitions().stream().map(d -> d.name()).toList()) {
      for (List<Field> group : fields("{shape: " + shape + "}").values()) {
        for (Field f : group) {
          assertTrue(TABLE.places().containsKey(f.path()), f.path());
        }
      }
    }
  }

  @Test
  void wordsToChooseFromAreTheReaders() {
    Field shape = fields("{}").get("head").get(0);
    assertEquals(Shapes.definitions().stream().map(d -> d.name()).toList(), shape.words());
    assertEquals(List.of("in", "mm"), fields("{}").get("job").get(0).words());
  }

  @Test
  void aShapesOwnKeysAndWhatTheFileSaysAreShown() {
    List<String> jack =
        fields("{shape: jack, seat: 1, key: none}").get("head").stream().map(Field::name).toList();
    assertTrue(
        jack.containsAll(List.of("skewback", "divide", "camber", "seat", "key")), jack::toString);
  }

  @Test
  void everyRuleIsAboutAKeyOrTheWholeJob() {
    for (RuleCard card : RuleBook.cards()) {
      assertTrue(RulePlaces.knows(card.name()), card.name());
      String path = RulePlaces.of(card.name(), 0).replace("[0]", "[]");
      assertTrue(path.isEmpty() || TABLE.places().containsKey(path), card.name() + " " + path);
    }
  }
}
