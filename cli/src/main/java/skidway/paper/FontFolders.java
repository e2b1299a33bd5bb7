package skidway.paper;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where computers keep their fonts. */
final class FontFolders {
  private FontFolders() {}

  /** The usual folders of Linux, macOS and Windows; those that are not there do no harm. */
  static List<Path> usual() {
    String home = System.getProperty("user.home", "");
    String windows = System.getenv().getOrDefault("WINDIR", "C:\\Windows");
    return Stream.of(
            "/usr/share/fonts",
            "/usr/local/share/fonts",
            home + "/.local/share/fonts",
            home + "/.fonts",
            "/System/Library/Fonts",
            "/Library/Fonts",
            home + "/Library/Fonts",
            windows + "\\Fonts",
            home + "\\AppData\\Local\\Microsoft\\Windows\\Fonts")
        .map(Path::of)
        .toList();
  }
}
