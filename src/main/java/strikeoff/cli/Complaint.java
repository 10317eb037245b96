package strikeoff.cli;

/** Says on the error output what keeps the program from doing as asked. */
final class Complaint {

  private Complaint() {}

  static void say(Surroundings here, String what) {
    for (String line : Plain.wrap("strikeoff: ", "  ", what, here.width())) {
      here.err().print(line + "\n");
    }
  }
}
