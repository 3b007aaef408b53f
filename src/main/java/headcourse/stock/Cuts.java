package headcourse.stock;

import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A plan in which single stones are taken off their blanks: cut and good, broken, or no longer
 * wanted. Its crosscuts are parts by themselves, those of a stone one after another.
 */
final class Cuts {
  private final Yard yard;
  private final List<CutBlank> blanks;
  private final List<String> home;
  private Used used;

  Cuts(Yard yard, Assignment plan) {
    this.yard = yard;
    this.blanks = new ArrayList<>(plan.blanks());
    this.home = new ArrayList<>(plan.home());
    this.used = plan.used();
  }

  /** What is left of the plan. */
  Assignment on(Assignment plan) {
    List<CutBlank> busy = blanks.stream().filter(b -> !b.cuts().isEmpty()).toList();
    return plan.with(busy, home, used);
  }

  /** The crosscuts of the first stone with a mark that is not cut yet; none where all are. */
  List<Integer> stone(String mark) {
    List<Part> parts = yard.crosscuts().stream().map(Crosscut::first).toList();
    return Part.stone(parts, mark, i -> !home.get(i).equals(Assignment.DONE));
  }

  /**
   * A part is cut, and good.
   *
   * @param extent how long it came out, or null where it is as planned
   * @param from the blank that it was cut from, or empty for the one it was planned on
   */
  void done(int crosscut, Length extent, String from) {
    String planned = home.get(crosscut);
    Part part = yard.crosscuts().get(crosscut).first();
    Length length = extent == null ? part.extent() : extent;
    boolean there = from.isEmpty() || from.equals(planned);
    Cut was = planned.isEmpty() ? null : take(planned, part);
    if (!there) {
      elsewhere(from, length);
    } else if (was != null) {
      Length more = length.minus(was.extent());
      if (more.compareTo(Length.mm(1e-3)) > 0) {
        shift(planned, was.at(), more);
      }
      used = used.and(planned, was.at(), length);
    }
    home.set(crosscut, Assignment.DONE);
  }

  /** A part that was planned otherwise, or on no blank, and was cut from this one. */
  void elsewhere(String blank, Length length) {
    if (blank.equals(headcourse.job.Fitted.NO_PIECE)) {
      return;
    }
    Length kerf = yard.saw().kerf();
    Length at = yard.saw().cleanCut();
    for (Used.Span s : used.of(blank)) {
      at = at.max(s.end().plus(kerf));
    }
    used = used.and(blank, at, length);
    for (CutBlank b : List.copyOf(blanks)) {
      for (Cut c : b.id().equals(blank) ? b.cuts() : List.<Cut>of()) {
        if (c.at().compareTo(at.plus(length).plus(kerf)) < 0) {
          open(crosscutOf(blank, c));
        }
      }
    }
  }

  /** A part broke as it was cut: its length of the blank is lost. */
  void broke(int crosscut) {
    String planned = home.get(crosscut);
    if (!planned.isEmpty()) {
      Cut was = take(planned, yard.crosscuts().get(crosscut).first());
      used = used.and(planned, was.at(), was.extent());
      home.set(crosscut, "");
    }
  }

  /** A length of a blank is lost, with all that was planned on it. */
  void lost(OffCuts.Left piece) {
    used = used.and(piece.of(), piece.from(), piece.length());
    piece.cuts().forEach(c -> open(crosscutOf(piece.of(), c)));
  }

  /** A part is to be planned again. */
  void open(int crosscut) {
    if (!home.get(crosscut).isEmpty()) {
      take(home.get(crosscut), yard.crosscuts().get(crosscut).first());
      home.set(crosscut, "");
    }
  }

  private int crosscutOf(String blank, Cut cut) {
    return IntStream.range(0, home.size())
        .filter(i -> home.get(i).equals(blank) && cut.isOf(yard.crosscuts().get(i).first()))
        .findFirst()
        .orElseThrow();
  }

  private Cut take(String blank, Part part) {
    CutBlank b = blank(blank);
    List<Cut> cuts = new ArrayList<>(b.cuts());
    Cut was = cuts.stream().filter(c -> c.isOf(part)).findFirst().orElseThrow();
    cuts.remove(was);
    double width = was.up().isPositive() ? 0 : was.extent().mm();
    blanks.set(blanks.indexOf(b), b.with(cuts, b.waste().plus(Length.mm(width))));
    return was;
  }

  private CutBlank blank(String id) {
    return blanks.stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
  }

  /** Moves what is planned right of a stone that came out wider; what runs off is planned again. */
  private void shift(String id, Length at, Length more) {
    CutBlank b = blank(id);
    Length end = b.length().minus(yard.saw().cleanCut());
    List<Cut> moved = new ArrayList<>();
    List<Cut> off = new ArrayList<>();
    for (Cut c : b.cuts()) {
      Cut to = c.at().compareTo(at) > 0 ? c.from(more.negated()) : c;
      boolean fits = to.end().compareTo(end.plus(Length.mm(1e-3))) <= 0;
      moved.add(to);
      if (!fits) {
        off.add(to);
      }
    }
    blanks.set(blanks.indexOf(b), b.with(moved, b.waste()));
    off.forEach(c -> open(crosscutOf(id, c)));
  }
}
