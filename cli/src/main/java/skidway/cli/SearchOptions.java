package skidway.cli;

import picocli.CommandLine.Option;
import skidway.staging.SearchLimits;

/** How long to search and with which dice. */
final class SearchOptions {
  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "score calculations to spend (default: ${DEFAULT-VALUE})")
  private long effort = SearchLimits.DEFAULT.calculations();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "dice of the search; same seed, same plan (default: ${DEFAULT-VALUE})")
  private long seed = SearchLimits.DEFAULT.seed();

  /**
   * The limits asked for.
   *
   * @throws BadUsage if they make no sense
   */
  SearchLimits limits() {
    if (effort < 1) {
      throw new BadUsage("--effort is " + effort + "; allowed are 1 or more score calculations.");
    }
    return new SearchLimits(seed, effort);
  }
}
