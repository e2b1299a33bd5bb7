package skidway.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: into a temporary file beside it, down to the disk, then in one
 * move under its name.
 */
final class AtomicFile {
  private AtomicFile() {}

  static void write(Path file, byte[] bytes) throws IOException {
    Path temporary = file.resolveSibling("." + file.getFileName() + ".new");
    try {
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
      Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }
}
