package strikeoff.cli.text;

/** Says on the error output what keeps the program from doing as asked. */
public final class Complaint {

  private Complaint() {}

  public static void say(Surroundings here, String what) {
    for (String line : Plain.wrap("strikeoff: ", "  ", what, here.width())) {
      here.err().print(line + "\n");
    }
  }
}
