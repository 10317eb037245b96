package strikeoff.cli.commands;

/** What the plans of an index are grouped by. */
enum Groups {
  FOLDER,
  /** Who made a plan, or else the folder it lies in. */
  PUPIL
}
