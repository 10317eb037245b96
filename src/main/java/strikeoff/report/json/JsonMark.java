package strikeoff.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.regex.Pattern;

/** By what JSON is known again as results, a comparison or a SARIF log that strikeoff wrote. */
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
          Member.perhaps("narrowed", JsonToken.START_OBJECT),
          Member.perhaps("baseline", JsonToken.VALUE_STRING),
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

  /** Behind the tool, which is looked at more closely. */
  private static final List<Member> OF_A_SARIF_RUN =
      List.of(
          Member.perhaps("automationDetails", JsonToken.START_OBJECT),
          Member.of("columnKind", JsonToken.VALUE_STRING),
          Member.of("invocations", JsonToken.START_ARRAY),
          Member.of("artifacts", JsonToken.START_ARRAY),
          Member.of("results", JsonToken.START_ARRAY));

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
        return has(OF_A_REPORT, false, json);
      }
      return COMPARISON.matcher(format).matches() && has(OF_A_COMPARISON, false, json);
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * True if it is a SARIF log of one run, by strikeoff, with all members that such a log has and no
   * others: one that was put together from logs of several tools is somebody else's.
   */
  public static boolean standsSarif(InputStream utf8) {
    try (JsonParser json = JSON.createParser(utf8)) {
      return json.nextToken() == JsonToken.START_OBJECT
          && "$schema".equals(json.nextFieldName())
          && json.nextTextValue() != null
          && "version".equals(json.nextFieldName())
          && "2.1.0".equals(json.nextTextValue())
          && "runs".equals(json.nextFieldName())
          && json.nextToken() == JsonToken.START_ARRAY
          && json.nextToken() == JsonToken.START_OBJECT
          && isOurs(json)
          && has(OF_A_SARIF_RUN, true, json)
          && json.nextToken() == JsonToken.END_ARRAY
          && json.nextToken() == JsonToken.END_OBJECT
          && json.nextToken() == null;
    } catch (IOException e) {
      return false;
    }
  }

  /** Reads a run's tool. */
  private static boolean isOurs(JsonParser json) throws IOException {
    if (!"tool".equals(json.nextFieldName())
        || json.nextToken() != JsonToken.START_OBJECT
        || !"driver".equals(json.nextFieldName())
        || json.nextToken() != JsonToken.START_OBJECT
        || !"name".equals(json.nextFieldName())
        || !"strikeoff".equals(json.nextTextValue())) {
      return false;
    }
    while (json.nextFieldName() != null) {
      json.nextToken();
      json.skipChildren();
    }
    return json.nextToken() == JsonToken.END_OBJECT;
  }

  /**
   * @param all true if nothing may follow the last member, which is not looked into otherwise
   */
  private static boolean has(List<Member> members, boolean all, JsonParser json)
      throws IOException {
    String name = json.nextFieldName();
    Member last = members.get(members.size() - 1);
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
      if (all || member != last) {
        json.skipChildren();
        name = json.nextFieldName();
      }
    }
    return !all || name == null && json.currentToken() == JsonToken.END_OBJECT;
  }
}
