package skidway.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes printed things into a job's {@code out} folder. They can be deleted and printed again. */
public final class OutFiles {
  private OutFiles() {}

  /**
   * Writes a text file, in place of an older one of that name.
   *
   * @return the file written
   * @throws NotWritten if the disk refuses
   */
  public static Path write(Path folder, String name, String text) {
    return write(folder, name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes a file where somebody wants it, in place of an older one, whole or not at all. */
  public static void writeTo(Path file, byte[] bytes) {
    try {
      AtomicFile.write(file.toAbsolutePath(), bytes);
    } catch (IOException e) {
      throw new NotWritten(
          file,
          "it cannot be written (" + DiskWords.of(e) + ")",
          "look whether its folder is there, may be written to and has room",
          e);
    }
  }

  /** Writes a file of any kind, in the same way. */
  public static Path write(Path folder, String name, byte[] bytes) {
    Path out = folder.resolve("out");
    try {
      Files.createDirectories(out);
      Path file = out.resolve(name);
      AtomicFile.write(file, bytes);
      return file;
    } catch (IOException e) {
      throw new NotWritten(
          out,
          "it cannot be written to (" + DiskWords.of(e) + ")",
          "look whether it is a folder, may be written to and has room",
          e);
    }
  }
}
