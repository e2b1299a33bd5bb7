package skidway.survey;

import java.util.List;
import java.util.Optional;

/**
 * What is said of all outer walls at once: {@code walls thick 8" taped outside}.
 *
 * @param tapedOutside whether lengths were taped along the outside faces, else along centre lines
 */
record WallDefaults(Optional<Measured> thick, boolean tapedOutside) {
  static final WallDefaults UNSAID = new WallDefaults(Optional.empty(), true);

  static WallDefaults read(LineScanner line) {
    Clauses said =
        new Grammar("all walls")
            .length("thick", skidway.job.Bounds.WALL_THICKNESS)
            .choice("taped", List.of("outside", "centre"))
            .read(line);
    boolean outside = said.word("taped").map(t -> t.value().equals("outside")).orElse(true);
    return new WallDefaults(said.quantity("thick"), outside);
  }
}
