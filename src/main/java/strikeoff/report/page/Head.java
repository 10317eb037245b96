package strikeoff.report.page;

import gg.jte.Content;

/**
 * What every page's head holds.
 *
 * @param generator what wrote the page
 * @param policy the content security policy, with the hashes of the style sheet and the script
 */
public record Head(String generator, String title, String policy, Content style, Content script) {}
