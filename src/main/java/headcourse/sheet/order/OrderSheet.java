package headcourse.sheet.order;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.job.Bundle;
import headcourse.job.Contract;
import headcourse.job.Job;
import headcourse.job.JobInfo;
import headcourse.job.Stock;
import headcourse.sheet.Amounts;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.stock.StockPlan.OrderLine;
import headcourse.units.Decimals;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** What is to be bought, for the supplier: one page to send. */
public final class OrderSheet implements SheetComposer {
  private static final Lettering CELL = Lettering.NOTE;

  /** Where cautions beside the drawing begin, of the width. */
  private static final double ASIDE = 0.58;

  /** How it is set, from the most generous on. */
  private enum Setting {
    FULL(new Lettering(3.5, false), BlankDrawing.Size.FULL, false),
    SMALL(Lettering.NOTE, BlankDrawing.Size.FULL, false),
    SMALLEST(Lettering.NOTE, BlankDrawing.Size.SMALL, false),
    /** Cautions beside the drawing, in many words or two languages. */
    BESIDE(Lettering.NOTE, BlankDrawing.Size.SMALL, true);

    private final Lettering text;
    private final BlankDrawing.Size drawing;
    private final boolean beside;

    Setting(Lettering text, BlankDrawing.Size drawing, boolean beside) {
      this.text = text;
      this.drawing = drawing;
      this.beside = beside;
    }
  }

  private final Lettering text;
  private final BlankDrawing.Size size;
  private final boolean beside;

  /** The order. */
  public OrderSheet() {
    this(Setting.FULL);
  }

  private OrderSheet(Setting setting) {
    this.text = setting.text;
    this.size = setting.drawing;
    this.beside = setting.beside;
  }

  @Override
  public Bundle bundle() {
    return Bundle.ORDER;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    // One page to send, if need be in smaller lettering and with smaller drawings.
    List<PageDraft> pages = List.of();
    for (Setting setting : Setting.values()) {
      if (pages.size() != 1) {
        pages = new OrderSheet(setting).pages(c);
      }
    }
    return pages;
  }

  private List<PageDraft> pages(SheetContext c) {
    String title = c.say("order.title");
    return SheetFlow.pages(
        c,
        Turn.PORTRAIT,
        c.label("order.label"),
        title,
        "",
        1,
        flow -> {
          flow.page().bookmark(1, title, "order", flow.page().area().minY());
          particulars(flow, c);
          List<OrderLine> lines = c.work().stock().order();
          if (lines.isEmpty()) {
            flow.heading(c.say("order.nothing"), 20);
            flow.say(
                c.job().stock().items().isEmpty() ? "order.nothing-said" : "order.nothing-text",
                text);
            flow.say("order.caution", text);
            return;
          }
          sizes(flow, c, lines);
          boolean said = drawing(flow, c, lines);
          notes(flow, c, lines);
          if (!said) {
            flow.say("order.caution", text);
          }
        });
  }

  private void particulars(SheetFlow flow, SheetContext c) {
    JobInfo info = c.job().info();
    Contract contract = info.contract();
    List<List<String>> rows = new ArrayList<>();
    add(rows, c, "job", join(" · ", info.number(), info.title()));
    add(rows, c, "from", join(", ", info.mason(), contract.masonAddress()));
    add(rows, c, "deliver", contract.delivery().isBlank() ? info.site() : contract.delivery());
    add(rows, c, "date", info.date());
    c.work().stock().order().stream()
        .map(OrderLine::orderBy)
        .filter(d -> !d.isEmpty())
        .min(String::compareTo)
        .ifPresent(d -> add(rows, c, "order-by", d));
    add(rows, c, "needed", info.settingDate());
    Job job = c.job();
    String name = join(", ", job.stone().name(), job.stone().kind());
    String thick = c.format().withUnit(job.stone().thickness());
    add(rows, c, "stone", c.say("order.stone-thick", name, thick));
    flow.table(
        List.of(new Column("", 40, Align.START, true), new Column("", 150, Align.START, false)),
        rows,
        text);
  }

  private static void add(List<List<String>> rows, SheetContext c, String key, String said) {
    if (!said.isBlank()) {
      rows.add(List.of(c.say("order." + key), said));
    }
  }

  private static String join(String between, String a, String b) {
    return a.isBlank() ? b : b.isBlank() ? a : a + between + b;
  }

  private void sizes(SheetFlow flow, SheetContext c, List<OrderLine> lines) {
    Amounts a = new Amounts(c.job().units());
    List<List<String>> rows = new ArrayList<>();
    List<Double> kilos = new ArrayList<>();
    for (OrderLine o : lines) {
      double kg = kg(c.job(), o);
      kilos.add(kg);
      rows.add(
          List.of(
              o.stock().isEmpty() ? c.say("order.made") : o.stock(),
              c.say(corner(o) ? "plan.corner" : "plan.flat"),
              Integer.toString(o.count()),
              Integer.toString(o.spares()),
              size(c, o.length()),
              size(c, o.face()),
              size(c, o.returnLeg()),
              size(c, o.thickness()),
              a.run(o.running().mm() / 1000),
              a.massInTenths(kg)));
    }
    List<Integer> once = lines.stream().map(o -> 1).toList();
    rows.add(
        List.of(
            c.say("order.sum"),
            "",
            Integer.toString(lines.stream().mapToInt(OrderLine::count).sum()),
            Integer.toString(lines.stream().mapToInt(OrderLine::spares).sum()),
            "",
            "",
            "",
            "",
            a.run(lines.stream().mapToDouble(o -> o.running().mm() / 1000).sum()),
            a.massTogether(kilos, once)));
    flow.table(
        c.say("order.sizes"),
        List.of(
            new Column(c.say("order.mark"), 20, Align.START, true),
            new Column(c.say("order.kind"), 16, Align.START, false),
            new Column(c.say("order.count"), 16, Align.END, true),
            new Column(c.say("order.spares"), 16, Align.END, false),
            new Column(c.say("order.a"), 20, Align.END, true),
            new Column(c.say("order.f"), 20, Align.END, true),
            new Column(c.say("order.r"), 20, Align.END, true),
            new Column(c.say("order.t"), 18, Align.END, false),
            new Column(c.say("order.run"), 22, Align.END, false),
            new Column(c.say("order.weight"), 22, Align.END, false)),
        rows,
        CELL);
    prices(flow, c, lines);
  }

  private static boolean corner(OrderLine o) {
    return o.what() == Stock.Kind.CORNER;
  }

  private static String size(SheetContext c, Length length) {
    return length.isPositive() ? c.format().withUnit(length) : "–";
  }

  /** Two legs less the corner that they share, times the arris. */
  private static double kg(Job job, OrderLine o) {
    double legs = o.face().mm();
    if (corner(o)) {
      legs += o.returnLeg().mm() - o.thickness().mm();
    }
    return legs * o.thickness().mm() * o.running().mm() * 1e-9 * job.stone().density();
  }

  private void prices(SheetFlow flow, SheetContext c, List<OrderLine> lines) {
    for (OrderLine o : lines) {
      if (o.price() > 0) {
        String price = Decimals.fixed(o.price(), 2);
        flow.paragraph(c.say("plan.order-price", o.stock(), o.count(), price), text);
      }
      if (o.lead() != null) {
        flow.paragraph(c.say("plan.lead", o.stock(), o.lead()), text);
      }
    }
  }

  // Whether the cautions stand beside the drawing.
  private boolean drawing(SheetFlow flow, SheetContext c, List<OrderLine> lines) {
    List<List<OrderLine>> kinds = new ArrayList<>();
    for (Stock.Kind kind : Stock.Kind.values()) {
      List<OrderLine> of = lines.stream().filter(o -> o.what() == kind).toList();
      if (!of.isEmpty()) {
        kinds.add(of);
      }
    }
    // Small ones stand in a row, where there is room for letters only.
    int row = size == BlankDrawing.Size.SMALL ? kinds.size() : 1;
    boolean room = beside && kinds.size() == 1;
    String caution = String.join("\n", c.words().each("order.caution"));
    double aside = flow.width() * ASIDE;
    double wide = flow.width() - aside;
    double told = room ? TextFlow.height(caution, wide, text) : 0;
    for (int i = 0; i < kinds.size(); i += row) {
      List<List<OrderLine>> of = kinds.subList(i, i + row);
      String names = String.join(" · ", of.stream().map(k -> name(c, k.get(0))).toList());
      List<BlankDrawing> drawn = of.stream().map(k -> drawn(c, k, row > 1)).toList();
      double height = drawn.stream().mapToDouble(BlankDrawing::height).max().orElse(0);
      height = Math.max(height, told);
      flow.heading(names, height);
      flow.figure(
          height,
          (b, x, y) -> {
            for (int k = 0; k < drawn.size(); k++) {
              BlankDrawing d = drawn.get(k);
              double left = x + k * flow.width() / row;
              b.group(Role.FIGURE, "", name(c, of.get(k).get(0)), g -> d.draw(g, left, y));
            }
            if (room) {
              b.group(
                  Role.NOTES,
                  "",
                  "",
                  g -> TextFlow.paragraph(g, x + aside, y, wide, caution, text));
            }
          });
    }
    return room;
  }

  private static String name(SheetContext c, OrderLine o) {
    return c.say(corner(o) ? "order.corner" : "order.flat");
  }

  private BlankDrawing drawn(SheetContext c, List<OrderLine> alike, boolean beside) {
    BlankDrawing.Said said = BlankDrawing.Said.NAME;
    if (size == BlankDrawing.Size.SMALL) {
      boolean listed = alike.size() == 1 && !beside;
      said = listed ? BlankDrawing.Said.LIST : BlankDrawing.Said.LETTER;
    } else if (alike.size() == 1) {
      said = BlankDrawing.Said.SIZE;
    }
    return new BlankDrawing(c, alike.get(0), size, said);
  }

  private void notes(SheetFlow flow, SheetContext c, List<OrderLine> lines) {
    flow.heading(c.say("order.notes"), 20);
    flow.say("order.trim", text);
    for (OrderLine o : lines) {
      trim(flow, c, o);
    }
    flow.say("order.batch", text);
    flow.say("order.spare-text", text);
  }

  // What a line has over finished stone.
  private void trim(SheetFlow flow, SheetContext c, OrderLine o) {
    Length trim =
        c.job().stock().items().stream()
            .filter(i -> i.toOrder() && i.mark().equals(o.stock()))
            .map(Stock.Item::trim)
            .findFirst()
            .orElse(c.job().stock().trim());
    String which = o.stock().isEmpty() ? c.say("order.made") : o.stock();
    if (!o.stock().isEmpty() || o == c.work().stock().order().get(0)) {
      flow.say(
          trim.isZero() ? "order.trim-none" : "order.trim-some",
          text,
          which,
          c.format().withUnit(trim));
    }
  }
}
