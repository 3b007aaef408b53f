package headcourse.jar;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A jar whose entries are stored as they are: larger, and read without inflating. */
final class StoredJar {
  /** The same sources give the same bytes. */
  private static final LocalDateTime MADE = LocalDateTime.of(2026, 1, 1, 0, 0);

  private StoredJar() {}

  /** Contents by name, in the jar's order; folders are left out. */
  static Map<String, byte[]> read(Path jar) throws IOException {
    Map<String, byte[]> out = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar))) {
      for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        if (!e.isDirectory()) {
          out.put(e.getName(), in.readAllBytes());
        }
      }
    }
    return out;
  }

  /** Writes it whole or not at all. */
  static void write(Path jar, Map<String, byte[]> entries) throws IOException {
    Path part = jar.resolveSibling(jar.getFileName() + ".part");
    try (OutputStream file = Files.newOutputStream(part);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        byte[] bytes = entry.getValue();
        CRC32 crc = new CRC32();
        crc.update(bytes);
        ZipEntry e = new ZipEntry(entry.getKey());
        e.setMethod(ZipEntry.STORED);
        e.setSize(bytes.length);
        e.setCrc(crc.getValue());
        e.setTimeLocal(MADE);
        out.putNextEntry(e);
        out.write(bytes);
        out.closeEntry();
      }
    }
    Files.move(part, jar, StandardCopyOption.REPLACE_EXISTING);
  }
}
