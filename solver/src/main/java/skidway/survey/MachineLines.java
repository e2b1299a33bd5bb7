package skidway.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.site.Point;

/** Reads the machine, where it stands, and its load chart row by row. */
final class MachineLines {
  private final Setup setup;
  private final Draft draft;
  private final boolean told;
  private Optional<Thing> machine = Optional.empty();
  private final List<Thing> chart = new ArrayList<>();

  /**
   * @param told whether a line tells of a machine, readable or not
   */
  MachineLines(Setup setup, Draft draft, boolean told) {
    this.setup = setup;
    this.draft = draft;
    this.told = told;
  }

  /**
   * {@code machine "forklift" grip forks centre 24" wide 7'6" rigging 60 lb confirmed "R. Ode"}.
   */
  void machine(LineScanner line) {
    LocatedNode.Text name = line.name("a machine");
    if (machine.isPresent()) {
      throw line.refuse(
          name.place(), "a second machine", "one machine unloads", "remove one of the lines");
    }
    Clauses said =
        new Grammar("a machine")
            .choice("grip", List.of("forks", "slings"))
            .length("centre", Bounds.LOAD_CENTRE)
            .quantity("angle", Bounds.SLING_ANGLE)
            .quantity("leg", Bounds.SLING_LEG)
            .length("wide", Bounds.MACHINE_WIDTH)
            .quantity("rigging", Bounds.RIGGING)
            .name("confirmed")
            .read(line);
    Thing thing = new Thing(name.place()).put("name", name);
    said.word("grip").ifPresent(grip -> thing.put("grip", grip(grip, said)));
    machine =
        Optional.of(
            thing
                .put("width", said.quantity("wide"), setup.units())
                .put("rigging", said.quantity("rigging"), setup.units())
                .put("confirmedBy", said.word("confirmed")));
  }

  private LocatedNode grip(LocatedNode.Text kind, Clauses said) {
    return new Thing(kind.place())
        .put("kind", kind)
        .put("loadCentre", said.quantity("centre"), setup.units())
        .put(
            "angle",
            said.quantity("angle").map(a -> (LocatedNode) Nodes.number(a.place(), a.si(), 3)))
        .put("leg", said.quantity("leg"), setup.units())
        .done();
  }

  /** {@code stand M1, 20' off W1, middle, on drive}. */
  void stand(LineScanner line) {
    needsMachine(line, "a stand");
    LocatedNode.Text id = line.name("a machine's stand");
    Clauses said = new Grammar("a machine's stand").beside().name("on").read(line);
    Point at = new Taped(said, line, setup.house()).point();
    draft.covers(List.of(at));
    draft.add(
        "stands",
        new Thing(id.place())
            .put("id", id)
            .put("at", setup.nodes().point(said.start(), at))
            .put("lane", said.word("on")));
  }

  /** {@code chart 10' 4000 lb, 15' 2500 lb}. */
  void chart(LineScanner line) {
    needsMachine(line, "a load chart");
    do {
      Measured reach = line.quantity(Bounds.REACH);
      Measured capacity = line.quantity(Bounds.CAPACITY);
      chart.add(
          new Thing(reach.place())
              .put("reach", reach.node(setup.units()))
              .put("capacity", capacity.node(setup.units())));
    } while (!line.done());
  }

  private void needsMachine(LineScanner line, String what) {
    if (!told) {
      throw line.refuse(
          line.here(),
          what + " without a machine",
          "a machine has stands and a chart; people who carry every timber have neither",
          "add the line: machine \"forklift\"; or remove this one");
    }
  }

  /** The machine with all that was said of it; none if people carry every timber. */
  Optional<LocatedNode> node() {
    machine.ifPresent(
        m -> {
          LocatedNode.Members head = m.done();
          m.put("stands", draft.list("stands", head.place()));
          if (!chart.isEmpty()) {
            m.put("chart", Draft.items(head.place(), chart));
          }
        });
    return machine.map(Thing::done);
  }
}
