package skidway.progress;

/**
 * Why an event cannot have happened after those before it.
 *
 * @param seq the event's number
 * @param sentence what speaks against it, without a full stop
 * @param wayOut what to record instead, as a clause
 */
public record Contradiction(int seq, String sentence, String wayOut) {
  public String text() {
    return sentence + ". Way out: " + wayOut + ".";
  }
}
