package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.audit.AuditReport;
import skidway.audit.Finding;

/**
 * What a plan leaves to people: what no plan can settle, and what could not be checked because
 * nobody wrote it down.
 *
 * @param toSettle notes with the rule's id before them, then the site's own matters
 * @param notChecked what is missing, a sentence each
 */
public record OpenMatters(List<String> toSettle, List<String> notChecked) {
  private static final String NOT_CHECKED = "Not checked: ";

  public OpenMatters {
    toSettle = List.copyOf(toSettle);
    notChecked = List.copyOf(notChecked);
  }

  public static OpenMatters of(AuditReport audit) {
    List<String> toSettle = new ArrayList<>();
    List<String> notChecked = new ArrayList<>();
    for (Finding note : audit.notes()) {
      toSettle.add(note.rule().id() + ": " + note.sentence());
    }
    for (String remark : audit.remarks()) {
      if (remark.startsWith(NOT_CHECKED)) {
        notChecked.add(remark.substring(NOT_CHECKED.length()));
      } else {
        toSettle.add(remark);
      }
    }
    return new OpenMatters(toSettle, notChecked);
  }
}
