package skidway.job;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.erection.ErectionRate;
import skidway.erection.WorkCalendar;
import skidway.rules.Setting;
import skidway.rules.Settings;

/** Reads {@code erection} of {@code job.json}: when the walls go up. All of it may be left out. */
final class ErectionReader {
  private static final String NAME = "erection";
  private static final int MOST_DAYS_OFF = 1000;
  private static final String BEGINS =
      "\"begins\" is a date such as 2031-05-06, or a date and time of day such as 2031-05-06T10:00, "
          + Dates.YEARS;
  private static final String RATE =
      "\"rate\" is such as \"40 pieces/day\", 1 to 1000, or \"1.5 courses/day\", 0.1 to 50";
  private static final String HOURS =
      "\"hours\" is when work begins and ends on a day, such as \"07:00-16:00\"";
  private static final String OFF = "a day off is a date such as \"2031-05-29\", " + Dates.YEARS;

  private static final Pattern RATE_FORM =
      Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?) *(piece|course)s? *(?:/|a|per) *day");
  private static final Pattern HOURS_FORM =
      Pattern.compile("(\\d{1,2}):(\\d{2}) *[-\u2013] *(\\d{1,2}):(\\d{2})");

  private final Fields f;

  private ErectionReader(Fields f) {
    this.f = f;
  }

  /**
   * @param settings of the job, one of which says the rate of a job that has no {@code rate}
   */
  static Erection read(Fields job, Settings settings) {
    if (!job.has(NAME)) {
      return Erection.unsaid();
    }
    return job.object(NAME, "schedule")
        .flatMap(fields -> new ErectionReader(fields).erection(settings))
        .orElseGet(Erection::unsaid);
  }

  private Optional<Erection> erection(Settings settings) {
    WorkCalendar usual = WorkCalendar.usual();
    Set<DayOfWeek> days = text("days", WorkDays.ALLOWED, WorkDays::read).orElse(usual.days());
    Hours hours =
        text("hours", HOURS, ErectionReader::hours).orElse(new Hours(usual.from(), usual.until()));
    Set<LocalDate> off = off();
    Optional<ErectionRate> rate = text("rate", RATE, ErectionReader::rate);
    if (rate.isPresent() && settings.change(Setting.ERECTION_RATE).isPresent()) {
      f.report(
          f.at("rate"),
          "a rate beside the setting \"" + Setting.ERECTION_RATE.key() + '"',
          "how fast the crew is stands in one place",
          "remove one of them");
    }
    Optional<LocalDateTime> begins =
        text(
            "begins",
            BEGINS,
            t -> Dates.date(t).map(d -> d.atTime(hours.from())).or(() -> Dates.moment(t)));
    return f.finish(
        () ->
            new Erection(
                begins.map(moment -> new Erection.Begin(moment, f.at("begins"))),
                rate,
                new WorkCalendar(days, hours.from(), hours.until(), off)));
  }

  /** A text that may be left out, read by a function that knows its form. */
  private <T> Optional<T> text(String name, String allowed, Function<String, Optional<T>> form) {
    if (!f.has(name)) {
      return Optional.empty();
    }
    Optional<LocatedNode.Text> text = f.typed(name, LocatedNode.Text.class, allowed);
    Optional<T> value = text.flatMap(t -> form.apply(t.value().strip()));
    if (text.isPresent() && value.isEmpty()) {
      f.wrong(name, text.get(), allowed);
    }
    return value;
  }

  private record Hours(LocalTime from, LocalTime until) {}

  private static Optional<Hours> hours(String text) {
    Matcher m = HOURS_FORM.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    Optional<LocalTime> from = time(m.group(1), m.group(2));
    Optional<LocalTime> until = time(m.group(3), m.group(4));
    return from.flatMap(a -> until.filter(b -> b.isAfter(a)).map(b -> new Hours(a, b)));
  }

  private static Optional<LocalTime> time(String hour, String minute) {
    int h = Integer.parseInt(hour);
    int m = Integer.parseInt(minute);
    return h < 24 && m < 60 ? Optional.of(LocalTime.of(h, m)) : Optional.empty();
  }

  private static Optional<ErectionRate> rate(String text) {
    Matcher m = RATE_FORM.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    double perDay = Double.parseDouble(m.group(1));
    if (m.group(2).equals("piece")) {
      return perDay >= 1 && perDay <= 1000
          ? Optional.of(ErectionRate.piecesADay(perDay))
          : Optional.empty();
    }
    return perDay >= 0.1 && perDay <= 50
        ? Optional.of(ErectionRate.coursesADay(perDay))
        : Optional.empty();
  }

  private Set<LocalDate> off() {
    Set<LocalDate> off = new LinkedHashSet<>();
    List<LocatedNode> items = f.has("off") ? f.items("off", 0, MOST_DAYS_OFF) : List.of();
    for (LocatedNode item : items) {
      Optional<LocalDate> date =
          item instanceof LocatedNode.Text text ? Dates.date(text.value()) : Optional.empty();
      date.ifPresentOrElse(
          off::add, () -> f.report(item.place(), item.words() + " in \"off\"", OFF, "correct it"));
    }
    return off;
  }
}
