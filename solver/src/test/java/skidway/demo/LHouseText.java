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
        "boundary": [[14, 3], [96, 3], [96, 60], [90, 67], [14, 67]],
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
           ]}
        ],
        "yards": [
          {"id": "south", "outline": [[24, 14], [74.5, 14], [74.5, 22.5], [24, 22.5]], "allowed": "1000 psf"},
          {"id": "east", "outline": [[83, 23], [92.5, 23], [92.5, 57], [83, 57]], "allowed": "1000 psf"}
        ],
        "lanes": [
          {"id": "drive", "line": [[51.5, 13], [51.5, 26]], "width": "8 ft"},
          {"id": "side drive", "line": [[78.75, 4], [78.75, 54]], "width": "8 ft"}
        ],
        "keepClears": [
          {"id": "trench", "outline": [[22, 3], [24, 3], [24, 40], [22, 40]], "margin": "3 ft",
           "reason": "open water and sewer trench", "walkable": false},
          {"id": "tree", "outline": [[93, 44.5], [94, 45.5], [94, 46.5], [93, 47.5], [92, 47.5], [91, 46.5], [91, 45.5], [92, 44.5]],
           "margin": "3 ft", "reason": "old oak, nothing on its roots", "walkable": false}
        ],
        "truckStands": [
          {"id": "street", "centre": [52, 8], "heading": 0, "length": "32 ft", "width": "8 ft 6 in"}
        ],
        "machine": {
          "name": "telehandler on site",
          "stands": [
            {"id": "M1", "at": [32, 9]},
            {"id": "M2", "at": [51.5, 18]},
            {"id": "M3", "at": [78.75, 20]},
            {"id": "M4", "at": [78.75, 50]}
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
      side drive, one east of the drive around an old oak, and a deck with a stair opening. Two
      trucks come a day apart. The telehandler's chart, the floor's 50 psf and the ground's 1000 psf
      are made up for the demo; on a real job they are the machine's own plate and what the designers
      of floor and ground allow. The deck edge setback is 4 ft instead of the published 10 ft because
      the site lead decided on a guard barricade along the edge.
      """;

  private LHouseText() {}
}
