package headcourse.cure;

import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Looks for the smallest changes that make a head possible: first one value, then what has to be
 * written together. What whoever refused the head proposes is tried first; then every value that
 * could give way is turned. Nothing is offered that was not tried.
 */
public final class Adviser {
  /** How many cures are offered. */
  private static final int OFFERED = 3;

  /** With so many pairs in hand no more are looked for. */
  private static final int ENOUGH = 4;

  /** More changes than these in one cure help nobody. */
  private static final int TOGETHER = 3;

  /** As often a value is turned either way at most where each trial takes the whole pile. */
  private static final int FEW = 4;

  /** What looking for one value, and then for more, may take; counted, so always the same. */
  private static final long PATIENCE = 400_000;

  private final Job job;
  private final Opening opening;
  private final Solution.Refused refused;
  private final Trials trials;
  private final List<Dial> dials;
  private final List<Diagnostic> notes = new ArrayList<>();

  private Adviser(Job job, int number, Solution.Refused refused, SettingOut setting) {
    this.job = job;
    this.opening = job.openings().get(number);
    this.refused = refused;
    this.trials = new Trials(job, number, setting, PATIENCE);
    boolean flat = Shapes.named(opening.head().shape()).orElseThrow().flat();
    this.dials = Dials.of(job, opening, flat);
    if (opening.head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK) {
      // What has no easier way would be tried too often with the whole pile; another rhythm takes
      // one trial, and helps most.
      dials.removeIf(d -> d.way() == 0 && d.limit() > FEW && !d.path().startsWith("fitted."));
      dials.sort(Comparator.comparing(d -> !d.path().endsWith(".rhythm")));
    }
  }

  /**
   * What is said of two heads each of which can be set out, but not both.
   *
   * @param job the job
   * @param one number of the one opening
   * @param other number of the other
   * @param refused why they can't
   * @param setting sets out both when it is asked for the one
   */
  public static Advice between(
      Job job, int one, int other, Solution.Refused refused, SettingOut setting) {
    if (job.spans().rewriting() == null) {
      return new Advice(refused.problems(), List.of(), 0);
    }
    Adviser adviser = new Adviser(job, one, refused, setting);
    if (other != one) {
      adviser.dials.addAll(new Adviser(job, other, refused, setting).dials);
    }
    // What a head is made of is turned only where it does not come out on less wall.
    return adviser.advice(List.of());
  }

  /**
   * What is said of an opening that can't be set out; nothing is offered for a job without a file.
   *
   * @param job the job
   * @param opening number of the opening
   * @param refused why it can't
   * @param setting sets out a job in which something was changed
   */
  public static Advice on(Job job, int opening, Solution.Refused refused, SettingOut setting) {
    return job.spans().rewriting() == null
        ? new Advice(refused.problems(), List.of(), 0)
        : advise(new Adviser(job, opening, refused, setting));
  }

  /**
   * Something written that did not do yet.
   *
   * @param far the value that was turned far for it, or null
   */
  private record Open(List<Change> written, Solution.Refused refused, Dial far) {}

  private static Advice advise(Adviser adviser) {
    return adviser.advice(adviser.dials);
  }

  /**
   * @param first the values that are turned alone
   */
  private Advice advice(List<Dial> first) {
    List<Open> open = new ArrayList<>();
    List<List<Change>> found = proposed(new Open(List.of(), refused, null), open);
    // A value that the refusal itself has a better one for is not turned besides.
    List<String> had = found.stream().filter(c -> c.size() == 1).map(c -> c.get(0).path()).toList();
    found.addAll(alone(first.stream().filter(d -> !had.contains(d.path())).toList()));
    open.addAll(far(first));
    for (int n = 2; n <= TOGETHER && found.isEmpty(); n++) {
      trials.more(PATIENCE);
      List<Open> next = new ArrayList<>();
      for (Open o : open) {
        found.addAll(proposed(o, next));
        if (o.far() == null) {
          turned(dials, o.written()).forEach(t -> found.add(t.changes()));
        }
      }
      if (n == 2 && found.isEmpty() && !first.isEmpty()) {
        found.addAll(pairs());
      }
      open = next;
    }
    TreeSet<String> seen = new TreeSet<>();
    List<Cure> cures =
        found.stream()
            .filter(c -> seen.add(c.stream().map(this::words).toList().toString()))
            .limit(OFFERED)
            .map(c -> new Cure(c, words(c)))
            .toList();
    return new Advice(said(cures), cures, trials.effort());
  }

  /** What the refusal itself proposes. */
  private List<List<Change>> proposed(Open from, List<Open> open) {
    List<List<Change>> found = new ArrayList<>();
    for (List<Change> proposal : from.refused().proposals()) {
      List<Change> all = Dial.onTop(from.written(), proposal);
      Solution solution = trials.of(all);
      if (solution instanceof Solution.Solved) {
        Dial.Turned less = from.far() == null ? null : from.far().turned(trials, proposal);
        found.add(less == null ? all : less.changes());
      } else if (solution instanceof Solution.Refused no) {
        open.add(new Open(all, no, from.far()));
      }
    }
    return found;
  }

  /** Values turned as far as they go where then something else is in the way that has a way out. */
  private List<Open> far(List<Dial> first) {
    List<Open> open = new ArrayList<>();
    for (Dial dial : first) {
      List<Change> far =
          dial.way() == 0 || dial.limit() < 1
              ? null
              : dial.writes().apply(dial.base() + dial.way() * dial.limit());
      if (far != null
          && trials.of(far) instanceof Solution.Refused no
          && !no.proposals().isEmpty()
          && !no.proposals().equals(refused.proposals())) {
        open.add(new Open(far, no, dial));
      }
    }
    return open;
  }

  private List<Dial.Turned> turned(List<Dial> some, List<Change> also) {
    List<Dial.Turned> found = new ArrayList<>();
    for (Dial dial : some) {
      boolean written = also.stream().anyMatch(c -> c.path().equals(dial.path()));
      Dial.Turned turned = written ? null : dial.turned(trials, also);
      if (turned != null) {
        found.add(turned);
      }
    }
    // A stone that is cut already is named before all else.
    found.sort(
        Comparator.comparing((Dial.Turned t) -> !t.dial().path().startsWith("fitted."))
            .thenComparingDouble(Dial.Turned::size));
    return found;
  }

  /** What helps by itself, with what the head that then comes out tells of this one. */
  private List<List<Change>> alone(List<Dial> first) {
    List<Dial.Turned> found = turned(first, List.of());
    for (Dial.Turned t : found) {
      String tells = t.tells();
      if (!tells.isEmpty()) {
        notes.add(Diagnostic.note(job.spans().of(t.dial().path()), opening.mark() + ": " + tells));
      }
    }
    return found.stream().map(Dial.Turned::changes).toList();
  }

  private record Pair(List<Change> changes, double size) {}

  /**
   * Two values where no single one helps: one gives way far, the other is turned as little as then
   * helps, and then the first as little as helps with that.
   */
  private List<List<Change>> pairs() {
    // What has an easier way needs but one trial; the others come after.
    List<Dial> first = new ArrayList<>(dials);
    first.sort(Comparator.comparingInt(d -> d.way() == 0 ? 1 : 0));
    List<Pair> found = new ArrayList<>();
    TreeSet<String> seen = new TreeSet<>();
    for (Dial a : first) {
      for (long value : a.wide()) {
        List<Change> wide = a.writes().apply(value);
        for (Dial b : wide == null ? List.<Dial>of() : first) {
          String both =
              a.path().compareTo(b.path()) < 0 ? a.path() + b.path() : b.path() + a.path();
          if (a.path().equals(b.path()) || seen.contains(both) || found.size() >= ENOUGH) {
            continue;
          }
          Pair pair = pair(a, b, wide);
          if (pair != null) {
            seen.add(both);
            found.add(pair);
          }
        }
      }
    }
    found.sort(Comparator.comparingDouble(Pair::size));
    return found.stream().map(Pair::changes).limit(OFFERED - 1).toList();
  }

  private Pair pair(Dial a, Dial b, List<Change> wide) {
    Dial.Turned second = trials.tired() ? null : b.turned(trials, wide);
    if (second == null) {
      return null;
    }
    Dial.Turned less = a.turned(trials, b.writes().apply(second.value()));
    return less == null ? null : new Pair(less.changes(), less.size() + second.size());
  }

  private List<Diagnostic> said(List<Cure> cures) {
    List<Diagnostic> all = new ArrayList<>(refused.problems());
    Diagnostic first = all.remove(0);
    List<String> hints = new ArrayList<>();
    if (cures.stream().noneMatch(c -> c.changes().size() == 1)) {
      hints.add("no single value makes it possible by itself; more than one has to give way");
    }
    cures.forEach(c -> hints.add(c.words()));
    if (cures.isEmpty() && trials.tired()) {
      hints.add("trying values was cut short, because so many widths are allowed");
    }
    hints.addAll(first.hints());
    all.add(0, new Diagnostic(first.severity(), first.span(), first.message(), hints));
    all.addAll(notes);
    return all;
  }

  private String words(List<Change> changes) {
    if (changes.size() == 1) {
      Change c = changes.get(0);
      return words(c) + " (" + c.reason() + ")";
    }
    return "together: " + String.join(", and ", changes.stream().map(this::words).toList());
  }

  /** The path without the opening, which the message names. */
  private String words(Change c) {
    String path = c.path();
    for (Opening o : job.openings()) {
      if (path.startsWith(o.path() + ".")) {
        String own = path.substring(o.path().length() + 1);
        path = o == opening ? own : o.mark() + "'s " + own;
      }
    }
    return c.leavesOut() ? "without " + path : path + ": " + c.value();
  }
}
