package skidway.sheet;

import java.util.List;
import skidway.plan.Plan;
import skidway.plan.Task;

/**
 * Writes everything the unloading crew holds as one page: the stack map, what to heed before the
 * first lift, the unloading sheet, and the figures behind them. The page needs no network and runs
 * nothing, so it opens from a phone's file store and prints on A4 or Letter.
 */
public final class Packet {
  private Packet() {}

  /**
   * The page.
   *
   * @param fingerprint of the plan, so that an outdated print is found out
   * @param brokenRules what an audit found wrong with the plan, a sentence each
   */
  public static String html(Task task, Plan plan, String fingerprint, List<String> brokenRules) {
    RunningHead head = new RunningHead(plan.jobName(), plan.revision(), fingerprint);
    List<StackView> stacks = StackView.of(task, plan);
    Markup page = new Markup();
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", head.words());
    page.open("style").verbatim(PageStyle.css()).close().close().line().open("body").line();
    PageTop.write(page, task, plan, head);
    page.open("main").line();
    BrokenRules.write(page, brokenRules);
    MapSection.write(page, StackMap.svg(task, plan, fingerprint, Paper.LYING));
    Cautions.write(page, task.site().machine());
    UnloadingSheet.write(page, task, plan, head);
    StacksTable.write(page, task, stacks, head);
    UnplacedTable.write(page, plan, head);
    HoursTable.write(page, task, plan, head);
    MarginsTable.write(page, task, plan, head);
    SettingsTable.write(page, task, head);
    page.close().line();
    page.leaf("footer", head.words() + ". Full fingerprint of this plan: " + fingerprint);
    page.close().close();
    return "<!DOCTYPE html>\n" + page.done() + "\n";
  }
}
