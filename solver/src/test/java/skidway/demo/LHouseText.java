package skidway.demo;

/** Holds what the site lead of the L-shaped house wrote down. */
final class LHouseText {
  static final String JOB =
      """
      {
        "format": 1,
        "name": "House at Two Herons",
        "units": "us",
        "settings": {
          "deckEdgeSetback": {"value": "4 ft", "reason": "guard barricade along the deck edge, decided by the site lead"},
          "bearerReach": {"value": "1 ft", "reason": "bearers run across the joists and 1 ft past the stack on both sides, agreed with the floor's designer"}
        }
      }
      """;

  static final String SITE =
      """
      {
        "format": 1,
        "name": "Two Herons, lot 7",
        "north": 75,
        "course": "@course@",
        "boundary": [[14, 3], [99, 3], [99, 60], [93, 67], [14, 67]],
        "walls": [
      @walls@
        ],
        "decks": [
          {"id": "deck", "height": "2 ft", "allowed": "50 psf",
           "outline": [[29.75, 27.75], [74.25, 27.75], [74.25, 44.25], [56.25, 44.25], [56.25, 60.25], [29.75, 60.25]],
           "openings": [{"id": "stair", "outline": [[31, 44], [34.5, 44], [34.5, 54], [31, 54]]}],
           "steps": [
             {"id": "front steps", "foot": [51.5, 25], "top": [51.5, 29.5], "width": "3 ft"},
             {"id": "back steps", "foot": [68.5, 47], "top": [68.5, 42.5], "width": "3 ft"}
           ],
           "joists": {"direction": 90, "spacing": "16 in", "first": [29.75, 27.75],
            "supports": [[29.75, 27.75], [29.75, 36], [29.75, 44.25], [29.75, 52.25], [29.75, 60.25]],
            "live": "50 psf"}}
        ],
        "yards": [
          {"id": "south", "outline": [[24, 14], [74.5, 14], [74.5, 22.5], [24, 22.5]],
           "soil": "clay", "allowed": "1000 psf", "slope": "2 %"},
          {"id": "east", "outline": [[86, 23], [95.5, 23], [95.5, 57], [86, 57]],
           "soil": "clay", "allowed": "1000 psf", "slope": "3 %"}
        ],
        "lanes": [
          {"id": "drive", "line": [[51.5, 13], [51.5, 26]], "width": "11 ft"},
          {"id": "side drive", "line": [[80, 4], [80, 54]], "width": "11 ft"}
        ],
        "keepClears": [
          {"id": "trench", "outline": [[22, 3], [24, 3], [24, 40], [22, 40]], "margin": "3 ft",
           "reason": "open water and sewer trench", "walkable": false, "excavation": true, "depth": "4 ft"},
          {"id": "tree", "outline": [[96, 44.5], [97, 45.5], [97, 46.5], [96, 47.5], [95, 47.5], [94, 46.5], [94, 45.5], [95, 44.5]],
           "margin": "3 ft", "reason": "old oak, nothing on its roots", "walkable": false}
        ],
        "truckStands": [
          {"id": "street", "centre": [52, 8], "heading": 0, "length": "32 ft", "width": "8 ft 6 in"}
        ],
        "overheadLines": [
          {"id": "street line", "from": [0, -14], "to": [120, -14], "voltage": "7.2 kV"}
        ],
        "machine": {
          "name": "telehandler with a hook",
          "grip": {"kind": "slings", "angle": 60, "leg": "2000 lb"},
          "rigging": "60 lb",
          "width": "7 ft 6 in",
          "stands": [
            {"id": "M1", "at": [32, 9]},
            {"id": "M2", "at": [51.5, 18], "lane": "drive"},
            {"id": "M3", "at": [80, 20], "lane": "side drive"},
            {"id": "M4", "at": [80, 50], "lane": "side drive"}
          ],
          "chart": [
            {"reach": "10 ft", "capacity": "7000 lb"},
            {"reach": "20 ft", "capacity": "4500 lb"},
            {"reach": "30 ft", "capacity": "2400 lb"},
            {"reach": "40 ft", "capacity": "1200 lb"}
          ]
        },
        "spots": []
      }
      """;

  static final String LOADS =
      """
      load,arrival,truck_stand
      L1,2031-05-05T08:00,street
      L2,2031-05-06T08:00,street
      """;

  static final String ABOUT =
      """
      Invented demo job. An L-shaped house of 6 by 8 in lodgepole pine timbers, sixteen courses
      high, on a lot with little room: one strip of yard south of it between an open trench and the
      side drive, one east of the drive around an old oak, and a deck with a stair opening. A power
      line runs along the street. Two trucks come a day apart. The telehandler's chart, its slings,
      the floor's 50 psf with its joists and the ground's 1000 psf are made up for the demo; on a real
      job they are the machine's own plate and what the designers of floor and ground allow. The deck
      edge setback is 4 ft instead of the published 10 ft because the site lead decided on a guard
      barricade along the edge.
      """;

  private LHouseText() {}
}
