package skidway.demo;

import java.util.List;

/**
 * A bundle as the mill bands it: timbers laid side by side, a layer at a time from the bottom.
 *
 * @param wide timbers in a full layer
 */
record MillBundle(String id, String load, int offOrder, int wide, List<Timber> timbers) {
  MillBundle {
    timbers = List.copyOf(timbers);
  }

  int layerOf(int index) {
    return index / wide + 1;
  }

  int layers() {
    return layerOf(timbers.size() - 1);
  }

  int length() {
    return timbers.stream().mapToInt(Timber::length).max().orElseThrow();
  }

  int height() {
    return layers() * timbers.get(0).height();
  }

  int width(House house) {
    return Math.min(wide, timbers.size()) * house.thickness();
  }

  MillBundle onTruck(String bundleId, String loadId, int turn) {
    return new MillBundle(bundleId, loadId, turn, wide, timbers);
  }
}
