package skidway.job;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;

/** Says in words what the disk refused. */
final class DiskWords {
  private DiskWords() {}

  static String of(IOException refused) {
    if (refused instanceof AccessDeniedException denied) {
      return "access to " + denied.getFile() + " is denied";
    }
    if (refused instanceof NoSuchFileException none) {
      return "there is no " + none.getFile();
    }
    Optional<String> reason =
        refused instanceof FileSystemException f
            ? Optional.ofNullable(f.getReason())
            : Optional.empty();
    return reason
        .or(() -> Optional.ofNullable(refused.getMessage()))
        .orElse(refused.getClass().getSimpleName());
  }
}
