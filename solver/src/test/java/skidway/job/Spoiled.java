package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;

/** Reads a folder that must not be readable. */
final class Spoiled {
  private Spoiled() {}

  /**
   * Expects one problem at the place of a snippet; the word none stands for a folder that is read
   * without a remark.
   */
  static void expect(JobFolder folder, String file, String place, String message) {
    if (place.equals("none")) {
      assertThat(JobReader.read(folder.path()).remarks()).isEmpty();
      return;
    }
    assertThat(problems(folder)).hasSize(1);
    assertThat(problems(folder).get(0).text())
        .startsWith(file + ":" + folder.place(file, place) + ": found ")
        .contains(message);
  }

  static List<Problem> problems(JobFolder folder) {
    BadInput bad = catchThrowableOfType(BadInput.class, () -> JobReader.read(folder.path()));
    if (bad == null) {
      throw new AssertionError("The folder was read although it is spoiled.");
    }
    return bad.problems();
  }
}
