package skidway.sheet;

import java.util.Optional;

/**
 * A bundle whose tags must be changed between two plans.
 *
 * @param was where its old tags say it lies; nothing when it has none
 * @param now its new tags; nothing when it is no longer delivered
 */
public record TagChange(String bundleId, Optional<TagPlace> was, Optional<Tag> now) {}
