package skidway.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.job.BadInput;

/** Opens a packing list, whatever kind of file it is. Never reads more than a bounded part. */
final class ListFile {
  private static final String A_LIST =
      "a packing list is an XLSX spreadsheet, or text with commas, semicolons or tabs";
  private static final List<String> MARKUP =
      List.of("<html", "<!doctype", "<?xml", "<table", "<meta", "<head");
  private static final String SAVE_AS = "open it and save it as XLSX or CSV";

  private ListFile() {}

  /**
   * Reads a list.
   *
   * @param sheet name of the sheet, if not the first
   * @param encoding of a text, if it cannot be told from the file
   * @throws BadInput if it is no list
   */
  static Grid read(Path file, Optional<String> sheet, Optional<String> encoding) {
    String name = file.getFileName() == null ? file.toString() : file.getFileName().toString();
    byte[] bytes = bytes(file, name);
    if (starts(bytes, "PK")) {
      return SheetGrid.read(name, bytes, sheet);
    }
    if (starts(bytes, "\u00d0\u00cf\u0011\u00e0")) {
      throw Trouble.of(
          name, "a spreadsheet of the old kind, or one with a password", A_LIST, SAVE_AS);
    }
    if (starts(bytes, "%PDF")) {
      throw Trouble.of(name, "a PDF", A_LIST, "ask the mill for the spreadsheet behind it");
    }
    if (looksLikeMarkup(bytes)) {
      throw Trouble.of(
          name, "a web page or another file of tags, whatever its name says", A_LIST, SAVE_AS);
    }
    if (sheet.isPresent()) {
      throw Trouble.of(
          name,
          "no spreadsheet, so no sheet " + Trouble.quote(sheet.get()),
          "only spreadsheets have sheets",
          "leave --sheet out");
    }
    return TextGrid.read(name, bytes, encoding);
  }

  private static byte[] bytes(Path file, String name) {
    if (!Files.isRegularFile(file)) {
      throw Trouble.of(
          file.toString(),
          Files.exists(file) ? "no file" : "no such file",
          A_LIST,
          "name the file with the list");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(ListLimits.MOST_FILE_BYTES + 1);
      if (bytes.length > ListLimits.MOST_FILE_BYTES) {
        throw Trouble.of(
            name,
            "more than " + ListLimits.MOST_FILE_BYTES / 1_000_000 + " MB",
            "a packing list has at most that",
            "look whether this is the right file");
      }
      if (bytes.length == 0) {
        throw Trouble.of(name, "an empty file", A_LIST, "ask for it again");
      }
      return bytes;
    } catch (IOException e) {
      throw Trouble.of(
          name, "a file that cannot be read (" + e + ")", A_LIST, "look whether you may read it");
    }
  }

  /** Some programs write a web page and call it a spreadsheet. */
  private static boolean looksLikeMarkup(byte[] bytes) {
    int start = starts(bytes, "\u00ef\u00bb\u00bf") ? 3 : 0;
    String head =
        new String(bytes, start, Math.min(200, bytes.length - start), StandardCharsets.ISO_8859_1)
            .strip()
            .toLowerCase(Locale.ROOT);
    return MARKUP.stream().anyMatch(head::startsWith);
  }

  private static boolean starts(byte[] bytes, String with) {
    byte[] wanted = with.getBytes(StandardCharsets.ISO_8859_1);
    if (bytes.length < wanted.length) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if (bytes[i] != wanted[i]) {
        return false;
      }
    }
    return true;
  }
}
