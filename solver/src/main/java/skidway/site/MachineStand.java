package skidway.site;

/** A place the machine sets up and lifts from; reach is measured from it. */
public record MachineStand(String id, Point at) {}
