package skidway.shakeout;

import java.util.List;

/** What one wave could be: its piles and what all pieces of its courses cost then. */
record WaveDraft(int from, int to, List<PileDraft> piles, Cost cost) {
  WaveDraft {
    piles = List.copyOf(piles);
  }

  int trips() {
    return piles.stream().mapToInt(pile -> pile.trips().size()).sum();
  }
}
