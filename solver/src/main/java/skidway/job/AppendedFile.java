package skidway.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A file that grows by whole lines, each down on the disk before the next is begun. */
final class AppendedFile implements AutoCloseable {
  private final FileChannel channel;

  private AppendedFile(FileChannel channel) {
    this.channel = channel;
  }

  static AppendedFile open(Path path) throws IOException {
    boolean fresh = Files.notExists(path);
    FileChannel channel =
        FileChannel.open(
            path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    if (fresh) {
      forceName(path.toAbsolutePath().getParent());
    }
    return new AppendedFile(channel);
  }

  /** Brings a new file's name down to the disk, where a folder can be told to. */
  private static void forceName(@Nullable Path folder) throws IOException {
    boolean possible = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    if (possible && folder != null) {
      try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
        names.force(true);
      }
    }
  }

  /** Copies what stands after a length to the end of another file, then takes it off this one. */
  void setAside(long length, Path other) throws IOException {
    long rest = channel.size() - length;
    if (rest == 0) {
      return;
    }
    ByteBuffer tail = ByteBuffer.allocate((int) rest + 1);
    tail.limit((int) rest);
    while (tail.hasRemaining() && channel.read(tail, length + tail.position()) >= 0) {
      // reads on until all is there
    }
    tail.limit((int) rest + 1);
    tail.put((byte) '\n').flip();
    try (FileChannel out =
        FileChannel.open(
            other,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.APPEND)) {
      writeAll(out, tail);
      out.force(true);
    }
    channel.truncate(length);
    channel.force(true);
  }

  /**
   * Adds lines. If the disk refuses one, the file is as before.
   *
   * @param endFirst whether the last line there still lacks its end
   */
  void append(List<String> lines, boolean endFirst) throws IOException {
    long before = channel.size();
    channel.position(before);
    try {
      String end = endFirst ? "\n" : "";
      for (String line : lines) {
        writeAll(channel, ByteBuffer.wrap(EventsFile.utf8(end + line + '\n')));
        channel.force(true);
        end = "";
      }
    } catch (IOException e) {
      channel.truncate(before);
      channel.force(true);
      throw e;
    }
  }

  private static void writeAll(FileChannel out, ByteBuffer buffer) throws IOException {
    while (buffer.hasRemaining()) {
      out.write(buffer);
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
