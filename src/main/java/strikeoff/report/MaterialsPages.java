package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import strikeoff.report.page.Listed;
import strikeoff.report.page.MaterialsList;
import strikeoff.report.page.MaterialsList.Bought;
import strikeoff.report.page.MaterialsList.Line;
import strikeoff.report.page.MaterialsList.Weighed;

/**
 * Spreads the lists over sheets of paper: first what goes to the shop, then what hangs by the
 * scales. Heights are those of the wall's type, for the smaller of A4 and Letter, in millimetres.
 */
final class MaterialsPages {

  private static final double PAGE = 185;

  private static final double ROW = 9.5;

  private static final double NOTE = 5;

  private static final double HEAD = 10;

  /** Letters in a row of notes across the page, and in a column of it. */
  private static final int WIDE = 85;

  private static final int NARROW = 24;

  private static final int UNDER_HEAD = 44;

  private MaterialsPages() {}

  /** Each a page; none where nothing is bought. */
  static List<MaterialsList> of(MaterialsList all) {
    List<MaterialsList> pages = new ArrayList<>();
    List<List<Bought>> bought = filled(all.buy().shown(), MaterialsPages::height, 1);
    for (int i = 0; i < bought.size(); i++) {
      boolean last = i == bought.size() - 1;
      pages.add(
          all.with(
              new Listed<>(bought.get(i), last ? all.buy().more() : 0),
              new Listed<>(List.of(), 0),
              last ? all.notes() : List.of()));
    }
    List<List<Weighed>> weighed = filled(all.weigh().shown(), MaterialsPages::height, 2);
    for (int i = 0; i < weighed.size(); i++) {
      boolean last = i == weighed.size() - 1;
      pages.add(
          all.with(
              new Listed<>(List.of(), 0),
              new Listed<>(weighed.get(i), last ? all.weigh().more() : 0),
              List.of()));
    }
    return pages;
  }

  private static <T> List<List<T>> filled(
      List<T> all, ToDoubleFunction<T> height, int columnsOfPage) {
    List<List<T>> pages = new ArrayList<>();
    double used = 0;
    int column = columnsOfPage;
    for (T one : all) {
      double needs = height.applyAsDouble(one);
      if (pages.isEmpty() || used + needs > PAGE) {
        used = 0;
        column++;
        if (column > columnsOfPage) {
          column = 1;
          pages.add(new ArrayList<>());
        }
      }
      pages.get(pages.size() - 1).add(one);
      used += needs;
    }
    return pages;
  }

  private static double height(Bought bought) {
    return ROW + NOTE * rows(bought.note(), WIDE);
  }

  private static double height(Weighed weighed) {
    double height =
        HEAD + NOTE * rows(weighed.when(), UNDER_HEAD) + NOTE * rows(weighed.note(), UNDER_HEAD);
    for (Line line : weighed.lines()) {
      height += ROW + NOTE * rows(line.measure(), NARROW);
    }
    return height;
  }

  private static int rows(String words, int letters) {
    return (words.length() + letters - 1) / letters;
  }
}
