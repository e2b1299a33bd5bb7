package skidway.intake;

/**
 * Looks through XML byte by byte for what no spreadsheet has: a document type, and tags nested
 * without end. Zero bytes are passed over, so that UTF-16 hides nothing.
 */
final class XmlScan {
  private static final String DOCTYPE = "!DOCTYPE";

  private int depth;
  private int matched = -1;
  private int before;
  private boolean inTag;
  private boolean closing;
  private int quote;
  private boolean deep;

  /** Whether nothing was found yet, of the first bytes of a buffer as well. */
  boolean harmless(byte[] bytes, int count) {
    for (int i = next(bytes, 0, count); i < count; i = next(bytes, i + 1, count)) {
      int c = bytes[i];
      if (c == 0) {
        continue;
      }
      if (isDocumentType(c)) {
        return false;
      }
      nest(c);
      before = c;
      if (depth > ListLimits.DEEPEST_NESTING) {
        deep = true;
        return false;
      }
    }
    return true;
  }

  /** Whether it is the nesting that does harm. */
  boolean deep() {
    return deep;
  }

  /** Passes over what changes nothing: text between tags and within quotes, names within tags. */
  private int next(byte[] bytes, int from, int count) {
    if (matched >= 0) {
      return from;
    }
    int i = from;
    if (inTag && quote == 0) {
      while (i < count && !counts(bytes[i])) {
        i++;
      }
      before = i > from ? bytes[i - 1] : before;
    } else {
      int end = inTag ? quote : '<';
      while (i < count && bytes[i] != end && bytes[i] != '<') {
        i++;
      }
    }
    return i;
  }

  /** Whether a byte within a tag is more than a letter of a name. */
  private static boolean counts(byte b) {
    return b == '>' || b == '"' || b == '/' || b == '<' || b == '\'' || b == 0;
  }

  private boolean isDocumentType(int c) {
    if (c == '<') {
      matched = 0;
    } else if (matched >= 0) {
      matched = Character.toUpperCase(c) == DOCTYPE.charAt(matched) ? matched + 1 : -1;
    }
    return matched == DOCTYPE.length();
  }

  private void nest(int c) {
    if (!inTag) {
      inTag = c == '<';
      closing = false;
      quote = 0;
    } else if (quote != 0) {
      quote = c == quote ? 0 : quote;
    } else if (c == '"' || c == '\'') {
      quote = c;
    } else if (before == '<' && (c == '?' || c == '!')) {
      inTag = false; // declarations, comments and marked text nest nothing
    } else if (before == '<' && c == '/') {
      closing = true;
    } else if (c == '>') {
      inTag = false;
      depth += closing ? -1 : before == '/' ? 0 : 1;
    }
  }
}
