package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Footprint;
import skidway.site.Point;

/** Covers a turned rectangle with small upright boxes, so that labels can keep clear of it. */
final class Slices {
  private Slices() {}

  static List<Box> of(Footprint area, Frame frame) {
    double share = Math.abs(area.headingDeg() % 90) < 1e-9 ? 1 : 0;
    int pieces = share == 1 ? 1 : (int) Math.ceil(area.lengthM() / area.widthM()) * 2;
    List<Box> boxes = new ArrayList<>();
    double partM = area.lengthM() / pieces;
    for (int i = 0; i < pieces; i++) {
      Point middle = area.centre().plus(area.along().times(partM * (i + 0.5) - area.lengthM() / 2));
      Footprint part = new Footprint(middle, area.headingDeg(), partM, area.widthM());
      boxes.add(Box.of(frame.at(part.outline())));
    }
    return boxes;
  }
}
