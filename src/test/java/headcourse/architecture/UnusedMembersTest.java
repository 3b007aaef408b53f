package headcourse.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Every method is of use to the program, not to its tests alone. */
@AnalyzeClasses(packages = "headcourse", importOptions = ImportOption.DoNotIncludeTests.class)
class UnusedMembersTest {
  /** What the virtual machine or the library calls. */
  private static final Set<String> CALLED =
      Set.of("main", "values", "valueOf", "toString", "hashCode", "equals", "compareTo");

  /** What tests alone use, since they would say it less shortly. */
  private static final Set<String> FOR_TESTS =
      Set.of(
          // Read the finished page.
          "drawing.MarkDump.of",
          // One call for a whole run.
          "cli.Main.run",
          "work.Heads.of",
          "sheet.book.SheetBook.compose",
          "sheet.frame.Frame.plain",
          "sheet.frame.Frame.fits",
          // Held against handbooks and simulations.
          "page.RulePlaces.knows",
          "layout.yard.rows.Pile$Row.bare",
          "geom.CircleSegment.arc",
          "geom.CircleSegment.area",
          "geom.CircleSegment.chord",
          "bench.builds.Builds.firstEnd",
          "bench.builds.Builds.secondEnd",
          // Names by which a word, a font, a language or a blank is found again.
          "stock.StockPlan.blanksOf",
          "text.Face.postScriptName",
          "text.Languages.tags",
          "units.Units.of");

  @ArchTest
  static void everyMemberIsOfUse(JavaClasses classes) {
    Set<String> unused = new TreeSet<>();
    for (JavaClass c : classes) {
      for (JavaMethod m : c.getMethods()) {
        String name = c.getName().substring("headcourse.".length()) + "." + m.getName();
        if (!called(m) && !inherited(c, m) && !part(c, m)) {
          unused.add(name);
        }
      }
    }
    unused.removeAll(FOR_TESTS);
    assertEquals(Set.of(), unused);
  }

  private static boolean called(JavaMethod m) {
    return CALLED.contains(m.getName())
        || m.getModifiers().contains(JavaModifier.SYNTHETIC)
        || Stream.concat(
                m.getAccessesToSelf().stream().<Object>map(JavaAccess::getOrigin),
                m.getReferencesToSelf().stream().<Object>map(r -> r.getOrigin()))
            .anyMatch(from -> !from.equals(m));
  }

  private static boolean inherited(JavaClass c, JavaMethod m) {
    return Stream.concat(c.getAllRawSuperclasses().stream(), c.getAllRawInterfaces().stream())
        .flatMap(s -> s.getMethods().stream())
        .anyMatch(
            o ->
                o.getName().equals(m.getName())
                    && o.getRawParameterTypes().size() == m.getRawParameterTypes().size());
  }

  /** A record may have a part that only tells it from others. */
  private static boolean part(JavaClass c, JavaMethod m) {
    return c.isRecord()
        && m.getRawParameterTypes().isEmpty()
        && c.tryGetField(m.getName()).isPresent();
  }
}
