package skidway.audit.walk;

/** The cells at the foot of steps and the cells at their top: who is at one gets to the other. */
record StepLink(Cells foot, Cells top) {}
