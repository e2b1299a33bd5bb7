package skidway.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import skidway.audit.AuditReport;
import skidway.plan.Plan;
import skidway.plan.Task;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.rules.Rule;

/**
 * Writes everything the crew holds as one page: the stack map, what to heed before the first lift,
 * how the spots are set out, the unloading sheet, what to have on site, what is left to people, the
 * figures behind it all, the pull list, the waves, a sign for each stack and pile, a placard for
 * each deck and yard. The page needs no network and runs nothing, so it opens from a phone's file
 * store and prints on any of the usual papers.
 */
public final class Packet {
  private Packet() {}

  /**
   * The page.
   *
   * @param fingerprint of the plan, so that an outdated print is found out
   * @param audit of this very plan
   */
  public static String html(Task task, Plan plan, String fingerprint, AuditReport audit) {
    PaperSize usual = PaperSize.usualWith(task.figures().units());
    return html(task, plan, fingerprint, audit, EnumSet.allOf(Part.class), usual);
  }

  /** The page with some parts only; broken rules, cautions and what has no spot go with each. */
  static String html(
      Task task,
      Plan plan,
      String fingerprint,
      AuditReport audit,
      Set<Part> parts,
      PaperSize paper) {
    List<MapSheet> map =
        parts.contains(Part.MAP) ? StackMap.sheets(task, plan, fingerprint, paper) : List.of();
    return page(task, plan, Optional.empty(), fingerprint, audit, parts, paper, map).forBrowser();
  }

  /**
   * The same, for browsers and for a PDF.
   *
   * @param waves of this very plan; without them their part is left out
   * @param map its pages, drawn before; not looked at when the map is none of the parts
   */
  public static StyledPage page(
      Task task,
      Plan plan,
      Optional<WavePlan> waves,
      String fingerprint,
      AuditReport audit,
      Set<Part> wanted,
      PaperSize paper,
      List<MapSheet> map) {
    Set<Part> parts = EnumSet.copyOf(wanted);
    if (waves.isEmpty()) {
      parts.remove(Part.WAVES);
    }
    RunningHead head = new RunningHead(plan.jobName(), plan.revision(), fingerprint);
    List<StackView> stacks = StackView.of(task, plan);
    Markup page = new Markup();
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", head.words());
    page.open("style").verbatim(StyledPage.STYLE).close().close().line().open("body").line();
    PageTop.write(page, task, plan, head, parts);
    page.open("main").line();
    BrokenRules.write(page, brokenRules(audit));
    if (parts.contains(Part.MAP)) {
      MapSection.write(page, map, StackMap.narrow(task, plan, fingerprint));
    }
    Cautions.write(page, task.site().machine());
    if (parts.contains(Part.SET_OUT)) {
      SetOutSection.write(page, task, plan, head);
    }
    if (parts.contains(Part.UNLOAD)) {
      unload(page, task, plan, head);
    }
    if (parts.contains(Part.SHOP)) {
      ShoppingSection.write(page, task, plan, head);
    }
    if (parts.contains(Part.SETTLE)) {
      OpenMattersLists.write(page, OpenMatters.of(audit));
    }
    if (parts.contains(Part.STACKS)) {
      StacksTable.write(page, task, stacks, audit.stackMargins(), head);
    }
    UnplacedTable.write(page, plan, head);
    if (parts.contains(Part.HOURS)) {
      HoursTable.write(page, task, plan, head);
    }
    if (parts.contains(Part.LIMITS)) {
      MarginsTable.write(page, task, audit.margins(), head);
      SettingsTable.write(page, task, head);
    }
    if (parts.contains(Part.PULL)) {
      List<Wave> brought = waves.map(WavePlan::waves).orElse(List.of());
      PullSection.write(page, task, plan, brought, head);
    }
    if (parts.contains(Part.WAVES)) {
      WaveSheet.write(page, task, plan, waves.orElseThrow());
    }
    if (parts.contains(Part.SIGNS)) {
      StackSigns.write(page, task, plan, audit.stackMargins(), head);
    }
    if (waves.isPresent() && (parts.contains(Part.SIGNS) || parts.contains(Part.WAVES))) {
      PileSigns.write(page, task, waves.get(), PullList.of(task, plan), head);
    }
    if (parts.contains(Part.PLACARDS)) {
      Placards.write(page, task, Placard.of(task, plan, audit), head);
    }
    page.close().line();
    page.leaf("footer", head.words() + ". Full fingerprint of this plan: " + fingerprint);
    page.close().close();
    String signs = SignSizes.rules(stacks, waves.map(PileSigns::layerCounts).orElse(List.of()));
    return new StyledPage(
        "<!DOCTYPE html>\n" + page.done() + "\n",
        PageStyle.packet(paper, signs) + PageStyle.waves(parts),
        PageStyle.packetInPdf(paper, signs) + PageStyle.wavesInPdf(parts));
  }

  private static void unload(Markup page, Task task, Plan plan, RunningHead head) {
    if (task.site().byHand()) {
      HandUnloadingSheet.write(page, task, plan, head);
    } else {
      UnloadingSheet.write(page, task, plan, head);
    }
  }

  /** Which job, revision and plan a page is of, in one line. */
  public static String heading(Plan plan, String fingerprint) {
    return new RunningHead(plan.jobName(), plan.revision(), fingerprint).words();
  }

  /**
   * What the figures on a page do not replace, in one line; first of all whether it may be used.
   */
  public static String caution(Task task, List<String> broken) {
    return broken.isEmpty() ? TagLines.defers(task.site().byHand()) : TagLines.BROKEN;
  }

  /** A sentence for each; bundles without a spot have a table of their own. */
  public static List<String> brokenRules(AuditReport audit) {
    return audit.findings().stream()
        .filter(finding -> finding.rule() != Rule.PLACED)
        .map(finding -> finding.rule().id() + ": " + finding.sentence())
        .toList();
  }
}
