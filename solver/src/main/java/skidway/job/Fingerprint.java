package skidway.job;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Computes SHA-256 fingerprints, in hexadecimal. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /**
   * One fingerprint for several files in their order: name, length and text of each, so that line
   * ends and byte order marks make no difference and no text can pass from one file to the next.
   */
  static String of(List<SourceFile> files) {
    MessageDigest digest = sha256();
    for (SourceFile file : files) {
      byte[] text = file.text().getBytes(StandardCharsets.UTF_8);
      digest.update((file.name() + '\0' + text.length + '\0').getBytes(StandardCharsets.UTF_8));
      digest.update(text);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
