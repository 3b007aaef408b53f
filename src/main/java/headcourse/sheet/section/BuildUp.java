package headcourse.sheet.section;

import headcourse.job.Job;
import headcourse.units.Length;

/**
 * The layers behind the face of the stone, as depths from it, mm.
 *
 * @param stone back of the stone
 * @param bed back of the setting bed
 * @param scratch back of the scratch coat and its lath
 * @param sheathing back of the sheathing
 * @param framing back of the framing
 */
public record BuildUp(double stone, double bed, double scratch, double sheathing, double framing) {
  /** The layers behind an ordinary stone. */
  public static BuildUp of(Job job) {
    return of(job, Length.ZERO);
  }

  /** The layers behind a stone that stands out so far, and has as much thicker a bed. */
  public static BuildUp of(Job job, Length proud) {
    double stone = job.stone().thickness().mm();
    double bed = stone + job.wall().bed().plus(proud).mm();
    double scratch = bed + job.wall().scratch().mm();
    double sheathing = scratch + job.wall().sheathing().thickness().mm();
    return new BuildUp(stone, bed, scratch, sheathing, sheathing + job.wall().framing().mm());
  }

  /** The thicknesses from the face inwards. */
  public static Length[] thicknesses(Job job) {
    return new Length[] {
      job.stone().thickness(),
      job.wall().bed(),
      job.wall().scratch(),
      job.wall().sheathing().thickness(),
      job.wall().framing()
    };
  }

  /** The depths of all layers' boundaries from the face inwards. */
  public double[] depths() {
    return new double[] {0, stone, bed, scratch, sheathing, framing};
  }
}
