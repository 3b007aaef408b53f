package headcourse.stock;

/**
 * What a cutting plan costs: each is looked at only where those before it are equal.
 *
 * @param missing stones that no blank is left for
 * @param price of the blanks used, in hundredths; 0 where no prices are given
 * @param blanks how many blanks are used
 * @param material of the blanks used, mm²
 */
record Cost(long missing, long price, long blanks, long material) implements Comparable<Cost> {
  static final Cost NONE = new Cost(0, 0, 0, 0);

  Cost plus(Cost o) {
    return new Cost(missing + o.missing, price + o.price, blanks + o.blanks, material + o.material);
  }

  @Override
  public int compareTo(Cost o) {
    int c = Long.compare(missing, o.missing);
    c = c != 0 ? c : Long.compare(price, o.price);
    c = c != 0 ? c : Long.compare(blanks, o.blanks);
    return c != 0 ? c : Long.compare(material, o.material);
  }
}
