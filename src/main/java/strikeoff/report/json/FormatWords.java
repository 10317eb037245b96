package strikeoff.report.json;

import java.util.LinkedHashMap;
import java.util.Map;
import strikeoff.check.Verdict;
import strikeoff.findings.Severity;
import strikeoff.findings.Since;

/** What the format calls verdicts and severities. */
final class FormatWords {

  private FormatWords() {}

  static String of(Verdict verdict) {
    return switch (verdict) {
      case PRINTABLE -> "printable";
      case NOT_PRINTABLE -> "notPrintable";
      case UNREADABLE -> "unreadable";
      case NOT_CHECKED -> "notChecked";
    };
  }

  static Map<String, Verdict> verdicts() {
    Map<String, Verdict> words = new LinkedHashMap<>();
    for (Verdict verdict : Verdict.values()) {
      words.put(of(verdict), verdict);
    }
    return words;
  }

  static Map<String, Since> since() {
    Map<String, Since> words = new LinkedHashMap<>();
    for (Since since : Since.values()) {
      words.put(since.text(), since);
    }
    return words;
  }

  static Map<String, Severity> severities() {
    Map<String, Severity> words = new LinkedHashMap<>();
    for (Severity severity : Severity.values()) {
      words.put(severity.text(), severity);
    }
    return words;
  }
}
