package strikeoff.speech;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.units.Measures;

/**
 * Who speaks of which facts. A speaker's public static methods say of the fact that they are given
 * what a rule's template names: {@code mixing(PasteAge)} is {@code {mixing}} of a paste's age. One
 * that takes the units of the plan besides tells its figures in them.
 */
public final class Speakers {

  private static final ClassValue<Map<String, Method>> SAID =
      new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> fact) {
          Map<String, Method> byName = new TreeMap<>();
          for (Class<?> speaker : of(fact)) {
            for (Method method : speaker.getMethods()) {
              if (says(method, fact)) {
                byName.merge(method.getName(), method, (a, b) -> inUnits(b) ? b : a);
              }
            }
          }
          return Collections.unmodifiableMap(byName);
        }
      };

  private Speakers() {}

  /** What is said of a fact, by its names. */
  public static Map<String, Method> said(Class<?> fact) {
    return SAID.get(fact);
  }

  /** True for what tells figures in the units that it is given. */
  public static boolean inUnits(Method said) {
    return said.getParameterCount() == 2;
  }

  private static boolean says(Method method, Class<?> fact) {
    Class<?>[] given = method.getParameterTypes();
    return Modifier.isStatic(method.getModifiers())
        && given.length > 0
        && given[0].isAssignableFrom(fact)
        && (given.length == 1 || given.length == 2 && given[1] == Measures.class);
  }

  /** The speakers of a fact's subject; none where facts need no words but their values'. */
  private static List<Class<?>> of(Class<?> fact) {
    return switch (fact.getPackageName()) {
      case "strikeoff.artwork.facts" -> List.of(ArtworkSpeech.class, FilmSizeSpeech.class);
      case "strikeoff.paste" -> List.of(PasteSpeech.class, PasteUseSpeech.class);
      case "strikeoff.bath" ->
          List.of(BathSpeech.class, FixSpeech.class, HeatSpeech.class, StepSpeech.class);
      case "strikeoff.cloth" -> List.of(ClothSpeech.class);
      case "strikeoff.colour" -> List.of(ColourSpeech.class);
      case "strikeoff.layout" ->
          List.of(
              BorderSpeech.class,
              ClothSpeech.class,
              EdgeSpeech.class,
              FillSpeech.class,
              SeamSpeech.class,
              StationSpeech.class);
      case "strikeoff.screens" -> List.of(ScreenSpeech.class);
      case "strikeoff.sequence" -> List.of(LostColourSpeech.class, SequenceSpeech.class);
      case "strikeoff.care" -> List.of(CareSpeech.class, HazardSpeech.class);
      case "strikeoff.day" -> List.of(DaySpeech.class, StepSpeech.class);
      case "strikeoff.day.facts" ->
          List.of(
              DryingSpeech.class,
              HoursSpeech.class,
              RemedySpeech.class,
              RoomSpeech.class,
              StepSpeech.class);
      case "strikeoff.described" -> List.of(StepSpeech.class);
      default -> List.of();
    };
  }
}
