package skidway.cli;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import skidway.staging.StopButton;

/** The commands by name, in the order in which the help lists them. */
final class Commands {
  private final Map<String, Supplier<Object>> makers = new LinkedHashMap<>();

  Commands(Screen screen, StopButton stop, Clock clock) {
    makers.put("site", () -> new SiteCommand(screen));
    makers.put("schema", () -> new SchemaCommand(screen));
    makers.put("import", () -> new ImportCommand(screen));
    makers.put("check", () -> new CheckCommand(screen));
    makers.put("stage", () -> new StageCommand(screen, stop));
    makers.put("restage", () -> new RestageCommand(screen, stop));
    makers.put("changes", () -> new ChangesCommand(screen));
    makers.put("audit", () -> new AuditCommand(screen));
    makers.put("waves", () -> new WavesCommand(screen));
    makers.put("print", () -> new PrintCommand(screen));
    makers.put("read-tag", () -> new ReadTagCommand(screen));
    makers.put("record", () -> new RecordCommand(screen, clock));
    makers.put("receive", () -> new ReceiveCommand(screen, clock));
    makers.put("status", () -> new StatusCommand(screen));
    makers.put("rules", () -> new RulesCommand(screen));
    makers.put("demo", () -> new DemoCommand(screen, stop));
    makers.put("help", CommandLine.HelpCommand::new);
  }

  /**
   * Adds the one that is called, or all of them where none is or it needs the others. To read what
   * every command takes is half of the time until the called one begins.
   */
  void addTo(CommandLine line, String... args) {
    boolean one = args.length > 0 && makers.containsKey(args[0]) && !args[0].equals("help");
    makers.forEach(
        (name, maker) -> {
          if (!one || name.equals(args[0])) {
            line.addSubcommand(name, maker.get());
          }
        });
  }
}
