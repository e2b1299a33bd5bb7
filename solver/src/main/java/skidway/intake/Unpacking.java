package skidway.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * Unpacks a spreadsheet once, keeping nothing, before it is read: stops at the first byte beyond a
 * limit, whatever sizes the file claims, and at a document type, the only place where entities can
 * be declared. Uses the same unpacker as the reader after it, so both see the same files.
 */
final class Unpacking {
  private static final String LIMITS = "a spreadsheet with a packing list is far below that";

  private final String fileName;
  private final byte[] buffer = new byte[64 * 1024];
  private long unpacked;

  private Unpacking(String fileName) {
    this.fileName = fileName;
  }

  /**
   * Checks a file.
   *
   * @throws IOException if it cannot be unpacked
   * @throws skidway.job.BadInput if it is beyond a limit
   */
  static void check(String fileName, byte[] bytes) throws IOException {
    try (ZipFile zip =
        ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get()) {
      List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
      if (entries.size() > ListLimits.MOST_PACKED_FILES) {
        throw Trouble.of(
            fileName,
            "a spreadsheet of " + entries.size() + " packed files",
            LIMITS,
            "save the sheet with the list alone");
      }
      if (entries.stream().noneMatch(e -> e.getName().startsWith("xl/"))) {
        throw Trouble.of(
            fileName,
            "packed files, but no XLSX spreadsheet among them",
            "a packing list is an XLSX spreadsheet, or text with commas, semicolons or tabs",
            "open it in the program it is of and save it as XLSX; or unpack it first");
      }
      Unpacking unpacking = new Unpacking(fileName);
      for (ZipArchiveEntry entry : entries) {
        try (InputStream in = zip.getInputStream(entry)) {
          unpacking.entry(entry, in);
        }
      }
    }
  }

  private void entry(ZipArchiveEntry entry, InputStream in) throws IOException {
    boolean xml = entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
    XmlScan scan = new XmlScan();
    long packed = Math.max(1, entry.getCompressedSize());
    long size = 0;
    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
      size += n;
      unpacked += n;
      boolean bursts = size > ListLimits.HARMLESS_BYTES && size / packed > ListLimits.MOST_RATIO;
      if (bursts || unpacked > ListLimits.MOST_UNPACKED_BYTES) {
        throw Trouble.of(
            fileName,
            "a spreadsheet that unpacks to more than "
                + (bursts
                    ? ListLimits.MOST_RATIO + " times its size"
                    : ListLimits.MOST_UNPACKED_BYTES / 1_000_000 + " MB"),
            LIMITS,
            "copy the list's cells into a new spreadsheet");
      }
      if (xml && !scan.harmless(buffer, n)) {
        throw Trouble.of(
            fileName,
            scan.deep()
                ? "tags more than " + ListLimits.DEEPEST_NESTING + " deep in " + entry.getName()
                : "a document type in " + entry.getName(),
            "spreadsheets have none",
            "copy the list's cells into a new spreadsheet");
      }
    }
  }
}
