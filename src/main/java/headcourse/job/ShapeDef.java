package headcourse.job;

import java.util.List;

/**
 * What the reader must know of a head shape: its name, and the keys that only it has.
 *
 * @param name the word after {@code shape:}
 * @param params its own keys
 */
public record ShapeDef(String name, List<ParamDef> params) {
  /** Copies the keys. */
  public ShapeDef {
    params = List.copyOf(params);
  }

  /** What a value may be. */
  public enum Kind {
    /** A length. */
    LENGTH,
    /** An angle in degrees, or a rate. */
    ANGLE,
    /** A plain number. */
    NUMBER,
    /** A whole number of at least one. */
    COUNT,
    /** One of a few words. */
    WORD,
    /** A length, or one of a few words, or a rate such as {@code 1/8 per foot} as an angle. */
    LENGTH_OR_RATE,
    /** A mass, read as kg ({@code 50 lb}, {@code 20 kg}); a bare number is lb in inch jobs. */
    MASS,
    /** A mass per area, read as kg/m²; a bare number is lb/ft² in inch jobs. */
    MASS_PER_AREA,
    /** An area, read as m²; a bare number is in² in inch jobs. */
    AREA
  }

  /**
   * A key of a shape.
   *
   * @param name the key
   * @param kind what it holds
   * @param words the words allowed, for {@link Kind#WORD}
   * @param help what it means, one line
   */
  public record ParamDef(String name, Kind kind, List<String> words, String help) {
    /** Copies the words. */
    public ParamDef {
      words = List.copyOf(words);
    }
  }
}
