package strikeoff.rulebook.own;

/** How far two texts lie apart. */
final class Letters {

  private Letters() {}

  /** Letters to insert, drop or change. */
  static int apart(String a, String b) {
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, Math.min(row[j - 1], last[j]) + 1);
      }
      int[] free = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
