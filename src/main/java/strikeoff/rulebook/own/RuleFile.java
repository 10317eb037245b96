package strikeoff.rulebook.own;

/**
 * A file of a studio's rules folder.
 *
 * @param name its path below the folder that holds the rules folder, for messages: {@code
 *     rules/beginners/mesh.dslr}
 * @param family the folder it stands in; its rules' ids begin with it
 * @param text what it says
 */
public record RuleFile(String name, String family, String text) {}
