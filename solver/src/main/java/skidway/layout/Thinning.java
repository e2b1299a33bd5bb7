package skidway.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import skidway.site.Point;
import skidway.site.Spot;

/**
 * Thins out spots: the half of the number wanted that lies nearest to the building, and as many
 * from the others at even steps through the order in which they were laid out, so that far corners
 * are not forgotten.
 */
final class Thinning {
  private Thinning() {}

  /** The spots of the lowest ranks; the rank that does not fit whole is thinned. */
  static List<Spot> pick(List<Ranked> ranked, int wanted, Point near) {
    List<Spot> picked = new ArrayList<>();
    for (int rank = 0; rank <= Mark.LAST_RANK && picked.size() < wanted; rank++) {
      int only = rank;
      List<Spot> ofRank = ranked.stream().filter(r -> r.rank() == only).map(Ranked::spot).toList();
      picked.addAll(thin(ofRank, wanted - picked.size(), near));
    }
    return picked;
  }

  static List<Spot> thin(List<Spot> spots, int wanted, Point near) {
    if (spots.size() <= wanted) {
      return spots;
    }
    List<Integer> byDistance = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      byDistance.add(i);
    }
    byDistance.sort(
        Comparator.comparingDouble(i -> spots.get(i).footprint().centre().distanceTo(near)));
    int nearest = (wanted + 1) / 2;
    List<Integer> others = byDistance.subList(nearest, spots.size()).stream().sorted().toList();
    List<Integer> chosen = new ArrayList<>(byDistance.subList(0, nearest));
    int rest = wanted - nearest;
    for (int k = 0; k < rest; k++) {
      chosen.add(others.get((int) ((long) k * others.size() / rest)));
    }
    return chosen.stream().sorted().map(spots::get).toList();
  }
}
