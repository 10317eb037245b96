package strikeoff.yaml;

import strikeoff.document.Position;

/**
 * Where the parser gave up, in the text as it is mended so far.
 *
 * @param problem the parser's words
 * @param context its words for where it was
 * @param from where the part began that it could not finish
 * @param at where it gave up
 */
record Fault(String problem, String context, Position from, Position at) {}
