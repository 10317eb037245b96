package strikeoff.cli.text;

import strikeoff.check.Verdict;
import strikeoff.findings.Severity;

/** Colours text for a terminal, or leaves it plain. */
public record Ink(boolean colourful) {

  private static final String OFF = "\u001B[0m";
  private static final String RED = "\u001B[1;31m";
  private static final String GREEN = "\u001B[32m";
  private static final String YELLOW = "\u001B[33m";
  private static final String CYAN = "\u001B[36m";
  private static final String BOLD = "\u001B[1m";

  public String of(Verdict verdict, String text) {
    return switch (verdict) {
      case PRINTABLE -> in(GREEN, text);
      case NOT_PRINTABLE -> in(RED, text);
      case UNREADABLE, NOT_CHECKED -> in(YELLOW, text);
    };
  }

  public String of(Severity severity, String text) {
    return switch (severity) {
      case STOP -> in(RED, text);
      case RISK -> in(YELLOW, text);
      case ADVICE -> in(CYAN, text);
    };
  }

  public String bold(String text) {
    return in(BOLD, text);
  }

  private String in(String code, String text) {
    return colourful ? code + text + OFF : text;
  }
}
