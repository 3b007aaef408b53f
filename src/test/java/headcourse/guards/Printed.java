package headcourse.guards;

import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.Tape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A job's finished bundles as they are read, beside its {@code layout.json}; gathers what is wrong.
 */
final class Printed {
  private final Map<Bundle, List<Part>> bundles;
  private final Map<String, Stone> stones = new LinkedHashMap<>();
  final Json layout;
  final Job job;
  final boolean inch;
  final List<String> faults = new ArrayList<>();

  /** How many figures were held against something. */
  int held;

  Printed(Job job, String layout, Map<Bundle, List<Part>> bundles) {
    this.job = job;
    this.layout = Json.of(layout);
    this.bundles = bundles;
    this.inch = this.layout.text("units").equals("in");
    for (Json o : openings()) {
      for (Json s : o.list("stones")) {
        stones.put(s.text("mark"), new Stone(s, o.text("mark")));
      }
    }
  }

  List<Json> openings() {
    return layout.list("openings");
  }

  Json opening(String mark) {
    return openings().stream().filter(o -> o.text("mark").equals(mark)).findFirst().orElseThrow();
  }

  Stone stone(String mark) {
    return Objects.requireNonNull(stones.get(mark), mark);
  }

  List<Stone> stones(String opening) {
    return stones.values().stream().filter(s -> s.opening().equals(opening)).toList();
  }

  boolean curved(Json opening) {
    return opening.get("head").get("radiusMm").value() != null
        || stones(opening.text("mark")).stream().anyMatch(s -> s.corners().size() > 5);
  }

  /** The sheets of a bundle, in order. */
  List<Part> sheets(Bundle bundle) {
    List<Part> all = new ArrayList<>();
    for (Part p : bundles.get(bundle)) {
      all.addAll(p.type().equals("Document") ? p.kids() : List.of(p));
    }
    return all;
  }

  List<Part> all(Bundle bundle, String type) {
    return sheets(bundle).stream().flatMap(Part::all).filter(p -> p.type().equals(type)).toList();
  }

  /** Half a step of the grid: how far a printed length may be from the true one. */
  double half() {
    return layout.number("gridMm") / 2 + 0.011;
  }

  void length(String what, String printed, double mm) {
    length(what, printed, mm, half());
  }

  void length(String what, String printed, double mm, double within) {
    near(what, Tape.mm(printed), mm, within);
  }

  void near(String what, double printed, double wanted, double within) {
    held++;
    if (!(Math.abs(printed - wanted) <= within)) {
      faults.add(what + ": printed " + printed + ", is " + wanted);
    }
  }

  void same(String what, Object printed, Object wanted) {
    held++;
    if (!Objects.equals(printed, wanted)) {
      faults.add(what + ": printed " + printed + ", is " + wanted);
    }
  }

  void that(boolean holds, String fault) {
    held++;
    if (!holds) {
      faults.add(fault);
    }
  }
}
