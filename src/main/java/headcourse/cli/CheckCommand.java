package headcourse.cli;

import headcourse.bench.HeadWork;
import headcourse.bench.Lands;
import headcourse.choose.Choices;
import headcourse.choose.Why;
import headcourse.diag.Outcome;
import headcourse.job.Care;
import headcourse.job.Choosing;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Proof;
import headcourse.layout.Side;
import headcourse.rules.Finding;
import headcourse.rules.RuleBook;
import headcourse.units.Decimals;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads, solves and reports findings without drawing. */
record CheckCommand(Path folder, Console console) {
  int run(Arguments arguments) {
    if (arguments.files().isEmpty()) {
      console.complain("which job? headcourse check JOB.yaml");
      return Main.WRONG;
    }
    int worst = Main.DONE;
    for (String name : arguments.files()) {
      worst = Math.max(worst, one(name));
    }
    return worst;
  }

  private int one(String name) {
    JobFile file = new JobFile(folder, name);
    Outcome<Job> read = file.readChosen();
    read.diagnostics().forEach(console::tell);
    if (read.value().isEmpty()) {
      return Main.WRONG;
    }
    Outcome<ShopWork> done = WorkUp.of(read.value().get(), file::beside);
    done.diagnostics().forEach(console::tell);
    if (done.value().isEmpty()) {
      return Main.WRONG;
    }
    ShopWork work = done.value().get();
    for (HeadWork h : work.heads()) {
      console.say(summary(work, h));
      console.say(lands(h));
      ChangeLines.of(work.job(), h).forEach(console::say);
    }
    whys(work).forEach(console::say);
    work.heads().stream()
        .flatMap(h -> h.layout().remarks().stream())
        .filter(r -> r.key().equals("from-stock"))
        .map(r -> r.message())
        .distinct()
        .forEach(console::say);
    RuleBook.summary(work.job(), work.findings()).forEach(f -> console.say(line(f)));
    return work.errorsStand() ? Main.FINDINGS : Main.DONE;
  }

  /** Why heads that were chosen are not the ones that come first. */
  private static List<String> whys(ShopWork work) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < work.heads().size(); i++) {
      Choosing choosing = work.job().openings().get(i).choosing();
      if (choosing.chosen()) {
        HeadLayout drawn = work.heads().get(i).layout();
        Choices.checked(work.job(), i)
            .value()
            .ifPresent(c -> lines.addAll(Why.lines(c, choosing.letter(), drawn)));
      }
    }
    return lines;
  }

  /** One line for a head. */
  static String summary(ShopWork work, HeadWork head) {
    HeadLayout layout = head.layout();
    LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
    return layout.opening().mark()
        + ": "
        + layout.opening().head().shape()
        + ", "
        + layout.stones().size()
        + " stones, bears "
        + f.plainWithUnit(layout.bearing(Side.LEFT).onWall(f.grid()))
        + " left and "
        + f.plainWithUnit(layout.bearing(Side.RIGHT).onWall(f.grid()))
        + " right"
        + onTop(layout, f)
        + ", "
        + proof(layout, f);
  }

  /** What the proof proves. */
  private static String proof(HeadLayout layout, LengthFormat f) {
    Proof proof = layout.proof();
    if (layout.opening().head().stones().widths() != null) {
      return proof.shortfall().isZero()
          ? "widths as given; lands whatever the tolerances bring"
          : "widths as given; at the worst "
              + Limit.LEAST.plainWithUnit(f, proof.shortfall())
              + " short of landing";
    }
    if (proof.shortfall() == null) {
      return proof.status() == Proof.Status.OPTIMAL ? "proved best" : "best found";
    }
    if (proof.shortfall().isZero()) {
      return "lands whatever the tolerances bring; proved the best of those that do";
    }
    return "at the worst "
        + Limit.LEAST.plainWithUnit(f, proof.shortfall())
        + " short of landing; proved the best there is";
  }

  private static String onTop(HeadLayout layout, LengthFormat f) {
    return layout.fanned()
        ? " on the soffit line, "
            + f.plainWithUnit(layout.bearing(Side.LEFT).onTop(f.grid()))
            + " and "
            + f.plainWithUnit(layout.bearing(Side.RIGHT).onTop(f.grid()))
            + " on the top line"
        : "";
  }

  /** How often a head lands. */
  static String lands(HeadWork head) {
    Lands lands = head.lands();
    return head.layout().opening().mark()
        + ": lands in "
        + Decimals.grouped(lands.landedChecked())
        + " of "
        + Decimals.grouped(lands.builds())
        + " builds with the check, "
        + Decimals.grouped(lands.landedUnchecked())
        + " without ("
        + (lands.care().equals(Care.OWN) ? "the job's own" : lands.care())
        + " care, assumed)";
  }

  /** One line for a finding. */
  static String line(Finding f) {
    return f.severity().word()
        + " ["
        + f.rule()
        + "] "
        + f.message()
        + " ("
        + f.source()
        + (f.status() == Finding.SourceStatus.PRACTICE ? "" : "; " + f.status().words())
        + ")"
        + (f.accepted() == null ? "" : " -- accepted: " + f.accepted());
  }
}
