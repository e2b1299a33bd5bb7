package skidway.geometry;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import skidway.site.Footprint;

/**
 * Finds which of many things may lie near each other, so that only those need measuring. Each thing
 * is one or more footprints; two things are handed on when the upright boxes round them come nearer
 * than a distance. A tree of boxes makes this n log n plus the number of pairs.
 */
public final class NearPairs {
  /** Takes the numbers of two things, the lower first. */
  @FunctionalInterface
  public interface Taker {
    void take(int lower, int higher);
  }

  private NearPairs() {}

  public static void find(List<List<Footprint>> things, double withinM, Taker taker) {
    STRtree tree = new STRtree();
    Envelope[] boxes = new Envelope[things.size()];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = box(things.get(i));
      tree.insert(boxes[i], i);
    }
    for (int i = 0; i < boxes.length; i++) {
      int lower = i;
      Envelope near = new Envelope(boxes[i]);
      near.expandBy(withinM);
      tree.query(
          near,
          found -> {
            if ((Integer) found > lower) {
              taker.take(lower, (Integer) found);
            }
          });
    }
  }

  private static Envelope box(List<Footprint> thing) {
    Envelope box = new Envelope();
    for (Footprint footprint : thing) {
      box.expandToInclude(Shapes.polygon(footprint).getEnvelopeInternal());
    }
    return box;
  }
}
