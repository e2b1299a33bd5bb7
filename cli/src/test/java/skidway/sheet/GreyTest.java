package skidway.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Looks at the signs of the map without their colours: none may be taken for another. */
class GreyTest {
  private static final Box SIGN = Box.at(0.5, 0.5, 9, 4);

  /** Share of a picture's dots that must differ clearly; an assumption. */
  private static final double LEAST_SHARE = 0.02;

  private static final int CLEARLY = 64;

  private static Map<String, LegendEntry.Symbol> signs() {
    Map<String, LegendEntry.Symbol> all = new LinkedHashMap<>();
    for (int turn = 1; turn <= LoadLook.values().length; turn++) {
      int load = turn;
      all.put("load " + turn, (d, box) -> LoadLook.fill(d, load, box.corners()));
    }
    all.put("unknown load", (d, box) -> LoadLook.fill(d, 0, box.corners()));
    all.put("rack", LegendSigns::rack);
    all.put("waiting", LegendSigns::waiting);
    all.put("full wall", LegendSigns::fullWall);
    all.put("half wall", LegendSigns::halfWall);
    all.put("door", LegendSigns::door);
    all.put("window", LegendSigns::window);
    all.put("opening", LegendSigns::opening);
    all.put("keep clear", LegendSigns::keepClear);
    all.put("excavation", LegendSigns::excavation);
    all.put("overhead line", LegendSigns::overheadLine);
    all.put("lane", LegendSigns::lane);
    all.put("yard", LegendSigns::yard);
    all.put("deck", LegendSigns::joists);
    all.put("besides", LegendSigns::besides);
    all.put("machine", LegendSigns::machine);
    all.put("corner", LegendSigns::tapeCorner);
    return all;
  }

  @Test
  void noSignIsTakenForAnotherWithoutColour() throws Exception {
    Map<String, BufferedImage> pictures = new LinkedHashMap<>();
    for (Map.Entry<String, LegendEntry.Symbol> sign : signs().entrySet()) {
      Markup page = new Markup();
      page.open("svg");
      sign.getValue().draw(new Drawing(page), SIGN);
      page.close();
      pictures.put(sign.getKey(), GreyPicture.of(SvgText.parse(page.done()), 10, 5));
    }
    List<String> alike = new ArrayList<>();
    List<String> names = new ArrayList<>(pictures.keySet());
    for (int i = 0; i < names.size(); i++) {
      for (String other : names.subList(i + 1, names.size())) {
        double share = apart(pictures.get(names.get(i)), pictures.get(other));
        if (share < LEAST_SHARE) {
          alike.add(names.get(i) + " and " + other + ": " + share);
        }
      }
    }
    assertThat(alike).isEmpty();
  }

  private static double apart(BufferedImage one, BufferedImage other) {
    int differ = 0;
    for (int x = 0; x < one.getWidth(); x++) {
      for (int y = 0; y < one.getHeight(); y++) {
        int a = one.getRGB(x, y) & 0xff;
        int b = other.getRGB(x, y) & 0xff;
        differ += Math.abs(a - b) > CLEARLY ? 1 : 0;
      }
    }
    return (double) differ / (one.getWidth() * one.getHeight());
  }
}
