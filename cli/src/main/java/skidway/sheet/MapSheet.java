package skidway.sheet;

/**
 * One page of the map.
 *
 * @param name what it shows: all of the site, or a deck or yard by its name
 */
public record MapSheet(String name, Paper paper, String svg) {}
