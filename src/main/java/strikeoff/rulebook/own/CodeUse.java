package strikeoff.rulebook.own;

/**
 * Something that compiled code uses.
 *
 * @param type binary name of a class
 * @param member name of its method or field; empty if the class alone is named
 */
record CodeUse(String type, String member) implements Comparable<CodeUse> {

  @Override
  public int compareTo(CodeUse other) {
    int byType = type.compareTo(other.type);
    return byType == 0 ? member.compareTo(other.member) : byType;
  }

  /** As a writer of code knows it: {@code System.exit}. */
  String text() {
    String simple = simpleType();
    return switch (member) {
      case "" -> simple;
      case "<init>" -> "new " + simple;
      default -> simple + "." + member;
    };
  }

  String simpleType() {
    return type.substring(Math.max(type.lastIndexOf('.'), type.lastIndexOf('$')) + 1);
  }
}
