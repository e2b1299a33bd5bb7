package skidway.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.units.Nearest;

/**
 * Reads the files of a folder as text: UTF-8 with or without byte order mark, any line ends, never
 * more than a limit. Whatever else it meets (no file, a folder, binary, UTF-16) is one problem.
 *
 * @param holds what belongs into the folder, as a clause for whoever misses a file
 */
record InputFiles(Path folder, String holds, Problems problems) {
  private static final String A_TEXT_FILE = "an input file is text in UTF-8";
  private static final String SAVE_AS_UTF8 = "save the file as UTF-8 text";

  Optional<SourceFile> read(String name, int mostBytes) {
    SourceFile nothing = new SourceFile(name, "");
    Path path = folder.resolve(name);
    if (!Files.exists(path)) {
      return missing(nothing);
    }
    if (!Files.isRegularFile(path)) {
      return refuse(
          nothing.whole(),
          Files.isDirectory(path) ? "a folder of that name" : "something that is not a file",
          A_TEXT_FILE,
          "put the file " + name + " in its place");
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(mostBytes + 1);
      if (bytes.length > mostBytes) {
        return refuse(
            nothing.whole(),
            "more than " + mostBytes / 1_000_000 + " MB",
            name + " has at most that",
            "look whether this is the right file");
      }
      return decode(name, bytes);
    } catch (AccessDeniedException e) {
      return refuse(
          nothing.whole(),
          "a file that may not be read",
          A_TEXT_FILE,
          "give yourself the right to read it");
    } catch (IOException e) {
      return refuse(
          nothing.whole(),
          "a file that cannot be read (" + e.getMessage() + ")",
          A_TEXT_FILE,
          "look after the disk or copy the folder");
    }
  }

  private Optional<SourceFile> decode(String name, byte[] bytes) {
    SourceFile nothing = new SourceFile(name, "");
    if (bytes.length >= 2 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe) {
      return refuse(nothing.at(1, 1), "UTF-16 text", A_TEXT_FILE, SAVE_AS_UTF8);
    }
    String text = SourceFile.plain(new String(bytes, StandardCharsets.UTF_8));
    SourceFile file = new SourceFile(name, text);
    int zero = file.text().indexOf('\0');
    if (zero >= 0) {
      String found = "a zero byte, so this is a binary file or UTF-16 text";
      return refuse(
          nothing.at(file.at(zero).line(), file.at(zero).column()),
          found,
          A_TEXT_FILE,
          SAVE_AS_UTF8);
    }
    // What is not UTF-8 decodes to the replacement character; a file that really has one was
    // damaged the same way earlier.
    int damaged = file.text().indexOf('\ufffd');
    if (damaged >= 0) {
      return refuse(file.at(damaged), "bytes that are not UTF-8 text", A_TEXT_FILE, SAVE_AS_UTF8);
    }
    if (file.text().isBlank()) {
      return refuse(file.whole(), "an empty file", "it has content", "fill it in or restore it");
    }
    return Optional.of(file);
  }

  private Optional<SourceFile> missing(SourceFile nothing) {
    String name = nothing.name();
    String other = "";
    try (Stream<Path> entries = Files.list(folder)) {
      List<String> names = entries.map(p -> p.getFileName().toString()).sorted().toList();
      other = Nearest.hint(name, names);
    } catch (IOException e) {
      other = " (the folder cannot be listed: " + e.getMessage() + ")";
    }
    return refuse(
        nothing.whole(), "no such file" + other, holds, "add " + name + ", or name another");
  }

  private Optional<SourceFile> refuse(Place place, String found, String allowed, String wayOut) {
    problems.add(place, found, allowed, wayOut);
    return Optional.empty();
  }
}
