package headcourse.cli;

/** What {@code --help} says, in the mason's words. */
final class Help {
  private Help() {}

  static String of(String command) {
    return switch (command) {
      case "draw" ->
          """
          headcourse draw JOB.yaml [more jobs] [--out FOLDER] [--only KIND] [--paper SIZE]

          Sets out every head of the job and writes its sheets to out/JOB/:
            bench.pdf       cutting plan, a ticket for every stone, layout board
            wall.pdf        a large elevation of each opening, and the setting sheet
            contractor.pdf  openings in their wall, schedule, elevations, sections,
                            questions, materials, findings, notes
            full-size.pdf   outlines and layout-board strip to trace, at 1:1
            order.pdf       what to buy: one page to send
            elevation-*.svg, cut-list.csv, order-list.csv, layout.json
            index.html      all of it as pictures, for a telephone
          All of them appear together or, if the job can't be done, none.

            --out FOLDER    write to FOLDER/JOB/ instead of out/JOB/
            --only KIND     bench, wall, contractor, full-size, order, svg, csv, json,
                            or png, the elevations as pictures to send by telephone;
                            several with commas: --only bench,wall
            --opening D1    only what one opening has of its own: its pages of bench, wall
                            and full-size as in the whole set (bench-D1.pdf ...), and its
                            elevation
            --open          show what was drawn
            --paper SIZE    letter, legal, tabloid, a4, a3, a2, a1, arch-c, arch-d ...
                            for every bundle, instead of what the job says

          The last line says what was written and what to open first. Where the job is
          refused and older sheets lie in the folder, it says how old they are.

          Ends with 0 when drawn; 1 when drawn but an error among the findings stands;
          2 when the job is wrong or can't be done; 3 when the machine failed.""";
      case "watch" ->
          """
          headcourse watch JOB.yaml [more jobs] [options of draw]

          Draws, and draws again whenever the job, or a file that it names, is saved.
          Where the job then has an error, the last good sheets stay, and it says so.
          Ctrl-C ends it.""";
      case "page" ->
          """
          headcourse page JOB.yaml [--open] [--lang TAG] [--out FOLDER] [--paper SIZE]

          Serves a page to fill the job in with a browser, and prints its address: the
          measuring sheet's fields in its order, the head drawn beside them while you
          type, what the rules say beside the value it is about, cures to touch, what
          there is to choose from, every sheet as a picture, and all of it drawn to
          out/JOB/ as draw does.

          What you type is written into JOB.yaml itself: its comments and its order stay,
          and what is saved there from elsewhere shows on the page. A job that is not
          there yet is begun as new does. Of other files only those in the job's folder
          and in the working folder are read.

            --open          show it in the browser
            --lang TAG      the page in another language than the job's: en, es

          Only this machine can open the page, and only by the whole address: it bears a
          token. Needs no network. Ctrl-C ends it.""";
      case "check" ->
          """
          headcourse check JOB.yaml [more jobs]

          Reads the job, sets out the heads and lists what the rules have to say.
          Draws nothing. Ends like draw.""";
      case "choose" ->
          """
          headcourse choose JOB.yaml [D1] [--out FOLDER] [--paper SIZE]

          Shows every head that keeps what the job asks, for one opening or for each:
          a table here, and in out/JOB/
            choose.pdf      at most twelve pictures to one scale, to tick and to sign;
                            the others overleaf
            choose.svg      the pictures, for a screen
          What may vary besides number and width of the stones stands under vary: in the
          job. To fix a choice, write choose: B and the line printed for it.

          Ends with 0; 1 when an error stands against every head there is; 2 when there
          is nothing to choose from; 3 when the machine failed.""";
      case "form" ->
          """
          headcourse form [FILE.pdf] [--paper SIZE] [--open]

          Writes a blank measuring sheet, one page for one opening, in English and
          Spanish: where to measure, and boxes named as the keys of the job file, in
          its order. Without a name it is measuring-sheet.pdf; a file that is there
          already is never overwritten.""";
      case "schema" ->
          """
          headcourse schema

          Prints the JSON Schema of the job file: every key and word that the program
          reads. headcourse new writes it beside the job, for editors.""";
      case "explain" ->
          """
          headcourse explain JOB.yaml [D1]

          Why a head has this number of stones, and not one or two more or fewer: each
          with its widths, how far the ends bear, in how many of 10,000 builds it lands,
          the blanks it takes by itself, the rules that speak against it, and the line
          that fixes it in the job; and why it was not taken.""";
      case "new" ->
          """
          headcourse new JOB.yaml

          Writes a job file with every line explained, to be changed into yours, and beside
          it headcourse.schema.json, with which editors complete and check it.
          A file that is there already is never overwritten.""";
      case "rules" ->
          """
          headcourse rules

          Lists every rule that the program checks, how grave it is, and its source.""";
      default ->
          """
          headcourse: shop drawings for stone heads over openings, from one job file

          headcourse form              write the blank sheet to measure with
          headcourse new JOB.yaml      write a job file to start from
          headcourse check JOB.yaml    can it be set out, and what do the rules say?
          headcourse choose JOB.yaml   what heads are there to choose from?
          headcourse explain JOB.yaml  why this number of stones, and not one more?
          headcourse draw JOB.yaml     draw the sheets for bench, wall and contractor
          headcourse watch JOB.yaml    draw again whenever the job is saved
          headcourse page JOB.yaml     fill it in on a page, with the head drawn beside it
          headcourse rules             the rules and where they come from
          headcourse schema            the job file's JSON Schema, for editors

          headcourse draw --help       more about a command
          headcourse --version

          The veneer carries nothing. Nothing here is structural design; local codes and
          the engineer's drawings govern.""";
    };
  }
}
