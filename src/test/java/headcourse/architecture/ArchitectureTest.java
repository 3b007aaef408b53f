package headcourse.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Holds the import table of DEVELOPERS.md: one direction, no cycles, outside libraries in place.
 */
@AnalyzeClasses(packages = "headcourse", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /** What each part may import of the project, besides itself. */
  private static final Map<String, Set<String>> TABLE = new TreeMap<>();

  static {
    TABLE.put("units", Set.of());
    TABLE.put("geom", Set.of());
    TABLE.put("diag", Set.of());
    TABLE.put("job", Set.of("units", "diag"));
    TABLE.put("job.yaml", Set.of("units", "diag", "job", "text"));
    TABLE.put("layout", Set.of("units", "geom", "diag", "job"));
    TABLE.put("layout.side", Set.of("units", "geom", "job", "layout"));
    TABLE.put("layout.fitted", Set.of("units", "geom", "diag", "job", "layout", "layout.side"));
    TABLE.put(
        "layout.flat",
        Set.of("units", "geom", "diag", "job", "layout", "layout.side", "layout.fitted"));
    TABLE.put("layout.curved", Set.of("units", "geom", "diag", "job", "layout"));
    TABLE.put("layout.yard.rows", Set.of());
    TABLE.put(
        "layout.yard",
        Set.of(
            "units",
            "geom",
            "diag",
            "job",
            "layout",
            "layout.side",
            "layout.fitted",
            "layout.flat",
            "layout.yard.rows"));
    TABLE.put("layout.shapes", Set.of("job", "layout", "layout.flat", "layout.curved"));
    TABLE.put("solve", Set.of());
    TABLE.put("statics", Set.of("units", "geom", "job", "layout", "solve"));
    TABLE.put("cure", Set.of("units", "diag", "job", "layout", "layout.shapes", "statics"));
    TABLE.put("bench.builds", Set.of());
    TABLE.put("bench", Set.of("units", "geom", "job", "layout", "statics", "bench.builds"));
    TABLE.put("stock.cutting", Set.of("geom", "solve"));
    TABLE.put(
        "stock",
        Set.of("units", "geom", "diag", "job", "layout", "bench", "stock.cutting", "layout.yard"));
    TABLE.put(
        "rules",
        Set.of("units", "geom", "diag", "job", "layout", "statics", "bench", "stock", "text"));
    TABLE.put("revision", Set.of("units", "diag", "job", "layout", "bench", "stock"));
    TABLE.put(
        "work",
        Set.of(
            "units",
            "geom",
            "diag",
            "job",
            "layout",
            "layout.shapes",
            "statics",
            "layout.yard",
            "cure",
            "bench",
            "stock",
            "rules",
            "revision"));
    TABLE.put(
        "choose",
        Set.of(
            "units",
            "geom",
            "diag",
            "job",
            "layout",
            "layout.shapes",
            "bench",
            "stock",
            "rules",
            "work"));
    TABLE.put("text", Set.of());
    TABLE.put("drawing", Set.of("geom", "job", "text"));
    Set<String> forSheets =
        Set.of(
            "units",
            "geom",
            "diag",
            "job",
            "layout",
            "statics",
            "bench",
            "stock",
            "rules",
            "revision",
            "work",
            "text",
            "drawing");
    TABLE.put("sheet", forSheets);
    TABLE.put("sheet.frame", with(forSheets, "sheet"));
    TABLE.put("sheet.elevation", with(forSheets, "sheet"));
    TABLE.put("sheet.bench", with(forSheets, "sheet"));
    TABLE.put("sheet.order", with(forSheets, "sheet"));
    TABLE.put("sheet.section", with(forSheets, "sheet", "sheet.elevation"));
    TABLE.put("sheet.picture", with(forSheets, "sheet", "sheet.elevation"));
    TABLE.put("sheet.solid", with(forSheets, "sheet"));
    TABLE.put(
        "sheet.wall", with(forSheets, "sheet", "sheet.elevation", "sheet.section", "sheet.solid"));
    TABLE.put(
        "sheet.contractor",
        with(forSheets, "sheet", "sheet.elevation", "sheet.picture", "sheet.section"));
    TABLE.put("sheet.form", Set.of("units", "geom", "job", "text", "drawing"));
    TABLE.put("sheet.fullsize", with(forSheets, "sheet"));
    TABLE.put(
        "sheet.choose", with(forSheets, "choose", "sheet", "sheet.elevation", "sheet.picture"));
    TABLE.put(
        "sheet.book",
        with(
            forSheets,
            "sheet",
            "sheet.elevation",
            "sheet.bench",
            "sheet.wall",
            "sheet.contractor",
            "sheet.solid",
            "sheet.fullsize",
            "sheet.order"));
    TABLE.put("render.svg", Set.of("geom", "text", "drawing"));
    TABLE.put("render.png", Set.of("text"));
    TABLE.put("render.pdf", Set.of("geom", "job", "text", "drawing"));
    TABLE.put(
        "audit",
        Set.of("units", "geom", "job", "layout", "bench", "stock", "work", "text", "drawing"));
    TABLE.put("export", with(forSheets, "job.yaml", "render.svg"));
    TABLE.put(
        "page",
        with(
            forSheets,
            "job.yaml",
            "layout.shapes",
            "cure",
            "choose",
            "sheet",
            "sheet.elevation",
            "sheet.form",
            "sheet.book",
            "sheet.choose",
            "render.svg",
            "export"));
  }

  private static Set<String> with(Set<String> some, String... more) {
    Set<String> all = new java.util.TreeSet<>(some);
    all.addAll(List.of(more));
    return all;
  }

  private static String part(JavaClass c) {
    String p = c.getPackageName();
    return p.equals("headcourse") ? "" : p.substring("headcourse.".length());
  }

  @ArchTest
  static void importsFollowTheTable(JavaClasses classes) {
    List<String> faults = new ArrayList<>();
    for (JavaClass c : classes) {
      String from = part(c);
      if (from.equals("cli")) {
        continue;
      }
      Set<String> allowed = TABLE.get(from);
      if (allowed == null) {
        faults.add("no line in the table for " + from);
        continue;
      }
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        JavaClass target = d.getTargetClass().getBaseComponentType();
        if (target.getPackageName().startsWith("headcourse")
            && !part(target).equals(from)
            && !allowed.contains(part(target))) {
          faults.add(d.getDescription());
        }
      }
    }
    assertTrue(faults.isEmpty(), () -> String.join("\n", faults));
  }

  @ArchTest
  static final ArchRule noCycles = slices().matching("headcourse.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule onlyTheReaderKnowsYaml =
      noClasses()
          .that()
          .resideOutsideOfPackage("headcourse.job.yaml")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.yaml..");

  @ArchTest
  static final ArchRule onlyThePdfRendererKnowsPdf =
      noClasses()
          .that()
          .resideOutsideOfPackages("headcourse.render.pdf", "headcourse.text")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..");

  @ArchTest
  static final ArchRule onlyFramesAndPicturesKnowBatik =
      noClasses()
          .that()
          .resideOutsideOfPackages("headcourse.sheet.frame", "headcourse.render.png")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.batik..");

  @ArchTest
  static final ArchRule onlyTheCommandLineTouchesFilesAndStreams =
      noClasses()
          .that()
          .resideOutsideOfPackage("headcourse.cli")
          .should()
          .dependOnClassesThat(
              DescribedPredicate.describe(
                  "reach files",
                  c ->
                      c.getName().equals("java.io.File")
                          || c.getName().equals("java.nio.file.Files")
                          || c.getName().equals("java.io.FileInputStream")
                          || c.getName().equals("java.io.FileOutputStream")))
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethod(System.class, "exit", int.class);

  @ArchTest
  static final ArchRule noClock =
      noClasses()
          .that()
          // It says how old sheets are that lie in a folder; nothing drawn knows of it.
          .doNotHaveFullyQualifiedName("headcourse.cli.Age")
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(java.time.LocalDate.class, "now")
          .orShould()
          .callMethod(java.time.Instant.class, "now");
}
