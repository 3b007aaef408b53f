package headcourse.bench;

import headcourse.geom.Tolerance;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Works a head up from its layout: what the bench cuts and the wall sets. */
public final class HeadBench {
  private static final double MM3_PER_M3 = 1e9;
  private static final double MM2_PER_M2 = 1e6;

  private final Job job;
  private final HeadLayout head;
  private final SettingOrder order;
  private final NotchPlanner notches;
  private final List<StoneFrame> frames;

  private HeadBench(Job job, HeadLayout head) {
    this.job = job;
    this.head = head;
    this.order = SettingOrder.of(head);
    this.notches = new NotchPlanner(job, order);
    this.frames = head.stones().stream().map(StoneFrame::of).toList();
  }

  /**
   * Derives everything for the stones of a head, of whatever shape. What the job's tools and screws
   * can't do is not refused here: passes say whether they are possible, slots what they leave.
   *
   * @param job the job
   * @param layout a head of that job, set out
   */
  public static HeadWork workUp(Job job, HeadLayout layout) {
    return workUp(job, layout, 0);
  }

  /** The same for all heads of a job, each built in numbers too; ticket numbers run on. */
  public static List<HeadWork> workUp(Job job, List<HeadLayout> layouts) {
    List<HeadWork> heads = new ArrayList<>();
    int tickets = 0;
    for (HeadLayout layout : layouts) {
      HeadWork head = workUp(job, layout, tickets);
      tickets = head.pieces().stream().mapToInt(Piece::alike).max().orElse(tickets);
      heads.add(head.lands(Landings.of(job, layout)));
    }
    return heads;
  }

  /** No more of a head than a cutting plan asks for: its pieces, without slots. */
  public static HeadWork forBlanks(Job job, HeadLayout layout) {
    return new HeadWork(layout, new HeadBench(job, layout).pieces(false), List.of());
  }

  private List<Piece> pieces(boolean slotted) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < frames.size(); i++) {
      pieces.add(piece(i, slotted));
    }
    return pieces;
  }

  private static HeadWork workUp(Job job, HeadLayout layout, int ticketsBefore) {
    List<Piece> drafts = new HeadBench(job, layout).pieces(true);
    List<Integer> alike = AlikeGroups.number(drafts);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      pieces.add(drafts.get(i).alike(ticketsBefore + alike.get(i)));
    }
    return new HeadWork(
        layout,
        pieces,
        List.of(
            StackUpFinder.find(job, layout, Side.LEFT),
            StackUpFinder.find(job, layout, Side.RIGHT)),
        SoffitBedFinder.find(job, layout, pieces),
        null,
        null);
  }

  private Piece piece(int i, boolean slotted) {
    StoneFrame frame = frames.get(i);
    PlacedStone stone = frame.stone();
    Length thickness = job.stone().thickness();
    Soffit soffit = head.opening().head().soffit();
    ReturnLeg leg = ReturnLeg.of(job, head, frame);
    Solid solid = Solid.of(frame, thickness.mm(), leg);
    Contact left = contact(i, Where.LEFT);
    Contact right = contact(i, Where.RIGHT);
    double volume = solid.volume() / MM3_PER_M3;
    return new Piece(
        head.opening().mark() + "-" + stone.mark(),
        stone,
        order.of(stone),
        0,
        Measures.of(frame),
        RakeFinder.rake(frame, Where.LEFT, job.grid()),
        RakeFinder.rake(frame, Where.RIGHT, job.grid()),
        thickness,
        leg,
        new Mass(
            solid.area() / MM2_PER_M2,
            volume,
            volume * job.stone().density(),
            volume * job.stone().liftingDensity(),
            solid.centre(),
            solid.depth()),
        ExposedEdges.find(frame, left, right, thickness, leg, soffit),
        SawPlanner.plan(frame, job.tools().saw(), thickness, leg, soffit),
        slotted ? notches.plan(frame, left, right, solid) : List.of(),
        SoffitPieces.find(job, head, frame, leg, notches.openJoints()));
  }

  /** Stones run from left to right, so a neighbour is the one before or after. */
  private Contact contact(int i, Where side) {
    int j = side == Where.LEFT ? i - 1 : i + 1;
    boolean wall = j < 0 || j >= frames.size();
    double least = Math.max(job.grid().tick().mm() / 2, Tolerance.SAME);
    return Contact.of(frames.get(i), side, wall ? null : frames.get(j), least);
  }
}
