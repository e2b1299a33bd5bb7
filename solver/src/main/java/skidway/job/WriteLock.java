package skidway.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * The right to write plans, held by one writer at a time through a lock on {@code plans/.lock}. The
 * operating system lets go of it even if the program is killed, so a left over file does no harm.
 */
final class WriteLock implements AutoCloseable {
  private final Path plans;
  private final FileChannel channel;

  private WriteLock(Path plans, FileChannel channel) {
    this.plans = plans;
    this.channel = channel;
  }

  /**
   * Takes the lock.
   *
   * @throws NotWritten if somebody else has it
   */
  static WriteLock of(Path plans) throws IOException {
    Path file = plans.resolve(".lock");
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    WriteLock lock = new WriteLock(plans, channel);
    if (!lock.taken()) {
      channel.close();
      throw new NotWritten(
          plans, "another writer is at work there", "wait until it has finished and start again");
    }
    return lock;
  }

  private boolean taken() throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false; // another thread of this program has it
    }
  }

  /**
   * Writes a file that is not there yet: whole into a temporary file, down to the disk, then in one
   * move under its name.
   */
  Path write(int revision, Path file, byte[] bytes) throws IOException {
    int next = PlanFiles.nextRevision(plans.getParent());
    if (revision != next) {
      throw new NotWritten(
          file,
          "the next plan of the job is revision " + next + ", this is revision " + revision,
          "start again from the newest plan");
    }
    Path temporary = plans.resolve(".new.json"); // one writer at a time, so one name will do
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
      return Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
