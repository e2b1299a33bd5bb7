package skidway.job;

/** A place in an input file; line 0 stands for the file as a whole. */
public record Place(SourceFile file, int line, int column) {
  public Problem problem(String found, String allowed, String wayOut) {
    return new Problem(file.name(), line, column, found, allowed, wayOut, file.line(line));
  }

  /** For example {@code line 7}, to name another place of the same file. */
  public String words() {
    return "line " + line;
  }
}
