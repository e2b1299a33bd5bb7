package skidway.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import skidway.job.PlanFiles;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.sheet.Tag;
import skidway.sheet.TagChanges;
import skidway.sheet.TagName;
import skidway.sheet.TagPlace;
import skidway.sheet.TagText;

/**
 * Answers whether a tag holds.
 *
 * @param newest the plan it is held against
 */
record TagQuestion(ChosenPlan newest) {

  TagAnswer ask(String text) {
    Optional<TagText> read = TagText.read(text);
    if (read.isEmpty()) {
      return TagAnswer.of(
          TagAnswer.NO_TAG,
          text.isBlank() ? "There is no text to read." : "This is not the whole text of a tag.",
          "A tag's text begins with 'Skidway 1' and ends with 'check' and five letters. When it",
          "does, a letter is wrong or missing: scan it again.");
    }
    TagText tag = read.get();
    Task task = newest.job().task();
    if (!tag.job().equals(TagName.job(newest.plan().jobName()))) {
      return TagAnswer.of(
          TagAnswer.NO_TAG,
          "This tag belongs to another job: "
              + tag.job()
              + ". This one is "
              + task.jobName()
              + ".");
    }
    Optional<Tag> now = Tag.find(Tag.of(task, newest.plan()), tag.bundle());
    return now.map(found -> held(tag, found))
        .orElseGet(
            () ->
                TagAnswer.of(
                    TagAnswer.NO_TAG,
                    "Bundle "
                        + tag.bundle()
                        + " is not in this job's packing list. Ask the site lead."));
  }

  private TagAnswer held(TagText tag, Tag now) {
    String lies = now.bundleId() + ": " + place(now.place(), tag.end()) + ".";
    boolean samePlace = tag.where().equals(TagText.where(now.place()));
    if (!samePlace) {
      return TagAnswer.of(
          TagAnswer.OUTDATED,
          age(tag) + " It says " + tag.where() + "; the bundle lies elsewhere in the newest plan.",
          lies);
    }
    if (ofNewest(tag)) {
      return TagAnswer.of(TagAnswer.HOLDS, age(tag), lies);
    }
    Optional<Boolean> changed = changedSince(tag, now);
    if (changed.equals(Optional.of(false))) {
      return TagAnswer.of(
          TagAnswer.HOLDS, age(tag) + " Nothing on it has changed since; it may stay.", lies);
    }
    String why =
        changed.isPresent()
            ? " Spot and tier are the same, other things on it have changed."
            : " Spot and tier are the same; the rest cannot be compared.";
    return TagAnswer.of(TagAnswer.OUTDATED, age(tag) + why + " Print it again.", lies);
  }

  private boolean ofNewest(TagText tag) {
    return tag.revision() == newest.plan().revision()
        && tag.fingerprint().equals(TagText.shortly(PlanFiles.fingerprint(newest.file())));
  }

  private String age(TagText tag) {
    int revision = newest.plan().revision();
    if (ofNewest(tag)) {
      return "This tag is of the newest plan, revision " + revision + ".";
    }
    if (tag.revision() > revision) {
      return String.format(
          Locale.ROOT,
          "This tag is of revision %d; the newest plan here is revision %d. Is this folder old?",
          tag.revision(),
          revision);
    }
    if (tag.revision() == revision) {
      return "This tag is of another plan that was revision " + revision + " too.";
    }
    return String.format(
        Locale.ROOT,
        "This tag is of revision %d; the newest plan is revision %d.",
        tag.revision(),
        revision);
  }

  /** Nothing when the very plan the tag was printed from is no longer there. */
  private Optional<Boolean> changedSince(TagText tag, Tag now) {
    Path folder = newest.job().folder();
    Optional<Path> file =
        PlanFiles.ofRevision(folder, tag.revision())
            .filter(f -> TagText.shortly(PlanFiles.fingerprint(f)).equals(tag.fingerprint()));
    if (file.isEmpty()) {
      return Optional.empty();
    }
    Task task = newest.job().task();
    Plan older = PlanFiles.read(file.get(), task);
    TagChanges changes = TagChanges.between(task, older, newest.plan());
    boolean changed = changes.all().stream().anyMatch(c -> c.bundleId().equals(now.bundleId()));
    return changed || changes.sameInputs() ? Optional.of(changed) : Optional.empty();
  }

  private static String place(TagPlace place, int end) {
    if (place instanceof TagPlace.Stacked stacked) {
      List<String> ends = stacked.ends();
      return stacked.words() + ", end " + end + " points " + ends.get(end - 1);
    }
    return place instanceof TagPlace.NoSpot
        ? "has no spot in the newest plan; ask the site lead before lifting it"
        : place.words();
  }
}
