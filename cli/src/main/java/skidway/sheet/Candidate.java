package skidway.sheet;

/** A box where a label could go, and how much worse it is than the best place for it. */
record Candidate(Box box, double cost) {}
