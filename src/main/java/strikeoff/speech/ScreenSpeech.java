package strikeoff.speech;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strikeoff.plan.Design;
import strikeoff.screens.BladeReach;
import strikeoff.screens.DetailOnMesh;
import strikeoff.screens.FineOnMesh;
import strikeoff.screens.Mesh;
import strikeoff.screens.MeshRead;
import strikeoff.screens.PullsRead;
import strikeoff.screens.SeparationOnScreen;
import strikeoff.screens.SqueegeeFit;
import strikeoff.screens.StencilImages;
import strikeoff.screens.ThreadLeftOut;
import strikeoff.units.ArealVolume;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.MeshCount;
import strikeoff.units.Numbers;
import strikeoff.units.UnitSystem;

/** Says what meshes, stencils and squeegees are, and what was meant by a figure. */
public final class ScreenSpeech {

  private static final double MICROMETRES = 1000;

  /** Steps of widths that are drawn, in mm. */
  private static final double DRAWN = 0.05;

  private ScreenSpeech() {}

  /** The images, one by one. */
  public static List<String> each(StencilImages images, Measures units) {
    return images.each().stream().map(use -> text(use, units)).toList();
  }

  public static String text(StencilImages.Use use, Measures units) {
    Design.Separation separation = use.separation();
    return "separation "
        + separation.number()
        + " of "
        + use.design()
        + " ("
        + separation.length().text(units)
        + " by "
        + separation.width().text(units)
        + ", "
        + separation.printed().text(units)
        + " of it printed)";
  }

  /** How its size is told: of a film only what it prints counts. */
  public static String is(SeparationOnScreen separation) {
    return separation.filmed() ? "prints, reckoned from its middle," : "is";
  }

  /** How a detail is known. */
  public static String has(DetailOnMesh detailOnMesh) {
    return detailOnMesh.measured() ? "has on its film lines of" : "has details of";
  }

  /** How much of it there is, and where to look for it; to follow it. */
  public static String lies(DetailOnMesh detail, Measures units) {
    return detail.line().isEmpty()
        ? ""
        : ", over "
            + ArtworkSpeech.over(detail.line(), units)
            + ", for instance at "
            + ArtworkSpeech.at(detail.line(), units);
  }

  /** The finest gap. */
  public static String gapText(FineOnMesh fine, Measures units) {
    return ArtworkSpeech.width(fine.gap(), units);
  }

  /** How long it is. */
  public static String gapOver(FineOnMesh fine, Measures units) {
    return ArtworkSpeech.over(fine.gap(), units);
  }

  /** Where to look for it. */
  public static String gapAt(FineOnMesh fine, Measures units) {
    return ArtworkSpeech.at(fine.gap(), units);
  }

  /** The thread that was taken, to be written. */
  public static String taken(ThreadLeftOut threadLeftOut, Measures units) {
    return thin(threadLeftOut.takenMicrometres(), units);
  }

  /** The threads that such a count is sold with, in words. */
  public static String threads(ThreadLeftOut threadLeftOut, Measures units) {
    return between(threadLeftOut.thinnestMicrometres(), threadLeftOut.thickestMicrometres(), units);
  }

  /** The openings that they leave, in words. */
  public static String openings(ThreadLeftOut threadLeftOut, Measures units) {
    return between(threadLeftOut.openingLeast(), threadLeftOut.openingMost(), units);
  }

  private static String between(double least, double most, Measures units) {
    String first = thin(least, units);
    return first.substring(0, first.lastIndexOf(' ')) + " to " + thin(most, units);
  }

  private static String thin(double micrometres, Measures units) {
    return new Length(micrometres / MICROMETRES).thinText(units);
  }

  /** The least and the most that they hold, as it is said. */
  public static String holds(ThreadLeftOut threadLeftOut, Measures units) {
    return new ArealVolume(threadLeftOut.volume().low()).number(units)
        + " to "
        + new ArealVolume(threadLeftOut.volume().high()).number(units)
        + " "
        + ArealVolume.unit(units);
  }

  /** The count for each inch or centimetre, whichever it is not told in. */
  public static String otherwise(MeshRead read, Measures units) {
    return isMetric(units)
        ? Numbers.plain(read.perInch(), 2) + "/in"
        : read.count().text(Measures.METRIC);
  }

  /** The number as it stands, by the unit that it was not written in. */
  private static String meant(MeshRead read, MeshCount other, Measures units) {
    String told = other.text(units);
    if (read.coarse() == isMetric(units)) {
      return told;
    }
    return read.coarse()
        ? Numbers.plain(other.perCm(), 0) + "/cm, which is " + told
        : Numbers.plain(read.count().perCm(), 0) + "/in, which is " + told;
  }

  private static boolean isMetric(Measures units) {
    return units.of(MeasureKind.MESH_COUNT) == UnitSystem.METRIC;
  }

  /** What to ask oneself, as an instruction without a full stop. */
  public static String asking(MeshRead read, Measures units) {
    return read.meant().map(other -> "Is it " + meant(read, other, units) + "? ").orElse("")
        + "Read the label, or count the threads over "
        + (isMetric(units) ? "a centimetre" : "an inch")
        + ", and write `mesh` with its unit";
  }

  /** The blade to use, in whole millimetres or their like if one fits between the rails. */
  public static String blade(SqueegeeFit fit, Measures units) {
    double step = Length.measuredTo(units).mm();
    double whole = Math.ceil((fit.wanted().mm() - 1e-6) / step) * step;
    return whole <= fit.insideSpan().mm() + 1e-6
        ? new Length(whole).text(units)
        : fit.wanted().writtenText(units);
  }

  /** What to ask oneself, as an instruction without a full stop. */
  public static String asking(PullsRead read) {
    return read.meant().map(n -> "Is it " + n + "? ").orElse("")
        + "Count them on a strike-off, and write that as `pulls`";
  }

  /** What to change, as an instruction without a full stop. */
  public static String mending(DetailOnMesh detailOnMesh, Measures units) {
    return detailOnMesh
        .better()
        .map(
            mesh ->
                "Use a mesh of "
                    + said(mesh, units)
                    + ", or draw nothing finer than "
                    + detailOnMesh.holds().roundedUp(units)
                    + known(detailOnMesh.holds(), detailOnMesh.doubt(), units))
        .orElseGet(
            () ->
                "Keep the mesh and draw nothing finer than "
                    + drawn(detailOnMesh.holds(), units)
                    + known(detailOnMesh.holds(), detailOnMesh.doubt(), units)
                    + ": paste for cloth goes through no mesh that holds it as it is"
                    + finer(detailOnMesh, units));
  }

  /** What the finest mesh would hold instead; empty where the screen's own holds as much. */
  private static String finer(DetailOnMesh detail, Measures units) {
    return detail.finestHolds().above(detail.holds().mm() - Length.TOLERANCE)
        ? ""
        : ". With a mesh of "
            + said(detail.finest(), units)
            + ", the finest that it goes through, "
            + detail.finestHolds().enough(units)
            + " is enough";
  }

  /** Rounded up to a width that is drawn: pens and line widths go by twentieths of a millimetre. */
  private static String drawn(Length least, Measures units) {
    return units.of(MeasureKind.LENGTH) == UnitSystem.METRIC
        ? new Length(Math.ceil(least.mm() / DRAWN - 1e-6) * DRAWN).text(units)
        : least.roundedUp(units);
  }

  /** Why that is more than the mesh needs; empty where nothing was measured. */
  private static String known(Length holds, Length point, Measures units) {
    return point.mm() > 0
        ? " on this film ("
            + holds.minus(point).roundedUp(units)
            + " and one point of it, since it is known to a point either way)"
        : "";
  }

  /** Why gaps are opened further than the mesh needs. */
  public static String gapKnown(FineOnMesh fine, Measures units) {
    return known(fine.gapHolds(), fine.point(), units);
  }

  private static String said(Mesh mesh, Measures units) {
    return mesh.count().text(units) + " with threads of " + mesh.thread().thinText(units);
  }

  /** The blades to use, as in {@code 24 cm} or {@code 24 cm for reeds, 31 cm for heron}. */
  public static String blades(BladeReach reach, Measures units) {
    Map<String, List<String>> byBlade =
        reach.fits().stream()
            .collect(
                Collectors.groupingBy(
                    fit -> blade(fit, units),
                    LinkedHashMap::new,
                    Collectors.mapping(SqueegeeFit::screen, Collectors.toList())));
    return byBlade.size() == 1
        ? byBlade.keySet().iterator().next()
        : byBlade.entrySet().stream()
            .map(e -> e.getKey() + " for " + String.join(" and ", e.getValue()))
            .collect(Collectors.joining(", "));
  }
}
