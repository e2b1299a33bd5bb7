package skidway.sheet;

import java.util.List;
import skidway.site.Machine;

/** Writes what must be heeded before the first lift, and who confirmed the machine's chart. */
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

  private Cautions() {}

  static void write(Markup page, Machine machine) {
    page.open("section", "id", "heed").leaf("h2", "Before the first lift");
    page.open("ul");
    TEXTS.forEach(text -> page.leaf("li", text));
    page.close().open("p", "class", "sign");
    page.text("Chart of the " + machine.name() + " confirmed by ");
    if (machine.confirmedBy().isEmpty()) {
      page.leaf("span", "", "class", "blank");
    } else {
      page.leaf("strong", machine.confirmedBy());
    }
    page.text(" on ");
    page.leaf("span", "", "class", "blank short").close().close().line();
  }
}
