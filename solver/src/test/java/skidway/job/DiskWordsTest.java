package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

class DiskWordsTest {
  @Test
  void noClassOfTheMachineIsNamed() {
    assertThat(DiskWords.of(new IOException("No space left on device")))
        .isEqualTo("No space left on device");
    assertThat(DiskWords.of(new FileSystemException("plans/.lock", null, "Read-only file system")))
        .isEqualTo("Read-only file system");
    assertThat(DiskWords.of(new AccessDeniedException("plans")))
        .isEqualTo("access to plans is denied");
    assertThat(DiskWords.of(new NoSuchFileException("out"))).isEqualTo("there is no out");
  }
}
