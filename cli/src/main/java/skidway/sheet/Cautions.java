package skidway.sheet;

import java.util.List;
import skidway.site.Machine;

/**
 * Writes what must be heeded before the first lift, and who confirmed the machine's chart if there
 * is one.
 */
final class Cautions {
  private static final List<String> TEXTS =
      List.of(
          "The chart on the machine itself governs. Figures here were typed in from it. Count forks,"
              + " slings and attachment as part of the load, and go to the next larger reach, never"
              + " between two rows.",
          "Weights are worked out from size, species and moisture unless weighed, and each is the most"
              + " to expect; icy timber weighs more. When a lift feels heavy, put it down and weigh it.",
          "What a floor may carry is for its designer to say, what the ground may carry for the site"
              + " lead. Decks still without their bracing, and ground after rain, carry less.",
          "Local codes, the site's own rules and the judgement of licensed people go before"
              + " this sheet.",
          "Nobody stands under a load, beside a hanging one, or between a load and a wall or stack."
              + " One person signals. No sight, no lift.",
          "Bearers lie in line above each other, level, on firm ground. See that each tier lies still"
              + " before letting go.",
          "Cut bands standing to the side: they spring. Re-band or wedge what stays in an opened"
              + " bundle before leaving it.",
          "When anything differs from this sheet, a bundle, the order, the ground, stop, ask the site"
              + " lead and write it down here.");

  /** Where people carry every timber (common practice). */
  private static final List<String> BY_HAND =
      List.of(
          "Nobody lifts alone what a sheet gives to more people, and nobody lifts by hand what it"
              + " gives to a device. One person calls: up together, walk together, down together.",
          "Weights are worked out from size, species and moisture unless weighed, and each is the most"
              + " to expect; icy timber weighs more. When a timber feels heavy, put it down and get"
              + " more people.",
          "Before bands are cut on the truck, see that the load lies still without them; chock or"
              + " wedge what could roll. Stand to the side: bands spring. Nobody is below the side"
              + " where one is cut.",
          "Timbers come off from the top layer only. Nobody climbs on the load or on a stack, and"
              + " nobody stands under a timber that is handed down.",
          "Timbers in a stack have no bands: lay each layer tight and level, bearers in line above"
              + " each other on firm ground, wedges at the outer ones. Before going on, see that the"
              + " layer lies still.",
          "Keep the way from the truck free and dry, wear gloves and boots, change places, rest."
              + " Hours here count no rest.",
          "What a floor may carry is for its designer to say, what the ground may carry for the site"
              + " lead. Decks still without their bracing, and ground after rain, carry less.",
          "Local codes, the site's own rules and the judgement of licensed people go before"
              + " this sheet.",
          "When anything differs from this sheet, a bundle, the order, the ground, stop, ask the site"
              + " lead and write it down here.");

  private Cautions() {}

  static void write(Markup page, Machine machine) {
    page.open("section", "id", "heed").leaf("h2", "Before the first lift");
    page.open("ul");
    (machine.isNone() ? BY_HAND : TEXTS).forEach(text -> page.leaf("li", text));
    page.close();
    if (!machine.isNone()) {
      confirmed(page, machine);
    }
    page.close().line();
  }

  private static void confirmed(Markup page, Machine machine) {
    page.open("p", "class", "sign");
    page.text("Chart of the " + machine.name() + " confirmed by ");
    if (machine.confirmedBy().isEmpty()) {
      page.leaf("span", "", "class", "blank");
    } else {
      page.leaf("strong", machine.confirmedBy());
    }
    page.text(" on ");
    page.leaf("span", "", "class", "blank short").close();
  }
}
