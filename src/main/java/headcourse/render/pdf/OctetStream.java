package headcourse.render.pdf;

import org.apache.pdfbox.cos.COSDictionary;

/**
 * A stream object: a dictionary, and octets at hand. The library's own keeps them in pages, which
 * takes a dozen classes to get going.
 */
final class OctetStream extends COSDictionary {
  private final byte[] octets;

  OctetStream(byte[] octets) {
    this.octets = octets;
  }

  /** What it holds, packed where its filter says so. */
  byte[] octets() {
    return octets;
  }
}
