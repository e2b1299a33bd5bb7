package skidway.sheet;

import java.util.List;
import java.util.Locale;
import skidway.plan.Plan;
import skidway.plan.Task;

/** Writes what to have on site before the first truck comes, and what is assumed about it. */
final class ShoppingSection {
  private ShoppingSection() {}

  static void write(Markup page, Task task, Plan plan, RunningHead head) {
    Shopping shopping = Shopping.of(task, plan);
    page.open("section", "id", "shop").leaf("h2", "To have on site");
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "shop",
            "What",
            "Length",
            "Together",
            "Under lowest bundles",
            "Between tiers",
            "Under waiting bundles");
    shopping.bearers().forEach(cut -> row(table, "bearers", cut));
    shopping.rails().forEach(cut -> row(table, "rails of racks", cut));
    table.end();
    shopping.others().forEach(words -> page.leaf("p", capital(words) + "."));
    assumed(shopping).forEach(words -> page.leaf("p", words));
    page.close().line();
  }

  private static void row(SheetTable table, String what, Shopping.Cut cut) {
    table.openRow("cut");
    table.openName("what").text(what).close();
    table.cell("figure", cut.length());
    table.openCell("figure").leaf("b", Integer.toString(cut.together())).close();
    table.cell("figure", count(cut.bottom()));
    table.cell("figure", count(cut.between()));
    table.cell("figure", count(cut.waiting())).close();
  }

  private static String count(int number) {
    return number == 0 ? "–" : Integer.toString(number);
  }

  private static List<String> assumed(Shopping shopping) {
    String timber =
        "Counted as sound timber, "
            + shopping.section()
            + "; with other timber have the job planned again. Rails: two under each rack and two to"
            + " lean against, as long as it; tie the rails before pieces stand at them. Fasten"
            + " covers against wind. What waiting bundles lay on is free again when they are lifted on.";
    String supports =
        shopping.braced().isEmpty()
            ? "No stack is higher than " + shopping.wedgeHeight() + ", so none needs cross supports"
            : "Cross supports or wedges, a set for each stack higher than "
                + shopping.wedgeHeight()
                + ": "
                + String.join(", ", shopping.braced());
    return List.of(timber, supports + ".");
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
