package headcourse.sheet.elevation;

import headcourse.layout.PlacedStone;
import headcourse.sheet.NoRoom;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext.Turn;
import headcourse.text.Words;
import headcourse.units.Units;
import java.util.List;
import java.util.Optional;

/**
 * How an elevation is put on paper: turned which way, at which scale, in how many parts. A head is
 * shown whole where its running marks can then be read from two metres; else in parts, one a page.
 *
 * @param turn how the page is turned
 * @param figures one for each page
 */
public record ElevationChoice(Turn turn, List<ElevationFigure> figures) {
  /** Lettering that is read from two metres with ease, from where it is still read, and least. */
  private static final double[] WANTED = {10, 7, 5, 3.5, 2.5};

  /** Of so many sheets it is asked first whether any number of them would do. */
  private static final int MANY = 6;

  /** Copies the figures. */
  public ElevationChoice {
    figures = List.copyOf(figures);
  }

  /**
   * Room for an elevation on a page turned one way.
   *
   * @param turn how the page is turned
   * @param width mm
   * @param height mm, for a head shown whole
   * @param inParts mm, for a head in parts, whose pages say which
   */
  public record Room(Turn turn, double width, double height, double inParts) {
    double height(int parts) {
      return parts == 1 ? height : inParts;
    }
  }

  /** The best way to show a head in one of some rooms. */
  public static ElevationChoice choose(
      HeadFigures figures, Units units, Words words, List<Room> rooms) {
    // An arch is shown whole where that can be read at all; a stone without a mark is worse than
    // any number of sheets.
    int parts = figures.layout().stones().size();
    return choose(figures, units, words, rooms, figures.curved() ? 1 : parts)
        .or(() -> fewest(figures, units, words, rooms, parts))
        .orElseThrow(() -> new NoRoom("the elevation of " + figures.layout().opening().mark()));
  }

  // On as few sheets as show every stone's mark, whatever the lettering.
  private static Optional<ElevationChoice> fewest(
      HeadFigures figures, Units units, Words words, List<Room> rooms, int most) {
    double small = WANTED[WANTED.length - 1];
    for (int parts = 2; parts <= most; parts++) {
      if (parts == MANY && inParts(figures, units, words, rooms, most, small).isEmpty()) {
        // A stone that has no room on a sheet of its own has none beside others.
        return Optional.empty();
      }
      if (inParts(figures, units, words, rooms, parts, small).isEmpty()) {
        continue;
      }
      for (double least : WANTED) {
        Optional<ElevationChoice> best = inParts(figures, units, words, rooms, parts, least);
        if (best.isPresent()) {
          return best;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<ElevationChoice> choose(
      HeadFigures figures, Units units, Words words, List<Room> rooms, int most) {
    Optional<ElevationChoice> best = Optional.empty();
    for (double least : WANTED) {
      for (int parts = 1; parts <= most && best.isEmpty(); parts++) {
        best = inParts(figures, units, words, rooms, parts, least);
        if (least == 10 && best.isPresent()) {
          best = orLarger(best.get(), inParts(figures, units, words, rooms, 1, 7), rooms);
        }
        if (least == 10) {
          // Ten millimetres are worth a smaller scale, not a page more.
          break;
        }
      }
      if (best.isPresent()) {
        return best;
      }
    }
    return best;
  }

  // On small paper letters of ten millimetres are not worth half the size of the drawing.
  private static Optional<ElevationChoice> orLarger(
      ElevationChoice ten, Optional<ElevationChoice> seven, List<Room> rooms) {
    boolean small = rooms.stream().allMatch(r -> Math.min(r.width, r.height) < 215);
    boolean larger =
        seven.isPresent()
            && seven.get().figures.get(0).scale().factor()
                >= 1.9 * ten.figures.get(0).scale().factor();
    return small && larger ? seven : Optional.of(ten);
  }

  private static Optional<ElevationChoice> inParts(
      HeadFigures figures, Units units, Words words, List<Room> rooms, int parts, double least) {
    List<PlacedStone> stones = figures.layout().stones();
    List<HeadPart> list =
        figures.curved() && parts > 1
            ? HeadPart.splitArch(stones, parts)
            : HeadPart.split(stones, parts);
    ElevationChoice best = null;
    double narrowest = narrowest(figures);
    int[] hardest = {0};
    for (Scale scale : Scale.ladder(units)) {
      if (!figures.curved() && narrowest * scale.factor() < ElevationFigure.NARROWEST) {
        continue;
      }
      for (Room room : rooms) {
        Optional<List<ElevationFigure>> fit =
            fit(figures, list, scale, words, room, least, hardest);
        if (fit.isPresent()
            && readable(fit.get())
            && (best == null || fit.get().get(0).lettering() > best.lettering() + 1e-9)) {
          best = new ElevationChoice(room.turn, fit.get());
        }
      }
      if (best != null) {
        return Optional.of(best);
      }
    }
    return Optional.empty();
  }

  private static boolean readable(List<ElevationFigure> figures) {
    for (ElevationFigure f : figures) {
      if (!f.readable()) {
        return false;
      }
    }
    return true;
  }

  private double lettering() {
    return figures.get(0).lettering();
  }

  private static double narrowest(HeadFigures figures) {
    double narrowest = Double.POSITIVE_INFINITY;
    for (PlacedStone s : figures.layout().stones()) {
      narrowest = Math.min(narrowest, s.outline().bounds().width());
    }
    return narrowest;
  }

  private static Optional<List<ElevationFigure>> fit(
      HeadFigures figures,
      List<HeadPart> parts,
      Scale scale,
      Words words,
      Room room,
      double least,
      int[] hardest) {
    for (HeadPart p : parts) {
      // The stones alone are larger than the paper: nothing around them need be laid out.
      if (p.box().width() * scale.factor() > room.width - 2 * ElevationBands.SIDE
          || p.box().height() * scale.factor() > room.height(parts.size())) {
        return Optional.empty();
      }
    }
    ElevationBands[] bands = new ElevationBands[parts.size()];
    double most = Math.min(room.width, room.height) > 240 ? 14 : 10;
    for (double cap : StoneLabels.HEIGHTS) {
      if (cap > most + 1e-9 || cap < least - 1e-9) {
        continue;
      }
      ElevationFigure[] all = new ElevationFigure[parts.size()];
      int fits = 0;
      while (fits < all.length) {
        // The part that had no room before probably has none now: first it, then the others.
        int i = (hardest[0] + fits) % all.length;
        if (bands[i] == null) {
          Optional<ElevationBands> b =
              ElevationBands.of(figures, parts.get(i), scale, words, room.width);
          if (b.isEmpty()) {
            hardest[0] = i;
            return Optional.empty();
          }
          bands[i] = b.get();
        }
        Optional<ElevationFigure> f = ElevationFigure.of(bands[i], cap);
        if (f.isEmpty()
            || f.get().lettering() < least - 1e-9
            || f.get().height() > room.height(all.length)) {
          hardest[0] = i;
          break;
        }
        all[i] = f.get();
        fits++;
      }
      if (fits == all.length) {
        return Optional.of(List.of(all));
      }
    }
    return Optional.empty();
  }
}
