package headcourse.testing;

import headcourse.job.*;
import headcourse.render.pdf.*;
import headcourse.sheet.book.*;
import headcourse.sheet.frame.Frame;
import headcourse.units.*;
import headcourse.work.*;
import java.io.*;
import java.nio.file.*;

public class Look {
  public static void main(String[] a) throws Exception {
    JobMaker m = JobMaker.one();
    m.paper = a.length > 0 ? a[0] : "letter";
    var o = m.first();
    o.width = Length.inches(192);
    o.key =
        new HeadSpec.Key(
            Length.inches(8),
            Length.inches(11),
            Length.inches(2),
            Length.inches(1),
            Length.inches(.5));
    o.max = Length.inches(8.5);
    o.target = Length.inches(7);
    o.clear = Length.inches(2);
    m.stock =
        new Stock(
            java.util.List.of(
                new Stock.Item(
                    "stock.corners[0]",
                    "C1",
                    Stock.Kind.CORNER,
                    Length.inches(24),
                    Length.inches(16),
                    Length.inches(5),
                    Length.inches(1.25),
                    16,
                    false,
                    0)),
            0.1);
    var w = WorkUp.of(m.make());
    w.diagnostics().forEach(System.out::println);
    for (Bundle b : Bundle.values()) {
      try {
        var set = SheetBook.compose(w.value().get(), b, Frame.plain());
        if (set.pages().isEmpty()) continue;
        for (var p : set.pages()) PageInspector.faults(p).forEach(System.out::println);
        try (var out = new FileOutputStream("/tmp/look/" + b.word() + ".pdf")) {
          PdfRenderer.render(set, "seed", out);
        }
        System.out.println(b + " " + set.pages().size());
      } catch (Exception e) {
        e.printStackTrace(System.out);
      }
    }
    w.value()
        .get()
        .findings()
        .forEach(f -> System.out.println(f.severity() + " " + f.stone() + " " + f.message()));
  }
}
