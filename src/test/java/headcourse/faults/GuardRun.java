package headcourse.faults;

import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import headcourse.guards.PrintedFiguresTest;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/** Runs the tests that guard what is printed, until one of them fails. */
final class GuardRun {
  static final String CAUGHT = "CAUGHT ";
  private static final int SHOWN = 150;

  private GuardRun() {}

  public static void main(String[] args) {
    var request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(
                selectClass("headcourse.sheet.solid.SolidFigureTest"),
                selectClass(PrintedFiguresTest.class))
            .build();
    LauncherFactory.create().execute(request, new FirstFailure());
    System.exit(0);
  }

  private static final class FirstFailure implements TestExecutionListener {
    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
      if (result.getStatus() == TestExecutionResult.Status.FAILED) {
        String why = result.getThrowable().map(Throwable::toString).orElse("").replace('\n', ' ');
        why = why.replaceFirst("^.*but was: <\\[", "");
        System.out.println(
            CAUGHT
                + test.getDisplayName()
                + ": "
                + why.substring(0, Math.min(SHOWN, why.length())));
        System.out.flush();
        // One is enough; the rest is not worth the time.
        Runtime.getRuntime().halt(1);
      }
    }
  }
}
