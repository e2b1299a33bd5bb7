package skidway.site;

/** One row of a load chart: out to this reach the machine may lift this much. */
public record ChartRow(double reachM, double capacityKg) {}
