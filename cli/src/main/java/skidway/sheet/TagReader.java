package skidway.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Reads a tag's text, on lines as it was written or run together in one as some telephones copy it.
 * The check decides whether it was taken apart rightly.
 */
final class TagReader {
  /** Far more than a tag holds; longer texts are refused unread. */
  private static final int LONGEST = 600;

  private static final String FORM =
      "Skidway 1#job (NAME)#plan (\\d{1,6}) (\\S{1,20})#bundle (NAME)"
          + "#(?:spot (NAME) (tier \\d{1,3} of \\d{1,3}|on end)|no spot)#end ([12]) of 2"
          + "#check (\\w{5})";
  private static final Pattern ON_LINES = form("\n", "[^\n]{1,200}");
  private static final Pattern RUN_TOGETHER = form(" ", ".{1,200}?");

  private final String text;

  TagReader(String text) {
    this.text = text;
  }

  private static Pattern form(String between, String name) {
    int flags = Pattern.CASE_INSENSITIVE;
    return Pattern.compile(FORM.replace("NAME", name).replace("#", between), flags);
  }

  Optional<TagText> read() {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String lines =
        text.lines()
            .map(TagName::oneLine)
            .filter(l -> !l.isEmpty())
            .collect(Collectors.joining("\n"));
    return read(ON_LINES, lines).or(() -> read(RUN_TOGETHER, lines.replace('\n', ' ')));
  }

  private static String where(@Nullable String spot, @Nullable String level) {
    return spot == null || level == null
        ? "no spot"
        : "spot " + spot + " " + level.toLowerCase(Locale.ROOT);
  }

  private static Optional<TagText> read(Pattern form, String text) {
    Matcher m = form.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    TagText tag =
        new TagText(
            m.group(1),
            Integer.parseInt(m.group(2)),
            m.group(3),
            m.group(4),
            where(m.group(5), m.group(6)),
            Integer.parseInt(m.group(7)));
    return TagCheck.fits(m.group(8), tag.unchecked()) ? Optional.of(tag) : Optional.empty();
  }
}
