package skidway.erection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The hold point against every order of work there is, on small houses with pieces missing. */
class HoldPointPropertyTest {
  private static final int MOST_PIECES = 16;

  @Property(seed = "20310505", tries = 200)
  void noOrderOfWorkLaysMore(@ForAll long seed) {
    Case c = Case.of(new Random(seed));
    List<Placement> order = c.hold().resequenced();
    int laid = Integer.bitCount(c.laid);
    assertThat(laid + order.size()).isEqualTo(c.mostLaid());
  }

  @Property(seed = "20310505", tries = 200)
  void everyStepOfTheOrderIsLegal(@ForAll long seed) {
    Case c = Case.of(new Random(seed));
    HoldPoint hold = c.hold();
    c.walk(hold.asPlanned());
    int done = c.walk(hold.resequenced());
    for (Placement waiting : hold.waiting()) {
      assertThat(c.canLay(c.index(waiting), done)).as(waiting.piece().mark()).isFalse();
      assertThat(hold.waitsFor(waiting)).isNotEmpty();
    }
  }

  /** Written as the rule says it: the first of the pull order that is ready, again and again. */
  @Property(seed = "20310505", tries = 200)
  void theOrderIsAsNearToThePullOrderAsCanBe(@ForAll long seed) {
    Case c = Case.of(new Random(seed));
    List<Placement> expected = new ArrayList<>();
    int done = c.laid;
    boolean more = true;
    while (more) {
      more = false;
      for (int i = 0; i < c.size() && !more; i++) {
        if (c.canLay(i, done)) {
          expected.add(c.order().get(i));
          done |= 1 << i;
          more = true;
        }
      }
    }
    assertThat(c.hold().resequenced()).isEqualTo(expected);
  }

  @Property(seed = "20310505", tries = 200)
  void whatAMissingPieceBlocksCanBeLaidOnceItIsThere(@ForAll long seed) {
    Case c = Case.of(new Random(seed));
    HoldPoint hold = c.hold();
    Set<Placement> blocked = new HashSet<>();
    hold.missing().forEach(m -> blocked.addAll(hold.blockedBy(m)));
    assertThat(blocked).containsAll(hold.waiting());
    blocked.retainAll(hold.resequenced());
    assertThat(blocked).isEmpty();
  }

  /** One house, one moment; sets of pieces are bits by pull index. */
  private record Case(Precedence precedence, int laid, int present) {
    static Case of(Random random) {
      Precedence p = SmallHouses.house(random, MOST_PIECES).precedence();
      int size = p.order().placements().size();
      int laid = 0;
      for (int i = 0; i < size / 2; i++) { // Mostly from the bottom, now and then out of turn.
        laid |= random.nextInt(3) == 0 ? 1 << i : 0;
      }
      int missing = 1 << random.nextInt(size);
      missing |= random.nextBoolean() ? 1 << random.nextInt(size) : 0;
      return new Case(p, laid, ((1 << size) - 1) & ~missing);
    }

    List<Placement> order() {
      return precedence.order().placements();
    }

    int size() {
      return order().size();
    }

    int index(Placement p) {
      return order().indexOf(p);
    }

    HoldPoint hold() {
      return HoldPoint.of(precedence, marks(laid), marks(present));
    }

    private Set<String> marks(int bits) {
      return BitSet.valueOf(new long[] {bits}).stream()
          .mapToObj(i -> order().get(i).piece().mark())
          .collect(Collectors.toSet());
    }

    boolean canLay(int i, int done) {
      boolean there = (present & ~done & 1 << i) != 0;
      return there
          && precedence.needs(order().get(i)).stream().allMatch(n -> (done & 1 << index(n)) != 0);
    }

    /** Lays pieces one by one and returns what is laid then. */
    int walk(List<Placement> pieces) {
      int done = laid;
      for (Placement p : pieces) {
        assertThat(canLay(index(p), done)).as(p.piece().mark()).isTrue();
        done |= 1 << index(p);
      }
      return done;
    }

    /**
     * Most pieces in the walls after any order of work: all states that can be reached are seen.
     */
    int mostLaid() {
      Set<Integer> seen = new HashSet<>(List.of(laid));
      ArrayDeque<Integer> open = new ArrayDeque<>(seen);
      int most = 0;
      while (!open.isEmpty()) {
        int done = open.pop();
        most = Math.max(most, Integer.bitCount(done));
        for (int i = 0; i < size(); i++) {
          if (canLay(i, done) && seen.add(done | 1 << i)) {
            open.push(done | 1 << i);
          }
        }
      }
      return most;
    }
  }
}
