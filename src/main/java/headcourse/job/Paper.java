package headcourse.job;

import headcourse.units.Length;
import headcourse.units.Units;

/**
 * A paper size, as it is fed upright.
 *
 * @param name the word in the job file
 * @param width the short side; the roll's width for a roll
 * @param height the long side; zero for a roll, whose length is as needed
 * @param family whose standards its frame follows
 */
public record Paper(String name, Length width, Length height, Units family) {
  /** Whether it comes off a roll. */
  public boolean roll() {
    return height.isZero();
  }
}
