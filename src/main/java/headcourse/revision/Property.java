package headcourse.revision;

/** A property of an opening or a stone whose change is worth telling. */
public enum Property {
  /** How many openings there are of it. */
  COUNT("count", Kind.NUMBER),
  /** Shape of the head. */
  SHAPE("shape", Kind.TEXT),
  /** Clear width. */
  WIDTH("widthMm", Kind.LENGTH),
  /** Height of the head, or of a stone. */
  HEIGHT("heightMm", Kind.LENGTH),
  /** Radius of the soffit. */
  RADIUS("radiusMm", Kind.LENGTH),
  /** Depth of the striking point. */
  STRIKING("strikingMm", Kind.LENGTH),
  /** How far the left end passes its jamb. */
  BEARING_LEFT("bearingLeftMm", Kind.LENGTH),
  /** How far the right end passes its jamb. */
  BEARING_RIGHT("bearingRightMm", Kind.LENGTH),
  /** Width of the lower end. */
  BOTTOM("bottomMm", Kind.LENGTH),
  /** Width of the upper end. */
  TOP("topMm", Kind.LENGTH),
  /** Rake of the edge towards the centre line. */
  RAKE_INNER("rakeInnerDeg", Kind.ANGLE),
  /** Rake of the edge away from it. */
  RAKE_OUTER("rakeOuterDeg", Kind.ANGLE),
  /** Thickness. */
  THICKNESS("thicknessMm", Kind.LENGTH),
  /** Depth of the return. */
  RETURN("returnMm", Kind.LENGTH),
  /** How far the return is cut away. */
  RELIEF("reliefMm", Kind.LENGTH),
  /** How far it stands out. */
  PROUD("proudMm", Kind.LENGTH),
  /** Heights of the notches. */
  NOTCHES("notches", Kind.LENGTH),
  /** Screws. */
  SCREWS("screws", Kind.LENGTH),
  /** The stock it is cut from. */
  STOCK("stock", Kind.TEXT);

  /** What its values are. */
  public enum Kind {
    /** Millimetres. */
    LENGTH,
    /** Degrees. */
    ANGLE,
    /** A plain number. */
    NUMBER,
    /** A word. */
    TEXT
  }

  private final String word;
  private final Kind kind;

  Property(String word, Kind kind) {
    this.word = word;
    this.kind = kind;
  }

  /** The field in {@code layout.json} that holds it, or a word of its own. */
  public String word() {
    return word;
  }

  /** What its values are. */
  public Kind kind() {
    return kind;
  }
}
