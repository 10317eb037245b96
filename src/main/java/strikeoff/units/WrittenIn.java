package strikeoff.units;

/** How one quantity was written: what it measures, and whose unit stands beside its number. */
public record WrittenIn(MeasureKind kind, UnitSystem system) {}
