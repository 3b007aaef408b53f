package headcourse.job.yaml;

import headcourse.job.Care;
import headcourse.units.Length;
import java.util.List;

/** Reads {@code care:} of the setting: a class, or figures. */
final class CareReader {
  private static final List<Care> CLASSES = List.of(Care.CAREFUL, Care.ORDINARY, Care.ROUGH);

  private CareReader() {}

  /**
   * Reads it. Where the job says what a dry joint opens by, that goes before the class.
   *
   * @param setting the keys around it
   * @param opens what a dry joint opens by, as read
   */
  static Care read(Section setting, Length opens) {
    Item item = setting.item("care");
    boolean said = setting.has("opens") && setting.in.sound(setting.at("opens"));
    Care care =
        item == null
            ? Care.ORDINARY
            : item.isMap() ? figures(item.section(), said ? opens : null) : named(item);
    return said && (item == null || !item.isMap()) ? care.opening(opens) : care;
  }

  private static Care named(Item item) {
    String expected = "careful, ordinary, rough";
    if (item.isList()) {
      item.error(
          "a list where a class of care belongs; expected "
              + expected
              + ", or keys as {cut: 1/64, fence: 1/64}");
      return Care.ORDINARY;
    }
    String word = item.word(CLASSES.stream().map(Care::name).toList());
    return CLASSES.stream().filter(c -> c.name().equals(word)).findFirst().orElse(Care.ORDINARY);
  }

  /** What is not given is as in ordinary care. */
  private static Care figures(Section s, Length opens) {
    Care o = Care.ORDINARY;
    Range range = Range.of(0, 1);
    Care care =
        new Care(
            Care.OWN,
            s.length("cut", range, o.cut()),
            s.length("fence", range, o.fence()),
            s.length("opens", range, opens == null ? o.opens() : opens),
            s.length("read", range, o.read()),
            s.length("key", range, o.key()),
            s.length("site", range, o.site()));
    s.done();
    return care;
  }
}
