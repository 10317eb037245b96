package strikeoff.rulebook.own;

/** What reads a part of a line goes by: the line as it is written, the words and the things. */
abstract class PhraseReader {

  final WrittenLine written;
  final Tokens line;
  final Vocabulary words;
  final Things things;

  PhraseReader(WrittenLine written) {
    this.written = written;
    this.line = written.line();
    this.words = written.words();
    this.things = written.things();
  }
}
