package headcourse.job.yaml;

import headcourse.job.Contract;
import headcourse.job.JobInfo;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code job:}, the title block. */
final class JobInfoReader {
  private JobInfoReader() {}

  /** Reads it; the section is not done with yet. */
  static JobInfo read(Section s) {
    List<JobInfo.Revision> revisions = new ArrayList<>();
    String number = s.text("number");
    String title = s.text("title");
    String site = s.text("site");
    String client = s.text("client");
    String mason = s.text("mason");
    String drawnBy = s.text("drawn-by");
    String date = s.get("date", "", JobInfoReader::date);
    String revision = s.text("revision");
    for (Item i : s.list("revisions")) {
      Section r = i.section();
      revisions.add(
          new JobInfo.Revision(
              r.text("mark"), r.get("date", "", JobInfoReader::date), r.text("note")));
      r.done();
    }
    String revisionOf = s.text("revision-of");
    String setting = s.get("setting-date", "", JobInfoReader::date);
    return new JobInfo(
        number,
        title,
        site,
        client,
        mason,
        drawnBy,
        date,
        revision,
        revisions,
        revisionOf,
        setting,
        Contract.UNSAID);
  }

  private static String date(Item item) {
    String s = item.raw("a date");
    try {
      if (s != null && dated(s)) {
        int year = Integer.parseInt(s.substring(0, 4));
        int month = Integer.parseInt(s.substring(5, 7));
        return LocalDate.of(year, month, Integer.parseInt(s.substring(8))).toString();
      }
    } catch (DateTimeException e) {
      // Told below, with all that is no date.
    }
    if (s != null && !s.isEmpty()) {
      item.error(Reading.quoted(s) + " is no date; expected year-month-day, as 2026-05-04");
    }
    return null;
  }

  private static boolean dated(String s) {
    String form = "0000-00-00";
    boolean good = s.length() == form.length();
    for (int i = 0; good && i < form.length(); i++) {
      char c = s.charAt(i);
      good = form.charAt(i) == '-' ? c == '-' : c >= '0' && c <= '9';
    }
    return good;
  }
}
