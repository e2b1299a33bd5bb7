package skidway.sheet;

import java.util.List;
import java.util.Set;
import skidway.plan.Plan;
import skidway.plan.Step;
import skidway.plan.Task;
import skidway.timber.Piece;

/** Writes the page's heading, the ways into it and the plan in a few figures. */
final class PageTop {
  private PageTop() {}

  static void write(Markup page, Task task, Plan plan, RunningHead head, Set<Part> parts) {
    page.open("header").open("div", "class", "job");
    page.leaf("h1", head.jobName()).leaf("p", task.site().name()).close();
    page.open("p", "class", "revision").text("revision");
    page.leaf("strong", Integer.toString(head.revision()));
    page.leaf("code", Fingerprints.brief(head.fingerprint())).close().close().line();
    page.open("nav", "aria-label", "parts of this page");
    page.leaf("a", "Heed first", "href", "#heed");
    way(page, parts, Part.MAP, "#map", "Map");
    way(page, parts, Part.SET_OUT, "#set-out", "Set out");
    way(page, parts, Part.UNLOAD, "#unload", "Unload");
    way(page, parts, Part.SHOP, "#shop", "Have on site");
    way(page, parts, Part.SETTLE, "#settle", "Settle");
    way(page, parts, Part.SETTLE, "#unchecked", "Not checked");
    way(page, parts, Part.STACKS, "#stacks", "Stacks");
    way(page, parts, Part.HOURS, "#hours", "Hours");
    way(page, parts, Part.LIMITS, "#limits", "Limits");
    way(page, parts, Part.PULL, "#pull", "Pull list");
    way(page, parts, Part.WAVES, "#waves", "Waves");
    way(page, parts, Part.SIGNS, "#signs", "Signs");
    way(page, parts, Part.PLACARDS, "#placards", "Placards");
    page.close().line();
    facts(page, task, plan);
  }

  private static void way(Markup page, Set<Part> parts, Part part, String to, String words) {
    if (parts.contains(part)) {
      page.leaf("a", words, "href", to);
    }
  }

  private static void facts(Markup page, Task task, Plan plan) {
    int bundles = task.delivery().bundles().size();
    long placed = plan.stacks().stream().mapToLong(s -> s.bundleIds().size()).sum();
    page.open("dl", "class", "facts");
    fact(page, "bundles with a spot", placed + " of " + bundles, placed < bundles);
    if (task.site().byHand()) {
      carried(page, task, plan);
    } else {
      lifted(page, task, plan);
    }
    fact(page, "crew time", task.figures().hours(plan.effort().totalS()), false);
    plan.proof()
        .ifPresent(proof -> fact(page, ProofWords.name(proof), ProofWords.brief(proof), false));
    page.close().line();
  }

  private static void lifted(Markup page, Task task, Plan plan) {
    long setDown = plan.steps().stream().filter(s -> s.kind().waits()).count();
    double heaviestKg = plan.steps().stream().mapToDouble(Step::massKg).max().orElse(0);
    fact(page, "lifts", Integer.toString(plan.steps().size()), false);
    fact(page, "set down on the way", Long.toString(setDown), false);
    fact(page, "heaviest lift, at most", task.figures().mass(heaviestKg), false);
  }

  private static void carried(Markup page, Task task, Plan plan) {
    Team team = new Team(task.settings());
    List<Piece> pieces = HandUnloadingSheet.carried(task, plan);
    long devices = pieces.stream().filter(team::needsDevice).count();
    double heaviestKg = pieces.stream().mapToDouble(p -> p.mass().highKg()).max().orElse(0);
    fact(page, "timbers carried off by hand", Integer.toString(pieces.size()), false);
    fact(page, "of them too heavy for people", Long.toString(devices), devices > 0);
    fact(page, "heaviest timber, at most", task.figures().mass(heaviestKg), false);
  }

  private static void fact(Markup page, String name, String value, boolean bad) {
    page.open("div", "class", bad ? "bad" : "fine").leaf("dt", name).leaf("dd", value).close();
  }
}
