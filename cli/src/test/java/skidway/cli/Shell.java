package skidway.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import skidway.staging.StopButton;

/** What one command returned and said. */
record Shell(int code, String out, String err) {

  static Shell run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), false);
    int code = Main.run(screen, new StopButton(), args);
    return new Shell(code, out.toString(), err.toString());
  }
}
