package headcourse.sheet.elevation;

import headcourse.layout.PlacedStone;
import headcourse.sheet.NoRoom;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext.Turn;
import headcourse.text.Words;
import headcourse.units.Units;
import java.util.ArrayList;
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

  private static final int MOST_PARTS = 40;

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
    int most = figures.curved() ? 1 : MOST_PARTS;
    return choose(figures, units, words, rooms, true, most)
        .or(() -> choose(figures, units, words, rooms, false, most))
        .or(() -> choose(figures, units, words, rooms, false, MOST_PARTS))
        .orElseThrow(() -> new NoRoom("the elevation of " + figures.layout().opening().mark()));
  }

  private static Optional<ElevationChoice> choose(
      HeadFigures figures, Units units, Words words, List<Room> rooms, boolean labelled, int most) {
    Optional<ElevationChoice> best = Optional.empty();
    for (double least : WANTED) {
      for (int parts = 1; parts <= most && best.isEmpty(); parts++) {
        best = inParts(figures, units, words, rooms, parts, least, labelled);
        if (least == 10 && best.isPresent()) {
          best = orLarger(best.get(), inParts(figures, units, words, rooms, 1, 7, labelled), rooms);
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
      HeadFigures figures,
      Units units,
      Words words,
      List<Room> rooms,
      int parts,
      double least,
      boolean labelled) {
    List<HeadPart> list = HeadPart.split(figures.layout().stones(), parts);
    ElevationChoice best = null;
    double narrowest = narrowest(figures);
    for (Scale scale : Scale.ladder(units)) {
      if (narrowest * scale.factor() < ElevationFigure.NARROWEST) {
        continue;
      }
      for (Room room : rooms) {
        Optional<List<ElevationFigure>> fit = fit(figures, list, scale, words, room, least);
        if (fit.isPresent()
            && (!labelled || readable(fit.get()))
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
      double least) {
    List<ElevationBands> bands = new ArrayList<>();
    for (HeadPart part : parts) {
      Optional<ElevationBands> b = ElevationBands.of(figures, part, scale, words, room.width);
      if (b.isEmpty()) {
        return Optional.empty();
      }
      bands.add(b.get());
    }
    double most = Math.min(room.width, room.height) > 240 ? 14 : 10;
    for (double cap : StoneLabels.HEIGHTS) {
      if (cap <= most + 1e-9 && cap >= least - 1e-9) {
        List<ElevationFigure> all = lettered(bands, cap, least, room.height(parts.size()));
        if (all.size() == parts.size()) {
          return Optional.of(all);
        }
      }
    }
    return Optional.empty();
  }

  // The figures up to the first that has no room.
  private static List<ElevationFigure> lettered(
      List<ElevationBands> bands, double cap, double least, double height) {
    List<ElevationFigure> all = new ArrayList<>();
    for (ElevationBands b : bands) {
      Optional<ElevationFigure> f = ElevationFigure.of(b, cap);
      if (f.isEmpty() || f.get().lettering() < least - 1e-9 || f.get().height() > height) {
        return all;
      }
      all.add(f.get());
    }
    return all;
  }
}
