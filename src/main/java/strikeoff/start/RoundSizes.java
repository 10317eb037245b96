package strikeoff.start;

/**
 * Round measures in mm, in centimetres or in inches.
 *
 * @param bleed between the motif and the edge of the stencil's image, on each side
 * @param aroundImage rail, squeegee's travel and paste well beyond the image, on both sides
 *     together
 * @param between one frame and the next
 * @param margin from the motifs to the cloth's edge
 */
record RoundSizes(
    double bleed,
    double aroundImage,
    double between,
    double margin,
    double allowance,
    double tableLength,
    double tableWidth,
    double aroundCloth) {

  private static final RoundSizes METRIC = new RoundSizes(10, 170, 20, 80, 20, 2400, 1200, 200);

  private static final RoundSizes IN_INCHES =
      new RoundSizes(
          PlanNumbers.INCH / 2,
          7 * PlanNumbers.INCH,
          PlanNumbers.INCH,
          3 * PlanNumbers.INCH,
          PlanNumbers.INCH,
          96 * PlanNumbers.INCH,
          48 * PlanNumbers.INCH,
          8 * PlanNumbers.INCH);

  static RoundSizes of(PlanNumbers numbers) {
    return numbers.isMetric() ? METRIC : IN_INCHES;
  }
}
