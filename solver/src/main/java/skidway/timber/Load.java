package skidway.timber;

import java.time.LocalDateTime;

/**
 * One truck.
 *
 * @param arrival when it is expected, in the site's local time
 * @param truckStandId where it stands while it is unloaded
 */
public record Load(String id, LocalDateTime arrival, String truckStandId) {}
