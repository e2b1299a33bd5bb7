package skidway.sheet;

import java.util.List;

/** The drawings that tests of all drawings look at: a usual site, a spiteful one, one bundle. */
final class Drawings {
  static final List<String> ALL =
      List.of(
          StackMap.svg(SampleHouse.task(), SampleHouse.plan(), "a1b2c3d4e5f6", Paper.LYING),
          StackMap.siteOnly(SampleHouse.task(), Paper.LYING),
          StackMap.svg(UglySite.task(40), UglySite.plan(40), "", Paper.LYING),
          StackMap.svg(UglySite.task(1), UglySite.plan(1), "", Paper.LYING));

  private Drawings() {}
}
