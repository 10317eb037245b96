package strikeoff.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.regex.Pattern;

/** By what JSON is known again as results or a comparison that strikeoff wrote. */
public final class JsonMark {

  private static final JsonFactory JSON = new JsonFactory();

  private static final Pattern REPORT = Pattern.compile("strikeoff\\.report/[0-9]+");
  private static final Pattern COMPARISON = Pattern.compile("strikeoff\\.compare/[0-9]+");

  /** A member of the document, and what its value begins with. */
  private record Member(String name, boolean always, JsonToken begins) {

    static Member of(String name, JsonToken begins) {
      return new Member(name, true, begins);
    }

    static Member perhaps(String name, JsonToken begins) {
      return new Member(name, false, begins);
    }
  }

  private static final List<Member> OF_A_REPORT =
      List.of(
          Member.of("tool", JsonToken.START_OBJECT),
          Member.of("title", JsonToken.VALUE_STRING),
          Member.perhaps("part", JsonToken.START_OBJECT),
          Member.of("size", JsonToken.VALUE_NUMBER_INT),
          Member.of("summary", JsonToken.START_OBJECT),
          Member.of("rules", JsonToken.START_ARRAY),
          Member.perhaps("silentRules", JsonToken.START_ARRAY),
          Member.of("plans", JsonToken.START_ARRAY));

  private static final List<Member> OF_A_COMPARISON =
      List.of(
          Member.of("tool", JsonToken.START_OBJECT),
          Member.of("before", JsonToken.VALUE_STRING),
          Member.of("after", JsonToken.VALUE_STRING),
          Member.of("summary", JsonToken.START_OBJECT),
          Member.of("plans", JsonToken.START_ARRAY));

  private JsonMark() {}

  /** True if it has all members that such a document has, in order, up to its plans. */
  public static boolean stands(InputStream utf8) {
    try (JsonParser json = JSON.createParser(utf8)) {
      if (json.nextToken() != JsonToken.START_OBJECT
          || !"format".equals(json.nextFieldName())
          || json.nextToken() != JsonToken.VALUE_STRING) {
        return false;
      }
      String format = json.getText();
      if (REPORT.matcher(format).matches()) {
        return has(OF_A_REPORT, json);
      }
      return COMPARISON.matcher(format).matches() && has(OF_A_COMPARISON, json);
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean has(List<Member> members, JsonParser json) throws IOException {
    String name = json.nextFieldName();
    for (Member member : members) {
      if (!member.name().equals(name)) {
        if (member.always()) {
          return false;
        }
        continue;
      }
      if (json.nextToken() != member.begins()) {
        return false;
      }
      if (!member.name().equals("plans")) {
        json.skipChildren();
        name = json.nextFieldName();
      }
    }
    return true;
  }
}
