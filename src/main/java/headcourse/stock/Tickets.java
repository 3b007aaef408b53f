package headcourse.stock;

import headcourse.bench.HeadWork;
import headcourse.job.CutStone;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.layout.yard.FromStock.Taken;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Carries the plan that was ticketed on through what the bench reports. Stones that are cut stay on
 * their blanks and take their length of them; what is left returns as off-cuts. Then what broke is
 * lost, in the order of the report: each time the rest keeps its tickets as far as can be. Last,
 * stones that are to be cut otherwise than drawn, around stones that are fitted, find a place.
 */
final class Tickets {
  private final Job job;
  private final List<HeadWork> heads;
  private final List<Taken> taken;
  private final List<String> before;
  private final List<Part> fitted;

  /**
   * @param heads the heads as they are now
   * @param before pieces that were spoiled as stones chosen from the yard's pieces, and replaced
   */
  Tickets(Job job, List<HeadWork> heads, List<Taken> taken, List<String> before) {
    this.job = job;
    this.heads = heads;
    this.taken = taken;
    this.before = before;
    this.fitted = Part.fitted(heads);
  }

  /**
   * The plan as it is now, and what moved on the way.
   *
   * @param yard the yard whose crosscuts it places
   * @param gone blanks that are not there any more
   */
  record Carried(Yard yard, Assignment plan, List<StockPlan.Moved> changes, Set<String> gone) {}

  /**
   * Carries the plan on.
   *
   * @param drawn the heads as they were ticketed
   */
  Carried carried(List<HeadWork> drawn) {
    boolean stones = job.report().spoiled().stream().anyMatch(s -> !s.matches("[^#/]+#[0-9]+"));
    return reports().isEmpty() && !stones ? whole() : carry(drawn);
  }

  /** The plan where only whole blanks broke. */
  private Carried whole() {
    Set<String> gone = Set.copyOf(before);
    Yard yard = new Strips(job, Part.of(heads)).yard(taken, gone);
    Spoilage spoilage = new Spoilage(job, yard, yard.solve(gone), before);
    job.report().spoiled().forEach(spoilage::lose);
    return spoilage.carried();
  }

  private Carried carry(List<HeadWork> drawn) {
    List<Part> parts = Part.of(drawn);
    Set<String> gone = Set.copyOf(before);
    Yard ripped = new Strips(job, parts).yard(taken, gone);
    Assignment first = ripped.solve(gone);
    Yard yard = new Yard(job, parts.stream().map(Crosscut::of).toList(), taken);
    Spoilage spoilage = new Spoilage(job, yard, apart(ripped, yard, first), before);
    List<String> spoiled = job.report().spoiled();
    done(spoilage, yard, stone -> !spoiled.contains(stone));
    for (int i = 0; i < spoiled.size(); i++) {
      String name = spoiled.get(i);
      spoilage.lose(name);
      if (spoiled.lastIndexOf(name) == i) {
        // What broke and is reported as good was cut a second time.
        done(spoilage, yard, name::equals);
      }
    }
    return new Anew(job, taken).planned(spoilage.carried(), wanted());
  }

  /** A stone that is cut, and the blank that it is said to come from. */
  private record Report(String stone, String piece) {}

  private List<Report> reports() {
    List<Report> all = new ArrayList<>();
    for (Fitted f : job.report().fitted()) {
      if (taken.stream().noneMatch(t -> t.stone().equals(f.opening() + "-" + f.stone()))) {
        all.add(new Report(f.opening() + "-" + f.stone(), f.piece()));
      }
    }
    job.report().cut().forEach(c -> all.add(new Report(c.mark(), c.piece())));
    return all;
  }

  /** Some of the stones are cut as reported. */
  private void done(Spoilage spoilage, Yard yard, Predicate<String> which) {
    reports().stream()
        .filter(r -> which.test(r.stone()))
        .forEach(r -> spoilage.follow(done(yard, spoilage.plan(), r)));
  }

  private Assignment done(Yard yard, Assignment plan, Report r) {
    Cuts cuts = new Cuts(yard, plan);
    List<Integer> crosscuts = cuts.stone(r.stone());
    for (int crosscut : crosscuts) {
      cuts.done(crosscut, measured(yard.crosscuts().get(crosscut).first()), r.piece());
    }
    if (crosscuts.isEmpty() && !r.piece().isEmpty()) {
      // It was never drawn so; what it measures is all there is to know.
      fitted.stream()
          .filter(p -> p.stone().equals(r.stone()))
          .forEach(p -> cuts.elsewhere(r.piece(), p.extent()));
    }
    return cuts.on(plan);
  }

  private Length measured(Part drawn) {
    return fitted.stream()
        .filter(p -> p.stone().equals(drawn.stone()) && p.of() == drawn.of())
        .map(Part::extent)
        .findFirst()
        .orElse(null);
  }

  /** The same plan with every strip by itself. */
  private static Assignment apart(Yard ripped, Yard yard, Assignment plan) {
    Map<Part, String> homes = new IdentityHashMap<>();
    for (int i = 0; i < ripped.crosscuts().size(); i++) {
      for (Part p : ripped.crosscuts().get(i).parts()) {
        homes.put(p, plan.home().get(i));
      }
    }
    List<String> home = yard.crosscuts().stream().map(l -> homes.get(l.first())).toList();
    return plan.with(plan.blanks(), home, plan.used());
  }

  /** The parts that are still to be cut. */
  private List<Part> wanted() {
    List<Part> parts = new ArrayList<>(Part.of(heads));
    for (CutStone c : job.report().cut()) {
      List<Integer> cut = Part.stone(parts, c.mark(), i -> true);
      cut.stream().sorted(Comparator.reverseOrder()).forEach(i -> parts.remove((int) i));
    }
    return parts;
  }
}
