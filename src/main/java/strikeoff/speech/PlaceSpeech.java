package strikeoff.speech;

import strikeoff.evidence.Evidence;

/** Says what a further place has to do with a fact. */
public final class PlaceSpeech {

  private PlaceSpeech() {}

  public static String label(Evidence.Related further) {
    return switch (further.tie()) {
      case CALLED -> further.name();
      case AIR -> "the air";
      case ANCHOR_PRINTED -> "the anchor is printed";
      case ANOTHER_IMAGE -> "another image";
      case OTHER_FILM -> "another film";
      case ARRANGED -> "arranged";
      case AS_DRAWN -> "as drawn";
      case BASE_PRINTED -> "what it goes over is printed";
      case BATH -> "the bath";
      case BOARDS -> "the boards";
      case CLOTH -> "the cloth";
      case CREW -> "the crew";
      case EQUIPMENT -> "the equipment";
      case FILL_KEEPING_CLEAR -> "the fill that keeps clear";
      case FILM -> "the film";
      case FILM_BELOW -> "the film below";
      case FIXED -> "fixed";
      case FIXED_HERE -> "fixed here";
      case HERE_TOO -> "here too";
      case HOURS -> "the hours";
      case ITS_PASTE -> "its paste";
      case LAST_PRINT_AWAY -> "the last print away from it";
      case LAST_USED -> "last used";
      case LIES_ON -> "what it lies on";
      case MIXED_HERE -> "mixed here";
      case PAINT_PRINTED -> "paint printed";
      case PASTE -> "the paste";
      case PASTE_WITHOUT_ALKALI -> "paste without alkali";
      case PASTE_WITHOUT_UREA -> "paste without urea";
      case PASTE_WITH_ALKALI -> "paste with alkali";
      case PRINTED_ACROSS_IT -> "printed across it";
      case PRINTED_AS_DRAWN -> "printed as drawn";
      case PRINTED_BEFORE -> "printed before";
      case PRINTED_FIRST -> "printed first";
      case PRINTED_HERE -> "printed here";
      case SAME_MESH -> "the same mesh";
      case SCREEN -> "the screen";
      case SEAM -> "the seam";
      case SEWN -> "sewn";
      case TABLE -> "the table";
      case THIS_PASTE -> "this paste";
      case TOO_LATE -> "this comes too late";
      case TO_LIE_OVER -> "what it is to lie over";
    };
  }
}
