package skidway.survey;

/**
 * What is asked about, in the order in which it is asked: each answer becomes one line that begins
 * with the topic's words.
 */
enum Topic {
  UNITS(
      "units ",
      Times.ONCE,
      "us",
      "us",
      "Units of bare numbers, us or metric?",
      "us: feet, pounds, psf. metric: metres, kilograms, kPa. A unit may stand beside any figure."),
  NAME(
      "name ",
      Times.ONCE,
      "",
      "Two Herons lot 7",
      "What is the site called?",
      "The name stands on every page."),
  NORTH(
      "north ",
      Times.ONCE,
      "up",
      "up",
      "Where is north on the drawing, up, right, down or left?",
      "Or degrees counter-clockwise from the right: 75 is north a little to the right of up."),
  COURSE(
      "course ",
      Times.ONCE,
      "",
      "6\"",
      "How high is one course of timbers?",
      "The height of a full timber as it lies in the wall."),
  WALLS(
      "walls thick ",
      Times.ONCE,
      "",
      "6\"",
      "How thick are the outer walls?",
      "Lengths are then taped along the outside. Add \"taped centre\" if they are not."),
  WALL(
      "wall W# ",
      Times.UNTIL_DONE,
      "",
      "east 28'",
      "Wall W#: which way, how long? \"close\" goes back to the start, \"done\" after the last one",
      "Walk round the house with it on your left. north, east ..., N 30 E, turn left, turn right by"
          + " 45; then the length along the outside. Taping the last wall too checks the others."),
  DOOR(
      "door D# in ",
      Times.UNTIL_NONE,
      "none",
      "W1 10' from left wide 3' head 6'8\"",
      "Door D#: in which wall, where, how wide, how high?",
      "Distances count from the wall's left end seen from outside; or from right, or middle."),
  WINDOW(
      "window N# in ",
      Times.UNTIL_NONE,
      "none",
      "W2 middle wide 4' sill 3' head 6'8\"",
      "Window N#: in which wall, where, how wide, sill and head?",
      "Sill and head count from the wall's foot."),
  DECK(
      "deck deck under house high ",
      Times.AT_MOST_ONCE,
      "none",
      "2' floor 50 psf",
      "Deck under the house: how high above the ground, and what may it bear?",
      "What a floor may bear is for its designer to say. none, if stacks stay off it."),
  STEPS(
      "steps S# onto deck at ",
      Times.UNTIL_NONE,
      "none",
      "W1 10' from left run 3' wide 3'",
      "Steps S# onto the deck: at which wall, where, how far out, how wide?",
      "run: how far the foot of the steps is from the deck's edge."),
  YARD(
      "yard Y# ",
      Times.UNTIL_NONE,
      "none",
      "12' off W1 full length wide 10' soil clay",
      "Yard Y#: how far off which wall, how long, how wide, what ground?",
      "Ground that is even and firm: soil gravel, sand or clay, or bears 1000 psf. Wide is measured"
          + " away from the wall. Instead of full length: 6' from left long 30'."),
  LANE(
      "lane L# ",
      Times.UNTIL_NONE,
      "none",
      "3' off W3 full length wide 5'",
      "Lane L# to keep open: off which wall, or from where to where, how wide?",
      "Or: from 20' off W1 middle to 60' off W1 middle wide 10'."),
  TRUCK(
      "truck T# ",
      Times.ONE_OR_MORE,
      "none",
      "30' off W1 middle long 30' wide 9'",
      "Truck stand T#: how far off which wall, where along it, how long and wide?",
      "Along the wall; add \"square\" if it stands square to it."),
  MACHINE(
      "machine ",
      Times.AT_MOST_ONCE,
      "",
      "telehandler",
      "What machine unloads?",
      "Its name, as the crew calls it; none if people carry every timber off the truck."),
  STAND(
      "stand M# ",
      Times.ONE_OR_MORE,
      "none",
      "22' off W1 middle",
      "Machine stand M#: how far off which wall, where along it?",
      "Where it puts bundles down from."),
  CHART(
      "chart ",
      Times.ONCE,
      "",
      "10' 7000 lb, 20' 4500 lb, 30' 2400 lb",
      "Its load chart: reach and capacity, row by row?",
      "Copy it from the plate on the machine itself; that plate governs."),
  BOUNDARY(
      "boundary around ",
      Times.ONCE,
      "",
      "30'",
      "How much ground round all this belongs to the site?",
      "A rectangle round everything, this much larger on each side. Nothing is put down beyond it."),
  MORE(
      "",
      Times.UNTIL_NONE,
      "none",
      "tree oak 15' off W2 6' from left radius 3' margin 3'",
      "Anything else: a tree, trench, wire, keep, hole, joists, partition? One line each",
      "trench T1 12' off W4 full length wide 4' deep 4'; wire street 40' off W1 voltage 7.2 kV.");

  /** How often a topic is asked about. */
  enum Times {
    ONCE,
    AT_MOST_ONCE,
    ONE_OR_MORE,
    UNTIL_NONE,
    UNTIL_DONE
  }

  private final String begin;
  private final Times times;
  private final String usual;
  private final String example;
  private final String words;
  private final String help;

  Topic(String begin, Times times, String usual, String example, String words, String help) {
    this.begin = begin;
    this.times = times;
    this.usual = usual;
    this.example = example;
    this.words = words;
    this.help = help;
  }

  Times times() {
    return times;
  }

  Question question(int number) {
    boolean needed = times == Times.ONE_OR_MORE && number == 1;
    return new Question(numbered(words, number), needed ? "" : usual, example, help);
  }

  /** How the line of an answer begins. */
  String begin(int number) {
    return numbered(begin, number);
  }

  /** The line that says that there is no more of it. */
  String noMore() {
    return "# no more of: " + name().toLowerCase(java.util.Locale.ROOT);
  }

  private static String numbered(String text, int number) {
    return text.replace("#", Integer.toString(number));
  }
}
