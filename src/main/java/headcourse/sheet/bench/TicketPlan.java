package headcourse.sheet.bench;

import headcourse.drawing.Board;
import headcourse.geom.Box;
import headcourse.sheet.SheetContext;

/** How a ticket's panels stand to one another. */
interface TicketPlan {
  /** Ways to place them. */
  enum Way {
    /** Figures side by side; wide and low. */
    ABREAST {
      @Override
      TicketPlan of(SheetContext c, Ticket t, TicketType type, double width, boolean apart) {
        return new TicketPanels(c, t, type, width, apart);
      }
    },
    /** Figures under one another, where a frame leaves a narrow page. */
    STACKED {
      @Override
      TicketPlan of(SheetContext c, Ticket t, TicketType type, double width, boolean apart) {
        return new TicketStack(c, t, type, width, apart);
      }
    };

    /**
     * A ticket of a width, mm.
     *
     * @param apart whether its soffit piece is drawn on another page
     */
    abstract TicketPlan of(
        SheetContext c, Ticket ticket, TicketType type, double width, boolean apart);
  }

  /** Whether every figure has the width that it needs. */
  boolean fits();

  /** The least height, mm. */
  double height();

  /** The scale that the face is drawn to where the ticket is so high, mm, its size over true. */
  double scale(double height);

  void draw(Board board, Box box);
}
