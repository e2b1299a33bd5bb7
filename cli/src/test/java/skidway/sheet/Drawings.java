package skidway.sheet;

import java.util.List;
import java.util.stream.Stream;

/** The drawings that tests of all drawings look at: a usual site, a spiteful one, one bundle. */
final class Drawings {
  static final List<String> ALL =
      Stream.of(
              StackMap.sheets(SampleHouse.task(), SampleHouse.plan(), "a1b2c3", PaperSize.LETTER),
              StackMap.sheets(SampleHouse.task(), SampleHouse.plan(), "a1b2c3", PaperSize.A3),
              StackMap.narrow(SampleHouse.task(), SampleHouse.plan(), "a1b2c3"),
              List.of(StackMap.siteOnly(SampleHouse.task(), Paper.LYING)),
              StackMap.sheets(UglySite.task(40), UglySite.plan(40), "", PaperSize.A4),
              StackMap.narrow(UglySite.task(40), UglySite.plan(40), ""),
              StackMap.sheets(UglySite.task(1), UglySite.plan(1), "", PaperSize.A4))
          .flatMap(List::stream)
          .map(MapSheet::svg)
          .toList();

  private Drawings() {}
}
