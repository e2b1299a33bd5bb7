package skidway.job;

import java.nio.file.Path;
import java.util.List;
import skidway.plan.Task;

/**
 * A job folder that was read and found sound.
 *
 * @param fingerprint SHA-256 over the input files, in hexadecimal
 * @param remarks what is odd but does not stop the job, in file order
 */
public record Job(Path folder, Task task, String fingerprint, List<Problem> remarks) {
  public Job {
    remarks = List.copyOf(remarks);
  }
}
