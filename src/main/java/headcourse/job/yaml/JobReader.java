package headcourse.job.yaml;

import headcourse.diag.Outcome;
import headcourse.job.Checks;
import headcourse.job.CutStone;
import headcourse.job.Fastener;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.JobInfo;
import headcourse.job.Language;
import headcourse.job.Limits;
import headcourse.job.Opening;
import headcourse.job.Papers;
import headcourse.job.Printing;
import headcourse.job.Props;
import headcourse.job.Report;
import headcourse.job.Setting;
import headcourse.job.ShapeDef;
import headcourse.job.Spans;
import headcourse.job.Stock;
import headcourse.job.Stone;
import headcourse.job.Tools;
import headcourse.job.Wall;
import headcourse.text.Languages;
import headcourse.units.Grid;
import headcourse.units.Units;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.MappingNode;

/** Reads a job file: a job with every default filled in, or everything that is wrong with it. */
public final class JobReader {
  /** Steps of an exact search where the job does not say. */
  private static final long STEPS = 2_000_000;

  private JobReader() {}

  /**
   * Reads a job.
   *
   * @param fileName the file's name as the user gave it
   * @param bytes its content, UTF-8, at most 2 MiB
   * @param shapes the shapes a head can have
   * @param limits the thresholds a job can set
   * @param files the files that the job names
   * @return the job, or its errors in the order of the file; never an exception
   */
  public static Outcome<Job> read(
      String fileName,
      byte[] bytes,
      List<ShapeDef> shapes,
      List<ShapeDef.ParamDef> limits,
      SideFiles files) {
    Problems problems = new Problems();
    Optional<JobText> text = JobText.decode(fileName, bytes, problems);
    if (text.isPresent()) {
      Optional<MappingNode> root = YamlGraph.of(text.get(), problems);
      if (root.isPresent()) {
        JobSource source = new JobSource(fileName, text.get(), shapes, limits, files);
        MappingNode all = Shop.under(source, root.get(), problems);
        return problems.any()
            ? Outcome.failed(problems.inOrder(fileName))
            : read(source, all, problems);
      }
    }
    return Outcome.failed(problems.inOrder(fileName));
  }

  /** Lets the readers ask for all that they know. */
  static void ask(JobSource source, Asked asked) {
    Reading in = new Reading(source.text(), new Problems(), source.files(), asked);
    job(source, new Section(in, "", null), null);
  }

  static Outcome<Job> read(JobSource source, MappingNode root, Problems problems) {
    Reading in = new Reading(source.text(), problems, source.files());
    in.tableMaker = () -> KeyTable.of(source.shapes(), source.limits());
    in.spans.put("", source.text().start());
    Job job = job(source, new Section(in, "", Chosen.over(root)), root);
    return problems.any()
        ? Outcome.failed(problems.inOrder(source.name()))
        : Outcome.of(job, problems.inOrder(source.name()));
  }

  private static Job job(JobSource source, Section root, MappingNode nodes) {
    Reading in = root.in;
    in.units = units(root);
    in.grid = new Grid(in.or(1 / 16.0, 1));
    in.grid = new Grid(root.length("grid", Range.of(1 / 512.0, 1), in.grid.tick()));
    // What stands there was laid under the job before.
    root.text("shop");
    Section titles = root.section("job");
    JobInfo info = JobInfoReader.read(titles);
    Printing printing = printing(root);
    Stone stone = StoneReader.read(root);
    Wall wall = WallReader.wall(root.section("wall"));
    Section set = root.section("setting");
    Section screws = root.section("fastener");
    Tools tools = ToolsReader.tools(root.section("tools"));
    Props props = PropsReader.read(root.section("props"));
    List<Opening> openings = OpeningReader.read(root, source.shapes());
    info = info.with(ContractReader.read(root, titles, set, screws, openings));
    titles.done();
    Setting setting = WallReader.setting(set);
    Fastener fastener = ToolsReader.fastener(screws, stone.thickness());
    Stock stock = StockReader.read(root, stone.thickness(), openings);
    List<Fitted> fitted = FittedReader.fitted(root.section("fitted"), openings, stock);
    ReportReader report = new ReportReader(openings, stock, fitted);
    List<String> spoiled = report.spoiled(root);
    List<CutStone> cut = report.cut(root, fitted);
    var accepted = FittedReader.accepted(root, openings);
    Limits limits = LimitsReader.read(root.section("limits"), source.limits());
    long steps = root.whole("steps", 1, 1_000_000_000L, STEPS);
    root.done();
    return new Job(
        folder(source.name()),
        info,
        in.units,
        in.grid,
        printing,
        stone,
        wall,
        setting,
        tools,
        fastener,
        props,
        openings,
        stock,
        new Report(fitted, cut, spoiled),
        new Checks(limits, accepted),
        steps,
        new Spans(in.spans, new Rereading(source, nodes)));
  }

  private static Printing printing(Section root) {
    Papers papers = PaperReader.read(root);
    Language language = new Language(root.word("language", Languages.choices(), "en"));
    String frame = root.text("frame");
    boolean pictures = root.flag("pictures", false);
    String outlines = root.word("full-size", List.of("shaped", "all"), "shaped");
    return new Printing(papers, language, frame, pictures, outlines.equals("all"));
  }

  private static Units units(Section root) {
    String word = root.word("units", List.of("in", "mm"), "in");
    // A wrong word is told once; what was meant by it spares the lengths a second complaint.
    String raw = root.scalar("units");
    boolean metric =
        root.in.sound("units")
            ? word.equals("mm")
            : raw != null && raw.matches("(?i)(m|cm|centi).*");
    return metric ? Units.MILLIMETRE : Units.INCH;
  }

  /**
   * What the folder of a job's sheets is called: the file's name without folder and extension;
   * other signs than plain ones become hyphens.
   */
  public static String folder(String fileName) {
    String s =
        fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
    int dot = s.lastIndexOf('.');
    s = (dot > 0 ? s.substring(0, dot) : s).replaceAll("[^\\p{L}\\p{N}._-]", "-");
    return s.replaceAll("[.-]*", "").isEmpty() ? "job" : s;
  }
}
