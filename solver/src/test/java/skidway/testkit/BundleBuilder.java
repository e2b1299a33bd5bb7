package skidway.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import skidway.timber.Bundle;
import skidway.timber.Moisture;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;
import skidway.timber.Section;
import skidway.timber.Species;

/**
 * A bundle of one load, 4 m long, 0.6 m wide, 0.4 m high, empty and weightless until pieces are put
 * in.
 */
public final class BundleBuilder {
  /** Weighs exactly 400 kg/m³ green at 0 % moisture with no shrinkage: easy sums in tests. */
  public static final Species TEST_WOOD = new Species("test wood", 0.4, OptionalDouble.of(0));

  private final String id;
  private String loadId = "L1";
  private int offOrder = 1;
  private double lengthM = 4;
  private double widthM = 0.6;
  private double heightM = 0.4;
  private OptionalDouble weighedKg = OptionalDouble.empty();
  private final List<PackedPiece> packed = new ArrayList<>();

  private BundleBuilder(String id) {
    this.id = id;
  }

  public static BundleBuilder aBundle(String id) {
    return new BundleBuilder(id);
  }

  public BundleBuilder load(String load, int order) {
    loadId = load;
    offOrder = order;
    return this;
  }

  public BundleBuilder size(double length, double width, double height) {
    lengthM = length;
    widthM = width;
    heightM = height;
    return this;
  }

  public BundleBuilder weighing(double kg) {
    weighedKg = OptionalDouble.of(kg);
    return this;
  }

  /** Adds a 0.2 by 0.15 m piece of test wood. */
  public BundleBuilder piece(String wall, int course, int position, double length) {
    return piece(wall, course, position, length, 1);
  }

  public BundleBuilder piece(String wall, int course, int position, double length, int layer) {
    Piece piece =
        new Piece(
            wall + "-C" + course + "-" + position,
            wall,
            course,
            position,
            OptionalDouble.empty(),
            length,
            new Section(0.2, 0.15, 1),
            TEST_WOOD,
            Moisture.of(0),
            OptionalDouble.empty());
    packed.add(new PackedPiece(piece, layer));
    return this;
  }

  public Bundle build() {
    return new Bundle(id, loadId, offOrder, lengthM, widthM, heightM, weighedKg, packed);
  }
}
