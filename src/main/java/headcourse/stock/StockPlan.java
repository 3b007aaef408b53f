package headcourse.stock;

import headcourse.job.Stock;
import headcourse.units.Length;
import java.util.List;
import java.util.Locale;

/**
 * Which blank gives which stones, and what is to be bought.
 *
 * @param blanks blanks used, in the order of use
 * @param order what is to be bought
 * @param unfit stones that no blank fits, with the size that would do
 * @param changes stones that a spoiled piece moved to another blank
 * @param offCuts what is left of the blanks from which stones were cut already
 * @param lowerBound no plan for the same stones uses fewer blanks, or where prices decide, none as
 *     cheap does
 * @param price of the blanks used; 0 where the job gives no prices
 * @param leastPrice no plan costs less
 * @param proved whether the plan is proved best of all that have one row of stones on each blank,
 *     soffit strips ripped side by side as they are here
 * @param savings what other widths would save
 */
public record StockPlan(
    List<CutBlank> blanks,
    List<OrderLine> order,
    List<Unfit> unfit,
    List<Moved> changes,
    List<OffCut> offCuts,
    int lowerBound,
    double price,
    double leastPrice,
    boolean proved,
    List<Saving> savings) {
  /** Copies the lists. */
  public StockPlan {
    blanks = List.copyOf(blanks);
    order = List.copyOf(order);
    unfit = List.copyOf(unfit);
    changes = List.copyOf(changes);
    offCuts = List.copyOf(offCuts);
    savings = List.copyOf(savings);
  }

  /** A plan without prices, where nothing was spoiled. */
  public StockPlan(
      List<CutBlank> blanks,
      List<OrderLine> order,
      List<Unfit> unfit,
      int lowerBound,
      boolean proved) {
    this(blanks, order, unfit, List.of(), List.of(), lowerBound, 0, 0, proved, List.of());
  }

  /**
   * Fewer blanks for the whole job, were the stones of one opening aimed at another width.
   *
   * @param opening its mark
   * @param width to aim at
   * @param instead what is aimed at now
   * @param blanks how many blanks the job would take then
   */
  public record Saving(String opening, Length width, Length instead, int blanks) {}

  /** The same, with what other widths would save. */
  public StockPlan saving(List<Saving> other) {
    return new StockPlan(
        blanks, order, unfit, changes, offCuts, lowerBound, price, leastPrice, proved, other);
  }

  /** The blanks that a stone is cut from: several for identical openings, or for its two flats. */
  public List<CutBlank> blanksOf(String stone) {
    return blanks.stream()
        .filter(b -> b.cuts().stream().anyMatch(c -> c.stone().equals(stone)))
        .toList();
  }

  /** Whether all blanks are corners. */
  public boolean corners() {
    return blanks.stream().allMatch(b -> b.kind() == Stock.Kind.CORNER);
  }

  /** Whether another row of stones might go on a flat, so that the plan is not all there is. */
  public boolean flatRows() {
    return blanks.stream()
        .filter(b -> b.kind() == Stock.Kind.FLAT)
        .anyMatch(
            b ->
                b.cuts().stream()
                    .anyMatch(
                        c ->
                            c.part() == Part.SOFFIT || c.high().times(2).compareTo(b.face()) <= 0));
  }

  /** How many of the blanks are whole yet. */
  public int whole() {
    return (int) blanks.stream().filter(b -> !b.offCut()).count();
  }

  /** Length left over on the blanks used, as a fraction of their length; 0 where none is used. */
  public double wasteShare() {
    double waste = blanks.stream().mapToDouble(b -> b.waste().mm()).sum();
    double length = blanks.stream().mapToDouble(b -> b.length().mm()).sum();
    return length > 0 ? waste / length : 0;
  }

  /**
   * A blank and what is cut from it.
   *
   * @param id its mark and number, as in C1#4
   * @param stock mark of its kind
   * @param kind corner or flat
   * @param length arris, or length of a flat
   * @param face face leg, or height of a flat
   * @param cuts from the left end
   * @param waste length that ends up in no stone: clean cuts, kerfs, gaps and the rest
   */
  public record CutBlank(
      String id,
      String stock,
      Stock.Kind kind,
      Length length,
      Length face,
      List<Cut> cuts,
      Length waste) {
    /** Copies the cuts. */
    public CutBlank {
      cuts = List.copyOf(cuts);
    }

    /** Whether it is what is left of a blank from which something was cut. */
    public boolean offCut() {
      return id.contains("/");
    }

    /** The same blank with other cuts. */
    CutBlank with(List<Cut> cuts, Length waste) {
      return new CutBlank(id, stock, kind, length, face, cuts, waste);
    }
  }

  /** What of a stone is cut from a blank. */
  public enum Part {
    /** All of it. */
    WHOLE,
    /** The face of a stone made of two flats. */
    FACE,
    /** The soffit of a stone made of two flats. */
    SOFFIT;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A stone on a blank.
   *
   * @param stone full mark of the stone
   * @param part what of it
   * @param at where its outline begins, from the blank's left end
   * @param up how far it lies above the blank's lower edge: a strip above others
   * @param high how much of the blank's height it takes
   * @param extent length of its outline along the blank
   * @param turned whether it lies end for end
   */
  public record Cut(
      String stone, Part part, Length at, Length up, Length high, Length extent, boolean turned) {
    /** A whole stone whose extent its outline tells. */
    public Cut(String stone, Length at, boolean turned) {
      this(stone, Part.WHOLE, at, Length.ZERO, Length.ZERO, Length.ZERO, turned);
    }

    /** Whether it is this part of the stone. */
    boolean isOf(headcourse.stock.Part cut) {
      return stone.equals(cut.stone()) && part == cut.of();
    }

    /** Where its outline ends. */
    Length end() {
      return at.plus(extent);
    }

    /** The middle of its outline. */
    Length middle() {
      return at.plus(extent.half());
    }

    /** The same, measured from another place on the blank. */
    Cut from(Length start) {
      return new Cut(stone, part, at.minus(start), up, high, extent, turned);
    }
  }

  /**
   * What is left of a blank from which stones were cut.
   *
   * @param id number of the blank and its own, from the blank's left end, as in C2#3/1
   * @param blank id of the blank
   * @param kind corner or flat
   * @param length how long it is, rounded down to the grid, but to no less than is planned on it
   * @param face face leg, or height of a flat
   * @param returnLeg return leg; zero for a flat
   * @param stones full marks of the stones that are planned on it
   */
  public record OffCut(
      String id,
      String blank,
      Stock.Kind kind,
      Length length,
      Length face,
      Length returnLeg,
      List<String> stones) {
    /** Copies the list. */
    public OffCut {
      stones = List.copyOf(stones);
    }
  }

  /**
   * Something to buy.
   *
   * @param stock its mark, or empty where the yard has no name for it
   * @param what corner or flat
   * @param length least length
   * @param face least face leg
   * @param returnLeg least return leg; zero for a flat
   * @param thickness thickness
   * @param count pieces, spares included
   * @param spares how many of them are spare
   * @param price of all, 0 where not known
   * @param lead days from the order to delivery, or null where not known
   * @param orderBy the last day to order it for the day of setting, ISO 8601; empty where not known
   */
  public record OrderLine(
      String stock,
      Stock.Kind what,
      Length length,
      Length face,
      Length returnLeg,
      Length thickness,
      int count,
      int spares,
      double price,
      Integer lead,
      String orderBy) {
    /** Running length of arris, or of flats, spares included. */
    public Length running() {
      return length.times(count);
    }

    /** Face area of all, m². */
    public double areaM2() {
      return length.mm() * face.mm() * count / 1e6;
    }
  }

  /**
   * A stone that fits no blank in the yard, or that none is left for.
   *
   * @param stone its full mark
   * @param part what of it
   * @param reason why not
   * @param length least length of a blank that would do
   * @param face least face leg
   * @param returnLeg least return leg
   */
  public record Unfit(
      String stone, Part part, Reason reason, Length length, Length face, Length returnLeg) {}

  /** Why no blank fits. */
  public enum Why {
    /** None of its kind is in the yard. */
    NO_KIND,
    /** None is as thick. */
    NO_THICKNESS,
    /** None is as large in some measure. */
    SHORT,
    /** Other stones take all that would do. */
    TAKEN,
    /** Each measure is there, but not all on one blank. */
    NOT_AT_ONCE
  }

  /** What of a blank is measured. */
  public enum Measure {
    /** Along the arris, or the length of a flat. */
    LENGTH,
    /** The face leg, or the height of a flat. */
    FACE,
    /** The return leg. */
    RETURN;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A measure of which the yard has too little.
   *
   * @param measure which
   * @param need what the stone needs
   * @param longest the most that a blank has
   */
  public record Shortage(Measure measure, Length need, Length longest) {}

  /**
   * Why a stone fits no blank.
   *
   * @param why which case
   * @param kind what it is cut from
   * @param thickness of the stone
   * @param shortages what is too short; empty in the other cases
   */
  public record Reason(Why why, Stock.Kind kind, Length thickness, List<Shortage> shortages) {
    /** Copies the list. */
    public Reason {
      shortages = List.copyOf(shortages);
    }
  }

  /**
   * A stone that is cut from another blank than before a piece was spoiled.
   *
   * @param stone its full mark
   * @param part what of it
   * @param from id of the blank before
   * @param to id of the blank now, or empty where it is to be ordered
   */
  public record Moved(String stone, Part part, String from, String to) {
    /** The same, with the number of the off-cut that the stone ends on. */
    Moved onto(List<CutBlank> blanks) {
      return blanks.stream()
          .filter(b -> b.offCut() && b.id().startsWith(to + "/"))
          .filter(b -> b.cuts().stream().anyMatch(c -> c.stone().equals(stone) && c.part() == part))
          .map(b -> new Moved(stone, part, from, b.id()))
          .findFirst()
          .orElse(this);
    }
  }
}
