package skidway.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** Finds fonts on this computer for letters that our own lack. */
final class FontSearch {
  private final Optional<Path> named;
  private final List<Path> folders;

  private FontSearch(Optional<Path> named, List<Path> folders) {
    this.named = named;
    this.folders = folders;
  }

  /**
   * @param named looked into first
   * @throws BadFont if it is no font that can be put into a PDF
   */
  static FontSearch with(Optional<Path> named, List<Path> folders) {
    named.ifPresent(FontSearch::check);
    return new FontSearch(named, folders);
  }

  private static void check(Path file) {
    String way = " Way out: name a TrueType font (.ttf or .ttc) whose licence lets it be embedded.";
    try {
      if (FontFile.fonts(file).stream().noneMatch(FontTrial::prints)) {
        throw new BadFont("--font " + file + " " + FontFile.whyNot(file) + "." + way);
      }
    } catch (IOException e) {
      throw new BadFont("--font " + file + " " + FontFile.whyNot(file) + "." + way);
    }
  }

  /**
   * Puts fonts on the shelf until every letter is there or no more are found. One that is damaged
   * where it draws a letter is passed over.
   *
   * @return what is still missing and where it stands
   */
  List<String> fill(FontShelf shelf, List<String> texts) {
    NavigableSet<Integer> missing = MissingLetters.in(texts, shelf);
    if (missing.isEmpty()) {
      return List.of();
    }
    for (Path file : files()) {
      if (missing.isEmpty()) {
        break;
      }
      for (FontSource font : fonts(file)) {
        List<Integer> found = lettersOf(font, missing);
        if (!found.isEmpty() && FontTrial.prints(font, found)) {
          missing.removeAll(found);
          shelf.add(font);
        }
      }
    }
    return MissingLetters.told(missing, texts);
  }

  private List<Path> files() {
    List<Path> files = new ArrayList<>(named.stream().toList());
    for (Path folder : folders) {
      if (Files.isDirectory(folder)) {
        try (Stream<Path> all = Files.walk(folder)) {
          all.filter(FontFile::looksLikeOne).filter(Files::isReadable).sorted().forEach(files::add);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
    return files;
  }

  /** A damaged font of the computer's is one font less to choose from, no more. */
  private static List<FontSource> fonts(Path file) {
    try {
      return FontFile.fonts(file);
    } catch (IOException e) {
      return List.of();
    }
  }

  private static List<Integer> lettersOf(FontSource source, NavigableSet<Integer> wanted) {
    try (TrueTypeFont font = source.read()) {
      CmapLookup letters = font.getUnicodeCmapLookup();
      return wanted.stream().filter(c -> FontShelf.has(letters, c)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
