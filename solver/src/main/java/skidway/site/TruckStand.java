package skidway.site;

/** Where a truck stands while it is unloaded; nothing is put down there. */
public record TruckStand(String id, Footprint area) {}
