package skidway;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import skidway.erection.HoldPoint;
import skidway.erection.Placement;
import skidway.erection.Precedence;
import skidway.erection.PullOrder;
import skidway.erection.Timetable;
import skidway.plan.Start;
import skidway.plan.Task;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.Load;

/**
 * A turn of events that loads may take: how late each is, and what the crew then does. A crew that
 * runs out of pieces before a late load is there lays what can be laid without it, in the pull
 * order, and the rest after it; so its pull list is another one, and so are the hours of a plan.
 *
 * @param names of the cases that come to the same pull list, as "L2 3 days late"
 * @param task the job with the loads and the pull list of this case
 * @param lostS working time without a piece to lay, seconds; mean over the cases
 */
public record Scenario(List<String> names, Task task, double lostS) {
  public Scenario {
    names = List.copyOf(names);
  }

  /** How many of the equally likely cases it stands for. */
  public int cases() {
    return names.size();
  }

  /**
   * All cases, those with the same pull list and order of trucks put together, the case in which
   * nothing is late first.
   */
  static List<Scenario> all(Task task, List<Lateness> lates) {
    Precedence precedence =
        Precedence.of(task.site(), PullOrder.of(task.site(), task.delivery().pieces()));
    List<Map<String, Integer>> cases = new ArrayList<>();
    cases.add(new TreeMap<>());
    for (Lateness late : lates) {
      List<Map<String, Integer>> more = new ArrayList<>();
      for (Map<String, Integer> before : cases) {
        for (int days = late.leastDays(); days <= late.mostDays(); days++) {
          Map<String, Integer> with = new TreeMap<>(before);
          with.put(late.loadId(), days);
          more.add(with);
        }
      }
      cases = more;
    }
    Map<List<Object>, Scenario> bySame = new LinkedHashMap<>();
    for (Map<String, Integer> days : cases) {
      Scenario one = of(task, precedence, days);
      bySame.merge(one.key(), one, Scenario::and);
    }
    return List.copyOf(bySame.values());
  }

  private List<Object> key() {
    List<Load> loads = task.delivery().loads();
    List<String> order = loads.stream().map(Load::id).toList();
    return task.schedule().stated()
        ? List.of(task.start().held(), order, loads)
        : List.of(task.start().held(), order);
  }

  private Scenario and(Scenario other) {
    List<String> all = Stream.concat(names.stream(), other.names.stream()).toList();
    double meanS = (lostS * cases() + other.lostS * other.cases()) / all.size();
    return new Scenario(all, task, meanS);
  }

  private static Scenario of(Task task, Precedence precedence, Map<String, Integer> days) {
    List<Load> loads =
        task.delivery().loads().stream()
            .map(
                l ->
                    new Load(
                        l.id(),
                        l.arrival().plusDays(days.getOrDefault(l.id(), 0)),
                        l.truckStandId()))
            .sorted(Comparator.comparing(Load::arrival))
            .toList();
    Delivery delivery = new Delivery(loads, task.delivery().bundles());
    Set<String> late =
        days.entrySet().stream()
            .filter(e -> e.getValue() > 0)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    Set<String> present = new HashSet<>();
    for (Bundle bundle : delivery.bundles()) {
      if (!late.contains(bundle.loadId())) {
        bundle.pieces().forEach(piece -> present.add(piece.mark()));
      }
    }
    HoldPoint hold = HoldPoint.of(precedence, Set.of(), present);
    LocalDateTime here =
        loads.stream()
            .filter(l -> late.contains(l.id()))
            .map(Load::arrival)
            .min(LocalDateTime::compareTo)
            .orElse(LocalDateTime.MIN);
    boolean held = !hold.isFree() && here.isAfter(out(task, hold.asPlanned()));
    Set<String> waits =
        held
            ? Stream.concat(hold.waiting().stream(), hold.missing().stream())
                .map(p -> p.piece().mark())
                .collect(Collectors.toSet())
            : Set.of();
    LocalDateTime end = out(task, hold.resequenced());
    double lostS =
        held && here.isAfter(end)
            ? task.schedule().calendar().workBetween(end, here).toSeconds()
            : 0;
    Start start = new Start(List.of(), Map.of(), List.of(), Set.of(), waits);
    Task then =
        new Task(
            task.jobName(),
            task.site(),
            delivery,
            task.settings(),
            task.schedule(),
            task.figures(),
            start);
    return new Scenario(List.of(name(days)), then, lostS);
  }

  private static LocalDateTime out(Task task, List<Placement> pieces) {
    return Timetable.of(task.schedule(), task.pullOrder(), pieces).ends(pieces.size() - 1);
  }

  private static String name(Map<String, Integer> days) {
    String late =
        days.entrySet().stream()
            .filter(e -> e.getValue() > 0)
            .map(
                e ->
                    e.getKey()
                        + " "
                        + e.getValue()
                        + (e.getValue() == 1 ? " day" : " days")
                        + " late")
            .collect(Collectors.joining(", "));
    return late.isEmpty() ? "on time" : late;
  }
}
