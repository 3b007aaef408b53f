package headcourse.job;

import headcourse.units.Grid;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * A job as read: every value checked for itself, every default filled in.
 *
 * @param name the job file's name without folder and extension; names the output folder
 * @param info title block
 * @param units units it is printed in
 * @param grid step of every cut length
 * @param printing how it is printed
 * @param stone the stone
 * @param wall what is behind it
 * @param setting how it is set
 * @param tools the tools
 * @param fastener the screws
 * @param props what carries the stones while the mortar is green
 * @param openings at least one
 * @param stock the yard
 * @param report what the bench reports
 * @param checks how findings are judged
 * @param steps how many steps an exact search may take before it prints a bound instead
 * @param spans where everything stands
 */
public record Job(
    String name,
    JobInfo info,
    Units units,
    Grid grid,
    Printing printing,
    Stone stone,
    Wall wall,
    Setting setting,
    Tools tools,
    Fastener fastener,
    Props props,
    List<Opening> openings,
    Stock stock,
    Report report,
    Checks checks,
    long steps,
    Spans spans) {
  /** Copies the list. */
  public Job {
    openings = List.copyOf(openings);
  }

  /** Paper of each bundle. */
  public Papers papers() {
    return printing.papers();
  }

  /** Words on the sheets. */
  public Language language() {
    return printing.language();
  }

  /** Path of the sheet frame, or empty for the built-in one. */
  public String frame() {
    return printing.frame();
  }

  /** The same job on other paper. */
  public Job withPapers(Papers other) {
    return new Job(
        name,
        info,
        units,
        grid,
        printing.on(other),
        stone,
        wall,
        setting,
        tools,
        fastener,
        props,
        openings,
        stock,
        report,
        checks,
        steps,
        spans);
  }

  /** The same job with other openings. */
  public Job withOpenings(List<Opening> others) {
    return new Job(
        name, info, units, grid, printing, stone, wall, setting, tools, fastener, props, others,
        stock, report, checks, steps, spans);
  }

  /** The same job with one opening alone, before anything was cut or sent out. */
  public Job alone(int opening) {
    Opening one = openings.get(opening);
    return new Job(
        name,
        info.first(),
        units,
        grid,
        printing,
        stone,
        wall,
        setting,
        tools,
        fastener,
        props,
        List.of(one),
        stock,
        Report.NONE,
        checks.of(one.mark()),
        steps,
        spans);
  }

  /** The same job, its exact searches taking so many steps at most. */
  public Job withSteps(long most) {
    return new Job(
        name, info, units, grid, printing, stone, wall, setting, tools, fastener, props, openings,
        stock, report, checks, most, spans);
  }

  /** The same job with another opening in one's place. */
  public Job with(int place, Opening other) {
    List<Opening> all = new ArrayList<>(openings);
    all.set(place, other);
    return withOpenings(all);
  }

  /** The same job, of which other things were reported from the bench. */
  public Job withReport(Report other) {
    return new Job(
        name, info, units, grid, printing, stone, wall, setting, tools, fastener, props, openings,
        stock, other, checks, steps, spans);
  }
}
