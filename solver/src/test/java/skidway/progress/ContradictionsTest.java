package skidway.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static skidway.progress.Diary.START;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot have happened, and beside each the same thing when it can. */
class ContradictionsTest {
  private static Diary here() {
    return new Diary().arrived("L1");
  }

  /** B1 and B2 on Y1, B3 in the rack. */
  private static Diary down() {
    return here().placed("B1", "Y1", 1).placed("B2", "Y1", 2).placed("B3", "YR1", 0);
  }

  private static Arguments of(Diary diary, String... words) {
    return Arguments.of(diary, String.join("|", words));
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        of(
            new Diary().arrived("L3"),
            "no load \"L3\" (did you mean \"L1\" or \"L2\"?)",
            "loads.csv"),
        of(here().arrived("L1"), "L1 arrived already, at 2031-05-05 08:00"),
        of(new Diary().late("L3", START.plusDays(1)), "no load \"L3\""),
        of(here().late("L1", START.plusDays(1)), "L1 arrived already", "undo its arrival"),
        of(new Diary().late("L2", START), "no time to wait for"),
        of(new Diary().placed("B1", "Y1", 1), "L1, which brings bundle B1, has not arrived"),
        of(here().placed("B7", "Y1", 1), "no bundle \"B7\" (did you mean \"B1\""),
        of(here().placed("B1", "Y7", 1), "no spot \"Y7\" (did you mean \"Y1\""),
        of(here().placed("B1", "Y1", 0), "no tier 0", "say tier 1"),
        of(here().placed("B1", "Y1", 2), "Tier 2 on Y1", "nothing is there", "say tier 1"),
        of(down().arrived("L2").placed("B4", "Y1", 4), "only B1, B2 is there", "say tier 3"),
        of(down().arrived("L2").placed("B4", "Y1", 2), "Tier 2 on Y1 is taken by B2"),
        of(down().arrived("L2").placed("B4", "YR1", 1), "YR1 is a rack", "leave the tier out"),
        of(down().placed("B1", "Y2", 1), "B1 lies already, at Y1, tier 1", "moved B1 to"),
        of(down().placed("B3", "Y2", 1), "B3 lies already, at YR1.", "moved B3 to"),
        of(here().missing("B1").placed("B1", "Y1", 1), "B1 is missing", "found B1"),
        of(down().pulled("W1-C2-1").placed("B2", "Y2", 1), "All pieces of bundle B2 are pulled"),
        of(here().clock(START.minusMinutes(1)).placed("B1", "Y1", 1), "L1 of B1 came at 2031"),
        of(
            here().placed("B1", "Y1", 1).clock(START).placed("B2", "Y1", 2),
            "The stack on Y1 changed at 2031-05-05 08:01, after 2031-05-05 08:00"),
        of(
            down()
                .arrived("L2")
                .clock(START.plusMinutes(20))
                .moved("B2", "Y2", 1)
                .clock(START.plusMinutes(5)) // recorded late, and empties the spot
                .pulled("W1-C1-1", "W1-C1-2")
                .clock(START.plusMinutes(10))
                .placed("B4", "Y1", 1),
            "The stack on Y1 changed at 2031-05-05 08:20, after 2031-05-05 08:10"),
        of(here().moved("B1", "Y2", 1), "B1 lies nowhere yet", "placed B1 at"),
        of(here().moved("B7", "Y2", 1), "no bundle \"B7\""),
        of(down().moved("B1", "Y2", 1), "On bundle B1 at Y1, tier 1 lies B2"),
        of(down().moved("B2", "Y1", 2), "B2 lies on Y1 already, at Y1, tier 2"),
        of(down().moved("B2", "Y2", 2), "Tier 2 on Y2"),
        of(down().moved("B2", "Y8", 1), "no spot \"Y8\""),
        of(down().clock(START.plusMinutes(1)).moved("B2", "Y2", 1), "B2 was put down at"),
        of(
            down().arrived("L2").clock(START).missing("B1"),
            "With missing B1 at 2031-05-05 08:00, event 2 (placed B1 at Y1, tier 1) of"
                + " 2031-05-05 08:01 could not have happened: Bundle B1 is missing",
            "undo event 2 first"),
        of(
            down().moved("B2", "Y2", 1).clock(START.plusMinutes(3)).pulled("W1-C2-1"),
            "event 5 (moved B2 to Y2, tier 1) of 2031-05-05 08:04 could not have happened: Bundle B2"
                + " lies nowhere"),
        of(
            new Diary().late("L2", START.plusDays(2)).clock(START.minusHours(1)).arrived("L2"),
            "event 1 (late L2 until 2031-05-07 08:00) of 2031-05-05 08:00 could not",
            "L2 arrived already, at 2031-05-05 07:00"),
        of(
            new Diary()
                .late("L2", START.plusDays(2))
                .clock(START.minusHours(1))
                .late("L2", START.plusDays(1)),
            "Newer word of load L2 came at 2031-05-05 08:00, after 2031-05-05 07:00"),
        of(
            down()
                .missing("W1-C1-1")
                .found("W1-C1-1")
                .clock(START.plusMinutes(4))
                .pulled("W1-C1-1"),
            "Dated 2031-05-05 08:04, it comes before what is recorded already: Piece W1-C1-1 is"
                + " missing"),
        of(
            here().missing("B1").found("B1").clock(START.plusMinutes(1)).placed("B1", "Y1", 1),
            "before what is recorded already: Bundle B1 is missing"),
        of(new Diary().missing("W1-C1-9"), "no bundle or piece \"W1-C1-9\" (did you mean"),
        of(new Diary().missing("B1").missing("B1"), "B1 is recorded missing already"),
        of(new Diary().damaged("B1").missing("B1"), "B1 is recorded damaged already", "found B1"),
        of(new Diary().missing("B1").damaged("W1-C1-1"), "missing with the whole of bundle B1"),
        of(down().pulled("W1-C2-1").missing("W1-C2-1"), "W1-C2-1 was pulled at", "'damaged'"),
        of(down().pulled("W1-C2-1").missing("B2"), "All pieces of bundle B2 are pulled"),
        of(down().pulled("W1-C2-1").clock(START).damaged("W1-C2-1"), "W1-C2-1 was pulled at"),
        of(new Diary().found("B1"), "B1 is neither missing nor damaged"),
        of(new Diary().found("B7"), "no bundle or piece \"B7\""),
        of(new Diary().damaged("B1").found("W1-C1-1"), "damaged with the whole of bundle B1"),
        of(
            new Diary().missing("B1").clock(START.minusDays(1)).found("B1"),
            "B1 was recorded missing at 2031-05-05 08:00"),
        of(down().pulled(), "No piece is left"),
        of(down().pulled("W1-C2-9"), "no piece \"W1-C2-9\" (did you mean"),
        of(down().pulled("W1-C2-1", "W1-C2-1"), "named twice"),
        of(down().pulled("W1-C2-1").pulled("W1-C2-1"), "W1-C2-1 was pulled already, at"),
        of(down().missing("W1-C2-1").pulled("W1-C2-1"), "W1-C2-1 is missing or damaged"),
        of(down().damaged("B2").pulled("W1-C2-1"), "W1-C2-1 is missing or damaged"),
        of(here().pulled("W1-C2-1"), "W1-C2-1 comes in bundle B2, which is not put down yet"),
        of(down().pulled("W3-C1-1"), "of load L2, not here yet", "arrived L2"),
        of(down().clock(START).pulled("W1-C2-1"), "Bundle B2 was put down at"),
        of(new Diary().undo(1), "no event 1; nothing is recorded yet"),
        of(down().undo(5), "no event 5; events 1 to 4 are recorded"),
        of(down().undo(4).undo(4), "Event 4 is undone already, by event 5", "'undo 5'"),
        of(
            down().undo(2),
            "With event 2 (placed B1 at Y1, tier 1) undone, event 3 (placed B2 at Y1, tier 2)",
            "Tier 2 on Y1 has nothing to lie on",
            "'undo 3'"),
        of(down().undo(1), "as in 'undo 4 3 2'"),
        of(
            here().placed("B1", "Y1", 1).undo(2).placed("B1", "Y2", 1).undo(3),
            "With event 3 (undo 2) undone, event 4 (placed B1 at Y2, tier 1) could not",
            "B1 lies already"));
  }

  @ParameterizedTest
  @MethodSource
  void refused(Diary diary, String words) {
    assertThat(diary.against())
        .singleElement()
        .matches(c -> c.seq() == diary.events().size())
        .extracting(Contradiction::text)
        .asString()
        .contains(words.split("\\|"))
        .contains(". Way out: ")
        .endsWith(".");
  }

  static Stream<Diary> accepted() {
    return Stream.of(
        new Diary().arrived("L2"),
        new Diary().late("L2", START.plusMinutes(1)),
        here().late("L2", START.plusDays(4)),
        here().placed("B2", "Y1", 1),
        here().clock(START).placed("B1", "Y1", 1),
        down().arrived("L2").placed("B4", "Y1", 3),
        down().arrived("L2").placed("B4", "YR1", 0),
        down().clock(START.plusMinutes(2)).moved("B2", "Y2", 1),
        down().moved("B2", "YR1", 0),
        down().moved("B3", "Y1", 3),
        down().arrived("L2").placed("B4", "YR1", 0).moved("B3", "Y2", 1),
        down().moved("B2", "Y2", 1).moved("B1", "Y2", 2),
        down().missing("B1"),
        down().arrived("L2").clock(START.plusMinutes(2)).pulled("W1-C2-1"),
        down().clock(START.minusDays(1)).late("L2", START.plusDays(1)),
        down().pulled("W1-C1-2").clock(START).missing("W1-C1-1"),
        new Diary().missing("W1-C1-1").missing("B1"),
        down().damaged("B1").found("B1").pulled("W1-C1-1"),
        down().missing("W1-C2-1").clock(START.plusMinutes(4)).found("W1-C2-1"),
        down().clock(START.plusMinutes(2)).pulled("W1-C2-1"),
        down().moved("B3", "Y2", 1).clock(START.plusMinutes(3)).pulled("W2-C1-1"),
        down().pulled("W1-C1-1", "W1-C2-1"),
        down().undo(4),
        down().undo(3),
        down().undo(4).undo(5));
  }

  @ParameterizedTest
  @MethodSource
  void accepted(Diary diary) {
    assertThat(diary.against()).isEmpty();
    assertThat(diary.progress().contradictions()).isEmpty();
  }

  @Test
  void everyPieceThatCannotBePulledIsNamed() {
    assertThat(down().missing("W1-C1-1").pulled("W1-C1-1", "W9", "W1-C2-1", "W3-C1-1").against())
        .hasSize(3);
  }
}
