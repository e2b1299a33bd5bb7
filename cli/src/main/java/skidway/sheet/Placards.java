package skidway.sheet;

import java.util.List;
import java.util.Optional;
import skidway.plan.Margin;
import skidway.plan.Task;
import skidway.site.Deck;
import skidway.site.Yard;
import skidway.site.Zone;
import skidway.units.Figures;

/**
 * Writes the placards: one for each deck and yard, on a printed page of its own, to be put up where
 * it applies and read at arm's length.
 */
final class Placards {
  private final Markup page;
  private final Figures figures;

  private Placards(Markup page, Figures figures) {
    this.page = page;
    this.figures = figures;
  }

  static void write(Markup page, Task task, List<Placard> placards, RunningHead head) {
    page.open("section", "id", "placards").leaf("h2", "Placards").line();
    Placards all = new Placards(page, task.figures());
    placards.forEach(placard -> all.placard(placard, head));
    page.close().line();
  }

  private void placard(Placard placard, RunningHead head) {
    Zone zone = placard.zone();
    page.open("article", "class", "placard");
    page.leaf("h3", zone.id());
    page.open("div", "class", "pair");
    pane(allowedOn(zone), figures.pressure(zone.allowedKpa()), about(zone));
    planned(placard);
    page.close().open("dl");
    fact("All that lies here, at most", total(placard), false);
    if (zone instanceof Deck deck) {
      joists("Joists, worst bending", placard.bending(), deck);
      joists("Joists, worst shear", placard.shear(), deck);
    }
    page.close();
    page.leaf("p", "Put nothing here that the plan does not show.", "class", "order");
    page.leaf("p", words(zone));
    page.leaf("p", head.words(), "class", "of").close().line();
  }

  private void pane(String what, String figure, String about) {
    page.open("div").leaf("p", what).leaf("strong", figure).leaf("p", about).close();
  }

  private void planned(Placard placard) {
    if (placard.stacks() == 0 && !placard.waits()) {
      pane("Planned at most", "nothing", "no stack stands here");
    } else if (placard.load().isEmpty()) {
      pane("Planned at most", "not checked", "do not load before it is");
    } else {
      MarginWords words = new MarginWords(placard.load().get(), figures);
      page.open("div", "class", words.broken() ? "bad" : "fine").leaf("p", "Planned at most");
      page.leaf("strong", words.value());
      String much = words.broken() ? "too much, at " : words.taken() + " of it, at ";
      String where = words.margin().where();
      page.leaf("p", much + (placard.whileWaiting() ? waiting(where) : where)).close();
    }
  }

  private static String waiting(String place) {
    return "waiting place " + place + ", for a while";
  }

  private String total(Placard placard) {
    String here = figures.mass(placard.massKg());
    if (placard.zone().totalKg().isEmpty()) {
      return here + ", no total given";
    }
    double mostKg = placard.zone().totalKg().getAsDouble();
    String over = placard.massKg() > mostKg * (1 + 1e-6) ? ", too much" : "";
    return here + " of " + figures.mass(mostKg) + over;
  }

  private void joists(String what, Optional<Margin> margin, Deck deck) {
    if (margin.isEmpty()) {
      boolean known = deck.joists().isPresent();
      fact(what, known ? "none loaded" : "not checked, joists not given", false);
      return;
    }
    MarginWords words = new MarginWords(margin.get(), figures);
    String where = margin.get().where();
    String much = words.taken() + " of what they may bear, at " + where;
    fact(what, words.broken() ? "too much: " + much : much, words.broken());
  }

  private void fact(String what, String value, boolean bad) {
    page.open("div", "class", bad ? "bad" : "fine").leaf("dt", what).leaf("dd", value).close();
  }

  private static String allowedOn(Zone zone) {
    return zone instanceof Deck ? "Allowed on this floor" : "Allowed under bearers";
  }

  private static String about(Zone zone) {
    if (zone instanceof Yard yard) {
      return yard.soil().isEmpty() ? "soil not stated" : yard.soil();
    }
    return "posted allowance";
  }

  private static String words(Zone zone) {
    return zone instanceof Deck
        ? "This does not replace the designer of the floor. A deck still without its bracing carries"
            + " less."
        : "This does not replace the person responsible for the ground. Ground after rain or thaw"
            + " carries less.";
  }
}
