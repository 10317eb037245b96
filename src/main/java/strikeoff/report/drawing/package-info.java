/** Drawings as SVG, made from the same facts that the rules judged. */
package strikeoff.report.drawing;
