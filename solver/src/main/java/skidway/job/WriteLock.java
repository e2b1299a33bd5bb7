package skidway.job;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;

/**
 * The right to write plans and events, held by one writer at a time through a lock on {@code
 * plans/.lock}. The operating system lets go of it even if the program is killed, so a left over
 * file does no harm.
 */
final class WriteLock implements AutoCloseable {
  /** Between two looks at a lock that is taken. */
  private static final int PAUSE_MS = 50;

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
    return of(plans, Duration.ZERO);
  }

  /**
   * Takes the lock as soon as it is free.
   *
   * @throws NotWritten if somebody else still has it after that time
   */
  static WriteLock of(Path plans, Duration patience) throws IOException {
    Path file = plans.resolve(".lock");
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    WriteLock lock = new WriteLock(plans, channel);
    if (!lock.taken(patience)) {
      channel.close();
      throw new NotWritten(
          plans, "another writer is at work there", "wait until it has finished and start again");
    }
    return lock;
  }

  private boolean taken(Duration patience) throws IOException {
    long end = System.nanoTime() + patience.toNanos();
    boolean taken = taken();
    while (!taken && System.nanoTime() < end && paused()) {
      taken = taken();
    }
    return taken;
  }

  /** Waits a moment; false when somebody wants this program to stop waiting. */
  private static boolean paused() {
    try {
      Thread.sleep(PAUSE_MS);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private boolean taken() throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false; // another thread of this program has it
    }
  }

  /** Writes a file in place of an older one of that name. */
  void replace(Path file, byte[] bytes) throws IOException {
    AtomicFile.write(file, bytes);
  }

  /** Writes so many bytes down to the disk and takes them away again. */
  void tryRoom(int bytes) throws IOException {
    AtomicFile.tryRoom(plans.resolve("room"), bytes);
  }

  /** Writes a file that is not there yet. */
  Path write(int revision, Path file, byte[] bytes) throws IOException {
    int next = PlanFiles.nextRevision(plans.getParent());
    if (revision != next) {
      throw new NotWritten(
          file,
          "the next plan of the job is revision " + next + ", this is revision " + revision,
          "start again from the newest plan");
    }
    AtomicFile.write(file, bytes);
    return file;
  }

  /** Opens a file of the job that only the holder of the lock adds to. */
  AppendedFile open(Path file) throws IOException {
    if (!channel.isOpen()) {
      throw new IllegalStateException("The lock was let go of before " + file + " was written.");
    }
    return AppendedFile.open(file);
  }

  /** Refuses to replace a file that somebody changed since it was read. */
  void requireUnchanged(Path file, Optional<String> asRead) throws IOException {
    Optional<String> now = Files.exists(file) ? Optional.of(text(file)) : Optional.empty();
    if (!now.equals(asRead)) {
      throw new NotWritten(
          file, "it was changed while the job was being read", "start the command again");
    }
  }

  private static String text(Path file) throws IOException {
    return SourceFile.plain(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
