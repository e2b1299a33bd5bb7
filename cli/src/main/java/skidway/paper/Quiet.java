package skidway.paper;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps the page layer's chatter off the screen; its complaints are heard by {@link Press}. */
final class Quiet implements XRLogger {
  @Override
  public void log(String where, Level level, String message) {}

  @Override
  public void log(String where, Level level, String message, Throwable error) {}

  @Override
  public void setLevel(String logger, Level level) {}

  @Override
  public boolean isLogLevelEnabled(Diagnostic diagnostic) {
    return false;
  }
}
