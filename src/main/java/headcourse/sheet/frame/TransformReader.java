package headcourse.sheet.frame;

import org.apache.batik.parser.DefaultTransformListHandler;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.TransformListParser;

/** Reads SVG's {@code transform}. */
final class TransformReader extends DefaultTransformListHandler {
  private Affine map = Affine.IDENTITY;

  /**
   * The map that a list of transforms stands for.
   *
   * @throws IllegalArgumentException if it is none
   */
  static Affine read(String list) {
    TransformReader handler = new TransformReader();
    TransformListParser parser = new TransformListParser();
    parser.setTransformListHandler(handler);
    try {
      parser.parse(list);
    } catch (ParseException e) {
      throw new IllegalArgumentException("not a transform", e);
    }
    return handler.map;
  }

  private void then(double a, double b, double c, double d, double e, double f) {
    map = map.after(new Affine(a, b, c, d, e, f));
  }

  @Override
  public void matrix(float a, float b, float c, float d, float e, float f) {
    then(a, b, c, d, e, f);
  }

  @Override
  public void rotate(float theta) {
    // The parser hands degrees on.
    double t = Math.toRadians(theta);
    then(Math.cos(t), Math.sin(t), -Math.sin(t), Math.cos(t), 0, 0);
  }

  @Override
  public void rotate(float theta, float cx, float cy) {
    translate(cx, cy);
    rotate(theta);
    translate(-cx, -cy);
  }

  @Override
  public void translate(float tx) {
    translate(tx, 0);
  }

  @Override
  public void translate(float tx, float ty) {
    then(1, 0, 0, 1, tx, ty);
  }

  @Override
  public void scale(float s) {
    scale(s, s);
  }

  @Override
  public void scale(float sx, float sy) {
    then(sx, 0, 0, sy, 0, 0);
  }

  @Override
  public void skewX(float theta) {
    then(1, 0, Math.tan(Math.toRadians(theta)), 1, 0, 0);
  }

  @Override
  public void skewY(float theta) {
    then(1, Math.tan(Math.toRadians(theta)), 0, 1, 0, 0);
  }
}
