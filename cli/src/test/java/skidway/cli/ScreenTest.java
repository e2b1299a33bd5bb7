package skidway.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ScreenTest {
  @Test
  void talkFollowsTheResultsBeforeIt() {
    StringWriter terminal = new StringWriter();
    Screen screen =
        new Screen(new PrintWriter(new BufferedWriter(terminal)), new PrintWriter(terminal), false);
    screen.result("a result");
    screen.say("talk of %s", "it");
    assertThat(terminal).hasToString(String.format("a result%ntalk of it%n"));
  }
}
