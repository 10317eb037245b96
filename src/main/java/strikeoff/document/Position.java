package strikeoff.document;

/** A place in a file: line and column, both counted from 1; columns in UTF-16 code units. */
public record Position(int line, int column) implements Comparable<Position> {

  public Position {
    if (line < 1 || column < 1) {
      throw new IllegalArgumentException("not a position: " + line + ":" + column);
    }
  }

  @Override
  public int compareTo(Position other) {
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return line + ":" + column;
  }
}
