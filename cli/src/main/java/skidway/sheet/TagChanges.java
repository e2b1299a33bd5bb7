package skidway.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.plan.Unplaced;

/**
 * Finds the bundles whose tags say something else in a newer plan. The packing list of the older
 * plan is not kept; when it has changed since, the lifts of both plans are compared as well, and
 * what they do not tell (the pieces inside) stays unknown.
 *
 * @param all in off-order, those no longer delivered last
 * @param sameInputs whether both were planned from the same files
 */
public record TagChanges(int since, List<TagChange> all, boolean sameInputs) {
  public TagChanges {
    all = List.copyOf(all);
  }

  public static TagChanges between(Task task, Plan older, Plan newer) {
    boolean sameInputs = older.inputs().equals(newer.inputs());
    Set<String> tagged = bundles(older);
    TagPlaces before = TagPlaces.of(task, older);
    List<Tag> old = Tag.of(task, older);
    List<Tag> current = Tag.of(task, newer);
    LiftFacts liftsBefore = LiftFacts.of(older);
    LiftFacts lifts = LiftFacts.of(newer);
    List<TagChange> all = new ArrayList<>();
    for (int i = 0; i < current.size(); i++) {
      Tag tag = current.get(i);
      String id = tag.bundleId();
      boolean had = tagged.remove(id);
      boolean same = tag.equals(old.get(i)) && (sameInputs || liftsBefore.sameFor(id, lifts));
      if (!had || !same) {
        Optional<TagPlace> was = had ? Optional.of(before.of(id)) : Optional.empty();
        all.add(new TagChange(id, was, Optional.of(tag)));
      }
    }
    for (String gone : tagged) {
      all.add(new TagChange(gone, Optional.of(before.of(gone)), Optional.empty()));
    }
    return new TagChanges(older.revision(), all, sameInputs);
  }

  /** The tags to print. */
  public List<Tag> toPrint() {
    return all.stream().flatMap(change -> change.now().stream()).toList();
  }

  /** The bundles whose old tags come off. */
  public List<TagChange> toTakeOff() {
    return all.stream().filter(change -> change.was().isPresent()).toList();
  }

  private static Set<String> bundles(Plan plan) {
    Set<String> ids = new LinkedHashSet<>();
    for (Stack stack : plan.stacks()) {
      ids.addAll(stack.bundleIds());
    }
    plan.unplaced().stream().map(Unplaced::bundleId).forEach(ids::add);
    return ids;
  }
}
