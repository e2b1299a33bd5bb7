package skidway.job;

import java.util.List;
import skidway.timber.Bundle;

/**
 * What is wrong and what is odd with a job, and the bundles that could be read nevertheless.
 *
 * @param problems the first of them in file order
 */
public record Judgement(List<Problem> problems, List<Problem> remarks, List<Bundle> bundles) {
  public Judgement {
    problems = List.copyOf(problems);
    remarks = List.copyOf(remarks);
    bundles = List.copyOf(bundles);
  }
}
