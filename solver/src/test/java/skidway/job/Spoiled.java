package skidway.job;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;

/** Reads a folder that must not be readable. */
final class Spoiled {
  private Spoiled() {}

  static List<Problem> problems(JobFolder folder) {
    BadInput bad = catchThrowableOfType(BadInput.class, () -> JobReader.read(folder.path()));
    if (bad == null) {
      throw new AssertionError("The folder was read although it is spoiled.");
    }
    return bad.problems();
  }
}
