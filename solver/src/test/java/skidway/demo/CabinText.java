package skidway.demo;

/** Holds what the site lead of the cabin wrote down. */
final class CabinText {
  static final String JOB =
      """
      {
        "format": 1,
        "name": "Cabin at Fernhollow",
        "units": "metric",
        "settings": {}
      }
      """;

  static final String SITE =
      """
      {
        "format": 1,
        "name": "Fernhollow clearing",
        "north": 90,
        "course": "@course@",
        "boundary": [[3, 0], [26, 0], [26, 21], [3, 21]],
        "walls": [
      @walls@
        ],
        "decks": [
          {"id": "deck", "height": 0.5, "allowed": 2.4,
           "outline": [[9.925, 11.925], [17.275, 11.925], [17.275, 18.075], [9.925, 18.075]],
           "openings": [],
           "steps": [{"id": "steps", "foot": [13.5, 11], "top": [13.5, 12.5], "width": 1}]}
        ],
        "yards": [
          {"id": "yard", "outline": [[4, 4], [25, 4], [25, 10.4], [4, 10.4]],
           "soil": "gravel", "allowed": 50, "slope": "3 %"}
        ],
        "lanes": [
          {"id": "path", "line": [[13.5, 4], [13.5, 11]], "width": 1.2}
        ],
        "keepClears": [
          {"id": "well", "outline": [[22, 14], [23, 14], [23, 15], [22, 15]], "margin": 1.5,
           "reason": "well with its cover", "walkable": false}
        ],
        "truckStands": [
          {"id": "track", "centre": [15, 1.8], "heading": 0, "length": 10, "width": 2.6}
        ],
        "machine": {
          "name": "crane on the truck",
          "grip": {"kind": "slings", "angle": 60, "leg": 1000},
          "rigging": 35,
          "stands": [{"id": "crane", "at": [13, 1.8]}],
          "chart": [
            {"reach": 4, "capacity": 3400},
            {"reach": 8, "capacity": 1600},
            {"reach": 12, "capacity": 1000},
            {"reach": 16, "capacity": 700}
          ]
        },
        "spots": []
      }
      """;

  static final String LOADS =
      """
      load,arrival,truck_stand
      L1,2031-06-10T08:00,track
      L2,2031-06-10T13:00,track
      """;

  static final String ABOUT =
      """
      Invented demo job. A cabin of 150 by 200 mm eastern white pine timbers, twelve courses high, in
      a clearing with plenty of yard. A truck with its own crane comes twice on one day. All settings
      are the defaults: the deck is too small to stand stacks 3.05 m back from its edge, so everything
      goes to the yard. The crane's chart and the loads that deck and ground may carry are made up for
      the demo; on a real job they are the machine's own plate and what the designers allow.
      """;

  private CabinText() {}
}
