package strikeoff.report;

import gg.jte.TemplateOutput;
import strikeoff.units.Visible;

/** Hands on what a page is made of, and lets nothing through that a reader couldn't see. */
record VisibleOutput(TemplateOutput to) implements TemplateOutput {

  @Override
  public void writeContent(String text) {
    to.writeContent(Visible.of(text));
  }

  @Override
  public void writeContent(String text, int from, int end) {
    writeContent(text.substring(from, end));
  }

  /** Templates and files of the program itself. */
  @Override
  public void writeBinaryContent(byte[] utf8) {
    to.writeBinaryContent(utf8);
  }
}
