package headcourse.faults;

import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

/** The list of faults follows the source. */
class FaultsTest {
  @Test
  void everyFaultStillHasItsPlace() throws Exception {
    for (Fault f : Fault.all()) {
      assertFalse(f.planted().isEmpty(), f.name() + ": not once in " + f.file());
    }
  }
}
