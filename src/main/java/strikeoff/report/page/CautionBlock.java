package strikeoff.report.page;

/**
 * What to mind.
 *
 * @param wear what is worn against it; may be empty
 * @param missing what of it the plan doesn't list; may be empty
 * @param where the steps that call for it
 * @param body who states it
 */
public record CautionBlock(String text, String wear, String missing, String where, String body) {}
