package skidway.staging;

import static skidway.testkit.BundleBuilder.aBundle;
import static skidway.testkit.SiteBuilder.aSite;
import static skidway.testkit.SiteBuilder.spot;
import static skidway.testkit.Tasks.task;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Spot;
import skidway.timber.Bundle;

/**
 * A published stacking problem: items come in a fixed order, each onto one of some equal stacks. An
 * item is badly placed when one beneath it is needed earlier.
 *
 * <p>As a staging it is one bundle of one piece per item and as many equal spots as stacks, all at
 * one place. Nothing is set down and picking costs nothing, so a staging costs one rehandled piece
 * for each badly placed item and a part that is the same for all stagings.
 *
 * @param neededAt when each item is needed, in the order in which they come; small is early, equal
 *     ones are never in each other's way
 * @param weights none lies on a lighter one; all the same where that does not matter. As a staging
 *     the heavier bundle is longer, and none may be longer than one beneath it.
 */
record Bay(int stacks, int tiers, List<Integer> neededAt, List<Integer> weights) {
  Bay {
    neededAt = List.copyOf(neededAt);
    weights = List.copyOf(weights);
  }

  Bay(int stacks, int tiers, List<Integer> neededAt) {
    this(stacks, tiers, neededAt, Collections.nCopies(neededAt.size(), 1));
  }

  /** Line 1 "tiers stacks", line 2 how many items, line 3 when each is needed. */
  static Bay read(String name) {
    List<String> lines = lines("pslp/" + name);
    List<Integer> size = numbers(lines.get(0));
    return new Bay(size.get(1), size.get(0), numbers(lines.get(2)));
  }

  static List<String> lines(String name) {
    try (InputStream in = Bay.class.getResourceAsStream("/published/" + name)) {
      if (in == null) {
        throw new IllegalArgumentException("There is no " + name + ".");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Integer> numbers(String text) {
    return Stream.of(text.trim().split("\\s+")).map(Integer::valueOf).toList();
  }

  Board board() {
    Settings settings =
        Settings.defaults()
            .with(Setting.STACK_TIERS, tiers, "as published")
            .with(Setting.STACK_HEIGHT, tiers * 0.099, "as published, nothing but tiers counts")
            .with(Setting.END_OVERHANG, 0, "as published, none on a lighter one")
            .with(Setting.PICK_TIME, 0, "as published, picking costs nothing");
    Spot[] spots =
        IntStream.range(0, stacks)
            .mapToObj(s -> spot("S" + s, "yard", 15, 8, 5, 1))
            .toArray(Spot[]::new);
    Bundle[] bundles = bundles();
    Board board = Boards.board(task(aSite().build(), settings, bundles), spots);
    for (int i = 0; i < bundles.length; i++) {
      for (int j = 0; j < i; j++) {
        if ((neededAt.get(j) < neededAt.get(i)) != (board.pulls[j][0] < board.pulls[i][0])) {
          throw new IllegalStateException("Pieces are not pulled in the order of the items.");
        }
      }
    }
    return board;
  }

  /** Of items needed at the same time the one that came last is pulled first. */
  private Bundle[] bundles() {
    int n = neededAt.size();
    return IntStream.range(0, n)
        .mapToObj(
            i ->
                aBundle("I" + i)
                    .load("L1", i + 1)
                    .size(4 + weights.get(i) / 1000.0, 1, 0.01)
                    .piece("W1", neededAt.get(i), n - i, 0.1)
                    .build())
        .toArray(Bundle[]::new);
  }

  StagingSolution.Ground ground(long calculations) {
    Board board = board();
    return new StagingSolution.Ground(
        board,
        new StackEvaluator(board, Waits.NONE),
        List.of(),
        new StopButton(),
        new DrawBudget(calculations));
  }

  /** The same without weights. */
  Bay unweighted() {
    return new Bay(stacks, tiers, neededAt);
  }

  /** Items with one needed earlier beneath them, counted from the definition alone. */
  int badlyPlaced(int[] stackOf) {
    int bad = 0;
    for (int i = 0; i < stackOf.length; i++) {
      int item = i;
      bad +=
          IntStream.range(0, i)
                  .anyMatch(
                      j -> stackOf[j] == stackOf[item] && neededAt.get(j) < neededAt.get(item))
              ? 1
              : 0;
    }
    return bad;
  }

  /** Whether every item has a stack, no stack has too many, and none lies on a lighter one. */
  boolean holds(int[] stackOf) {
    int[] count = new int[stacks];
    int[] top = new int[stacks];
    Arrays.fill(top, Integer.MAX_VALUE);
    for (int i = 0; i < stackOf.length; i++) {
      int stack = stackOf[i];
      if (stack < 0 || ++count[stack] > tiers || weights.get(i) > top[stack]) {
        return false;
      }
      top[stack] = weights.get(i);
    }
    return true;
  }

  /** What the search makes of it. */
  int[] search(long seed, long calculations) {
    return Boards.searched(ground(calculations), seed, calculations).snapshot();
  }
}
