package headcourse.job;

import java.util.List;

/**
 * What the title block says. Every text is empty where the job file does not give it.
 *
 * @param number the job's number
 * @param title what it is
 * @param site where it is
 * @param client who it is drawn for
 * @param mason whose sheet it is
 * @param drawnBy who drew it
 * @param date ISO 8601 date; never taken from a clock
 * @param revision the revision's mark
 * @param revisions the history, oldest first
 * @param revisionOf path of the layout.json of the revision before, or empty
 * @param settingDate ISO 8601 date on which setting begins, or empty
 * @param contract what the job says to people outside the shop
 */
public record JobInfo(
    String number,
    String title,
    String site,
    String client,
    String mason,
    String drawnBy,
    String date,
    String revision,
    List<Revision> revisions,
    String revisionOf,
    String settingDate,
    Contract contract) {
  /** A job that says nothing of when it is set. */
  public JobInfo(
      String number,
      String title,
      String site,
      String client,
      String mason,
      String drawnBy,
      String date,
      String revision,
      List<Revision> revisions,
      String revisionOf) {
    this(
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
        "",
        Contract.UNSAID);
  }

  /** The same with what the job says to people outside the shop. */
  public JobInfo with(Contract said) {
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
        settingDate,
        said);
  }

  /** Copies the history. */
  public JobInfo {
    revisions = List.copyOf(revisions);
  }

  /** One line of the history. */
  public record Revision(String mark, String date, String note) {}
}
