package skidway.sheet;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Names that spoil a page or a table which takes them as they are. */
public final class UglyNames {
  private UglyNames() {}

  /** Any mix of markup, letters that run the other way, control characters and length. */
  public static Arbitrary<String> any() {
    Arbitrary<String> part =
        Arbitraries.of(
            "<script>alert(1)</script>",
            "</title></style><img src=x onerror=alert(1)>",
            "\" onload=\"alert(1)",
            "' onclick='alert(1)",
            "]]>",
            "<!--",
            "&#0;&amp;&lt;",
            "\u202E1D\u202C",
            "\u2066\u2067\u2068",
            "\u200F\u05D0\u05D1 12",
            "\u0000\u0001\u0008\u001B[31m\u007F\u0085",
            "\r\n",
            "\uD800",
            "\uFFFE\uFFFF",
            "\uD83D\uDE00",
            "=1+1",
            "%s%n",
            "B-07");
    Arbitrary<String> mixed =
        Arbitraries.oneOf(part, Arbitraries.strings().all().ofMaxLength(12))
            .list()
            .ofMinSize(1)
            .ofMaxSize(5)
            .map(parts -> String.join("", parts));
    return Combinators.combine(mixed, Arbitraries.of(1, 1, 1, 10_000))
        .as((text, length) -> text + "x".repeat(length - 1));
  }
}
