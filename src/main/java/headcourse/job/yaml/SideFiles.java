package headcourse.job.yaml;

import java.util.Optional;

/** The files that a job file names. */
@FunctionalInterface
public interface SideFiles {
  /** The content of a file beside the job file, or empty where there is none. */
  Optional<byte[]> bytes(String relativePath);
}
