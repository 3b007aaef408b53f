package headcourse.sheet.elevation;

/**
 * A running mark: how far a joint stands from the centre line.
 *
 * @param x distance right of the centre line, mm; negative on the left
 * @param y height of the joint's foot in model space, mm
 * @param text as printed
 * @param besideKey whether the key stands beside it
 * @param inner mark of the stone towards the centre, or empty
 * @param outer mark of the stone away from it, or empty
 */
record RunMark(double x, double y, String text, boolean besideKey, String inner, String outer) {}
