package skidway.site;

/** A hole in a deck: a stair opening, a shaft. */
public record FloorOpening(String id, Outline outline) {}
