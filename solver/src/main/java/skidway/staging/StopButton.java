package skidway.staging;

import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Lets somebody end a search early; the best plan found so far is kept. It is live only between
 * {@link #arm} and {@link #disarm}, while there is something to keep.
 */
public final class StopButton {
  private final AtomicBoolean armed = new AtomicBoolean();
  private final AtomicBoolean pressed = new AtomicBoolean();

  public void arm() {
    armed.set(true);
  }

  public void disarm() {
    armed.set(false);
  }

  public boolean armed() {
    return armed.get();
  }

  public void press() {
    pressed.set(true);
  }

  public boolean pressed() {
    return pressed.get();
  }
}
