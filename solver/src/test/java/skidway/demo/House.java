package skidway.demo;

import java.util.List;

/**
 * Describes a house as its maker would: walls, course height, section, longest timber. All lengths
 * in ticks of its ruler.
 *
 * @param walls counter-clockwise seen from above
 * @param course height of a full course, which is also the section's height
 * @param courses full courses of a wall with a full starter; a wall with a half one has a half
 *     course at its foot and another at its top instead of one of them
 * @param thickness of the walls, which is also the section's width
 * @param longest longest timber the mill ships
 * @param shortest shortest timber the mill cuts where it may choose
 * @param step grid of lengths on which the mill sets joints
 */
record House(
    Ruler ruler,
    List<HouseWall> walls,
    int course,
    int courses,
    int thickness,
    int longest,
    int shortest,
    int step,
    String species,
    double moisturePct) {
  House {
    walls = List.copyOf(walls);
  }
}
