package skidway.staging;

import java.util.concurrent.atomic.AtomicBoolean;

/** Lets somebody end a search early; the best plan found so far is kept. */
public final class StopButton {
  private final AtomicBoolean pressed = new AtomicBoolean();

  public void press() {
    pressed.set(true);
  }

  public boolean pressed() {
    return pressed.get();
  }
}
