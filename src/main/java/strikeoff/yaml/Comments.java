package strikeoff.yaml;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.comments.CommentType;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.CommentEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** The comments of a text that was read before. */
public final class Comments {

  private Comments() {}

  /** All of them, in their order, without their marks. */
  public static List<String> of(String text) {
    LoaderOptions options = new LoaderOptions();
    options.setProcessComments(true);
    options.setCodePointLimit(Integer.MAX_VALUE);
    ParserImpl events = new ParserImpl(new StreamReader(text), options);
    List<String> comments = new ArrayList<>();
    try {
      while (!events.checkEvent(Event.ID.StreamEnd)) {
        if (events.getEvent() instanceof CommentEvent comment
            && comment.getCommentType() != CommentType.BLANK_LINE) {
          comments.add(comment.getValue().strip());
        }
      }
    } catch (YAMLException e) {
      // It was read before: what stands behind an oddity of its comments is told as it is.
      return comments;
    }
    return comments;
  }
}
