package headcourse.export;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import org.junit.jupiter.api.Test;

/** Sizes that a spreadsheet leaves as they are. */
class SizesInCsvTest {
  @Test
  void noSizeIsTakenForADate() {
    JobMaker m = JobMaker.one();
    m.thickness = Length.inches(0.75);
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    for (String table : new String[] {CutListCsv.write(work), OrderListCsv.write(work)}) {
      for (String cell : table.split("[,\r\n]+")) {
        assertFalse(cell.matches("\\d{1,2}/\\d{1,4}"), cell + " is a day of the year");
        assertFalse(cell.matches("\\d+ \\d+/\\d+"), cell + " has no sign");
      }
    }
    assertTrue(CutListCsv.write(work).contains(",\"3/4\"\"\","), "three quarters of an inch");
  }
}
