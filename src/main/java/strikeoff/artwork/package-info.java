/**
 * Separations given as pictures: where a plan's films lie, how PNG, PBM and TIFF are read row by
 * row and SVG is drawn in bands, and what is measured of them. Pictures are untrusted: nothing
 * outside the plan's folder is opened, and whatever a file holds ends as a measure or as a
 * sentence.
 */
package strikeoff.artwork;
