package skidway.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Writes a file whole or not at all: into a temporary file beside it, down to the disk, then in one
 * move under its name.
 */
final class AtomicFile {
  private AtomicFile() {}

  /**
   * Writes several text files of a folder: if one of them is refused, those before it are put back
   * as they were.
   */
  static void writeAll(Path folder, Map<String, String> texts) throws IOException {
    Map<Path, Optional<byte[]>> before = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> text : texts.entrySet()) {
        Path file = folder.resolve(text.getKey());
        before.put(
            file, Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty());
        write(file, text.getValue().getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      for (Map.Entry<Path, Optional<byte[]>> old : before.entrySet()) {
        if (old.getValue().isPresent()) {
          write(old.getKey(), old.getValue().get());
        } else {
          Files.deleteIfExists(old.getKey());
        }
      }
      throw e;
    }
  }

  static void write(Path file, byte[] bytes) throws IOException {
    Path temporary = temporary(file);
    try {
      put(temporary, bytes);
      Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /** Does all of it but for the last move. */
  static void tryRoom(Path file, int bytes) throws IOException {
    try {
      put(temporary(file), new byte[bytes]);
    } finally {
      Files.deleteIfExists(temporary(file));
    }
  }

  private static Path temporary(Path file) {
    return file.resolveSibling("." + file.getFileName() + ".new");
  }

  private static void put(Path temporary, byte[] bytes) throws IOException {
    try (FileChannel out =
        FileChannel.open(
            temporary,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        out.write(buffer);
      }
      out.force(true);
    }
  }
}
