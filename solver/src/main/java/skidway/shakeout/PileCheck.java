package skidway.shakeout;

import java.util.List;
import skidway.plan.Wave;

/**
 * Judges a wave at the moment when all its piles are full. The search leaves this to somebody
 * else's eyes, as far as its own quick checks do not reach.
 */
public interface PileCheck {
  /** Ids of the piles that break a rule there, each once; empty when the wave may be brought in. */
  List<String> faulty(Wave wave);
}
