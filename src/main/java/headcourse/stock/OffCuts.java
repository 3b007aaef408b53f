package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.OffCut;
import headcourse.stock.Used.Span;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is left of blanks from which something was cut: pieces numbered from the blank's left end,
 * as C2#3/1, each with the stones that are planned on it.
 */
final class OffCuts {
  private final Job job;
  private final Yard yard;

  OffCuts(Job job, Yard yard) {
    this.job = job;
    this.yard = yard;
  }

  /**
   * A piece of a blank.
   *
   * @param id its number after that of its blank
   * @param of the blank's id
   * @param from where it begins, from the blank's left end
   * @param length how long it is, rounded down to the grid, but to no less than is planned on it
   * @param cuts what is planned on it, from the blank's left end
   */
  record Left(String id, String of, Length from, Length length, List<Cut> cuts) {}

  /** All that is left in the yard, blank by blank; nothing of blanks that are gone. */
  List<Left> of(Assignment plan, java.util.Set<String> gone) {
    return plan.used().spans().keySet().stream()
        .filter(id -> !gone.contains(id))
        .sorted(order())
        .flatMap(id -> of(plan, id).stream())
        .toList();
  }

  /** By the stock's order, then by number. */
  private Comparator<String> order() {
    List<String> marks = job.stock().items().stream().map(Stock.Item::mark).toList();
    return Comparator.comparingInt((String id) -> marks.indexOf(id.substring(0, id.indexOf('#'))))
        .thenComparingInt(id -> number(id, 1))
        .thenComparingInt(id -> number(id, 2));
  }

  private static int number(String id, int i) {
    String[] parts = id.split("[#/]");
    return i < parts.length ? Integer.parseInt(parts[i]) : 0;
  }

  private List<Left> of(Assignment plan, String id) {
    Stock.Item item = yard.item(id);
    List<Cut> planned = new ArrayList<>();
    plan.blanks().stream().filter(b -> b.id().equals(id)).forEach(b -> planned.addAll(b.cuts()));
    List<Left> pieces = new ArrayList<>();
    Length kerf = job.tools().saw().kerf();
    List<Span> spans = plan.used().of(id).stream().sorted(Comparator.comparing(Span::at)).toList();
    Length from = Length.ZERO;
    for (Span s : spans) {
      piece(pieces, id, from, s.at().minus(kerf), planned);
      from = from.max(s.end().plus(kerf));
    }
    piece(pieces, id, from, item.length(), planned);
    // Strips beside one that is cut already: ripped from the same length.
    while (!planned.isEmpty()) {
      Cut c = planned.get(0);
      piece(pieces, id, c.at(), c.end(), planned);
    }
    pieces.sort(Comparator.comparing(Left::from));
    List<Left> numbered = new ArrayList<>();
    for (Left p : pieces) {
      String number = id + "/" + (numbered.size() + 1);
      numbered.add(new Left(number, id, p.from(), p.length(), p.cuts()));
    }
    return numbered;
  }

  /** Adds a piece with what is planned on it, unless it is too short to be kept. */
  private void piece(List<Left> pieces, String id, Length from, Length to, List<Cut> planned) {
    List<Cut> on = new ArrayList<>(planned);
    on.removeIf(c -> c.middle().compareTo(from) <= 0 || c.middle().compareTo(to) >= 0);
    planned.removeAll(on);
    Length start = from;
    Length reach = from;
    for (Cut c : on) {
      // Neighbours of a fan reach under each other; the long point counts.
      start = start.min(c.at());
      reach = reach.max(c.end());
    }
    Length end = to.max(reach);
    Length micron = Length.mm(1e-3);
    Length whole = job.grid().ticks(job.grid().floor(end.minus(start).plus(micron)));
    Length length = whole.max(reach.minus(start));
    Length least = job.units() == Units.INCH ? Length.inches(1) : Length.mm(25);
    if (!on.isEmpty() || length.compareTo(least) >= 0) {
      pieces.add(new Left("", id, start, length, on));
    }
  }

  /** The pieces as they lie in the yard. */
  List<OffCut> listed(List<Left> left) {
    return left.stream().map(this::listed).toList();
  }

  private OffCut listed(Left l) {
    Stock.Item i = yard.item(l.of());
    List<String> planned = l.cuts().stream().map(Cut::stone).distinct().toList();
    return new OffCut(l.id(), l.of(), i.kind(), l.length(), i.face(), i.returnLeg(), planned);
  }

  /** The blanks that are to be cut; of those that are cut already, the pieces that are left. */
  List<CutBlank> blanks(Assignment plan, List<Left> left) {
    List<CutBlank> out = new ArrayList<>();
    for (CutBlank b : plan.blanks()) {
      if (!plan.used().opened(b.id())) {
        out.add(b);
        continue;
      }
      for (Left l : left) {
        if (l.of().equals(b.id()) && !l.cuts().isEmpty()) {
          List<Cut> cuts = l.cuts().stream().map(c -> c.from(l.from())).toList();
          double used = cuts.stream().mapToDouble(this::taken).sum();
          Length waste = l.length().minus(Length.mm(used));
          out.add(new CutBlank(l.id(), b.stock(), b.kind(), l.length(), b.face(), cuts, waste));
        }
      }
    }
    out.sort(Comparator.comparing(CutBlank::id, order()));
    return out;
  }

  private double taken(Cut cut) {
    // Of strips side by side the lowest counts for all.
    return cut.up().isPositive()
        ? 0
        : yard.crosscuts().stream()
            .filter(l -> cut.isOf(l.first()))
            .mapToDouble(l -> l.profile().meanWidth())
            .findFirst()
            .orElse(cut.extent().mm());
  }
}
