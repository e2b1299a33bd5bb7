package skidway.sheet;

import java.util.Locale;
import java.util.Optional;

/**
 * What the code on a tag says, as lines that any telephone shows and people can read:
 *
 * <pre>
 * Skidway 1
 * job Two Herons, lot 7
 * plan 3 a1b2c3d4e5
 * bundle B13
 * spot D1 tier 2 of 3
 * end 1 of 2
 * check 4F7QX
 * </pre>
 *
 * @param job as {@link TagName#job} writes it; bundle and spot likewise
 * @param fingerprint the plan's, as short as people compare it
 * @param where {@code spot D1 tier 2 of 3}, {@code spot R1 on end} or {@code no spot}
 * @param end 1 or 2
 */
public record TagText(
    String job, int revision, String fingerprint, String bundle, String where, int end) {

  /** The text of one of a bundle's tags. */
  static TagText of(RunningHead head, Tag tag, int end) {
    return new TagText(
        TagName.job(head.jobName()),
        head.revision(),
        shortly(head.fingerprint()),
        TagName.bundle(tag.bundleId()),
        where(tag.place()),
        end);
  }

  /** A fingerprint as the code holds it. */
  public static String shortly(String fingerprint) {
    return fingerprint.isEmpty() ? "-" : TagName.oneLine(Fingerprints.brief(fingerprint));
  }

  /** A place as the code holds it. */
  public static String where(TagPlace place) {
    return place instanceof TagPlace.NoSpot
        ? "no spot"
        : "spot " + TagName.spot(place.code()) + " " + place.level();
  }

  /**
   * Understands a code's text, typed or scanned; line ends and blanks may have changed on the way.
   *
   * @return nothing when it is no tag's text, or damaged
   */
  public static Optional<TagText> read(String text) {
    return new TagReader(text).read();
  }

  /** The whole text, with its check. */
  public String written() {
    return unchecked() + "\ncheck " + check();
  }

  String check() {
    return TagCheck.letters(unchecked());
  }

  String unchecked() {
    return String.format(
        Locale.ROOT,
        "Skidway 1\njob %s\nplan %d %s\nbundle %s\n%s\nend %d of 2",
        job,
        revision,
        fingerprint,
        bundle,
        where,
        end);
  }
}
