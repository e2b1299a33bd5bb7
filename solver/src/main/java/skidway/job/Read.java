package skidway.job;

import java.util.List;

/** A thing that was read, with the fields it came from, so that later checks can name its place. */
record Read<T>(T value, Fields at) {
  static <T> List<T> values(List<Read<T>> reads) {
    return reads.stream().map(Read::value).toList();
  }
}
