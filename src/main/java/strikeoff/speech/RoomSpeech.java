package strikeoff.speech;

import strikeoff.day.facts.FramesOnBoards;
import strikeoff.day.facts.IdleScreen;
import strikeoff.day.facts.NotInRoom;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/** Says what screens, boards and equipment of the room are short of. */
public final class RoomSpeech {

  private RoomSpeech() {}

  /** The longest stand, as a part of a sentence; on a slow day too where that is longer. */
  public static String worst(IdleScreen screen) {
    boolean longer = screen.slowly().minutes() >= screen.longest().minutes() + 1;
    return (screen.screens().size() == 1 ? "" : screen.screen() + " the longest, ")
        + screen.longest().text()
        + ", from "
        + screen.from().text()
        + " to "
        + screen.until().text()
        + (longer ? "; where films dry slowly " + screen.slowly().text() : "");
  }

  /** The steps to write, each with its place. */
  public static String toWrite(IdleScreen screen) {
    return String.join("; ", screen.washSteps().stream().map(DaySpeech::text).toList());
  }

  /** What keeps the frames on boards, as an instruction without a full stop. */
  public static String mending(FramesOnBoards boards, Measures units) {
    return boards.fixed()
        ? "Push the boards together (`gap: 0 "
            + Length.columnUnit(units)
            + "`), or leave `fixed` out: loose boards are pushed"
            + " together under what takes no board of its own"
        : "Print "
            + boards.arrangement()
            + " in a step of its own: the boards are then pushed together";
  }

  /** Where it is asked for. */
  public static String where(NotInRoom room) {
    return room.steps().isEmpty()
        ? "for the air of the room"
        : "in step " + String.join(", ", room.steps().stream().map(String::valueOf).toList());
  }
}
