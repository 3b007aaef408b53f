package headcourse.cli;

import java.io.IOException;
import java.nio.channels.WritableByteChannel;

/** What goes into a file, wherever it is kept until then. */
interface Content {
  /** Writes all of it. */
  void to(WritableByteChannel out) throws IOException;
}
