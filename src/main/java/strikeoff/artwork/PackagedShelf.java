package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import strikeoff.units.Script;

/** Pictures that come with the program, beside an example of a rule. */
record PackagedShelf(String folder) implements Shelf {

  @Override
  public InputStream open(String name, int mostMib) throws IOException, UnreadablePicture {
    String full = folder + String.join("/", FolderShelf.steps(name, FolderShelf.PLAN));
    InputStream in = PackagedShelf.class.getResourceAsStream(full);
    if (in == null) {
      throw new UnreadablePicture("there is no file " + Script.quoted(name) + " beside the plan");
    }
    return in;
  }
}
