package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.timber.Bundle;

/**
 * What the two tags of a bundle say about it, without the revision: two plans agree on a bundle
 * when their tags of it are equal.
 *
 * @param need the first course it is needed for, or an empty text
 * @param inside walls and courses of its pieces, a text for each wall
 */
public record Tag(
    String bundleId,
    TagPlace place,
    String loadId,
    int offOrder,
    String mass,
    int pieces,
    String need,
    List<String> inside,
    List<String> cautions) {
  public Tag {
    inside = List.copyOf(inside);
    cautions = List.copyOf(cautions);
  }

  /** Of every bundle, in off-order. */
  public static List<Tag> of(Task task, Plan plan) {
    TagPlaces places = TagPlaces.of(task, plan);
    TagCautions cautions = new TagCautions(task, plan);
    BundleContents contents = BundleContents.of(task);
    List<Tag> tags = new ArrayList<>();
    for (Bundle bundle : task.delivery().bundles()) {
      tags.add(
          new Tag(
              bundle.id(),
              places.of(bundle.id()),
              bundle.loadId(),
              bundle.offOrder(),
              task.figures().mass(bundle.mass().highKg()),
              bundle.packed().size(),
              contents.need(bundle),
              contents.walls(bundle),
              cautions.of(bundle.id())));
    }
    return tags;
  }

  /** The tag of a bundle, by its id as a tag's code writes it. */
  public static Optional<Tag> find(List<Tag> tags, String writtenId) {
    return tags.stream().filter(t -> TagName.bundle(t.bundleId()).equals(writtenId)).findFirst();
  }
}
