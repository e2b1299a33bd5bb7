package skidway.erection;

import java.util.Random;
import skidway.site.Starter;

/**
 * Invents houses of 2 to 4 walls round a 4 by 3 m rectangle, of 2 to 4 courses with joints
 * anywhere.
 */
final class SmallHouses {
  private SmallHouses() {}

  static DrawnHouse house(Random random, int mostPieces) {
    DrawnHouse house = new DrawnHouse();
    int walls = 2 + random.nextInt(3);
    int courses = 2 + random.nextInt(3);
    char[] next = {'A'};
    int spare = mostPieces - walls * courses;
    double[][] corners = {{0, 0}, {4, 0}, {4, 3}, {0, 3}, {0, 0}};
    for (int w = 0; w < walls; w++) {
      int cells = w % 2 == 0 ? 8 : 6;
      StringBuilder rows = new StringBuilder();
      for (int c = 0; c < courses; c++) {
        boolean joint = spare > 0 && random.nextBoolean();
        spare -= joint ? 1 : 0;
        int left = joint ? 1 + random.nextInt(cells - 1) : cells;
        // Now and then nothing lies right of the joint, as beside a gable.
        boolean right = joint && random.nextInt(4) > 0;
        rows.append(String.valueOf(next[0]++).repeat(left));
        rows.append(right ? String.valueOf(next[0]++).repeat(cells - left) : "").append('\n');
      }
      house.wall(
          "W" + (w + 1),
          corners[w][0],
          corners[w][1],
          corners[w + 1][0],
          corners[w + 1][1],
          random.nextInt(3) > 0 == (w % 2 == 0) ? Starter.FULL : Starter.HALF,
          rows.toString());
    }
    return house;
  }
}
