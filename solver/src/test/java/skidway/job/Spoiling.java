package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Throws spoilt inputs at a reader, which takes each or refuses it with problems. Whatever else
 * comes out is a fault; its input is kept under {@code target/spoilt}, and once mended belongs into
 * {@code src/test/resources/skidway/spoilt}, which is thrown first. {@code -Dskidway.fuzz=100000}
 * throws more.
 */
public final class Spoiling {
  private static final int TRIES = Integer.getInteger("skidway.fuzz", 2000);
  private static final Path MENDED = Path.of("src", "test", "resources", "skidway", "spoilt");
  private static final Path KEPT = Path.of("target", "spoilt");

  /** Long lists of problems begin with what matters. */
  private static final int LOOKED_AT = 5;

  private Spoiling() {}

  /** Reads one input, or refuses it with {@link BadInput}. */
  public interface Reader {
    void read(byte[] input) throws IOException;
  }

  /** Inputs that are a text with a few changes. */
  public static void ofText(String name, String sound, Reader reader) throws IOException {
    of(name, random -> Mutator.mutated(sound, random), reader);
  }

  /**
   * Any inputs. At least a tenth of them must be refused: else nothing was spoilt.
   *
   * @param name folder of the inputs that were faults once
   */
  public static void of(String name, Function<Random, byte[]> spoilt, Reader reader)
      throws IOException {
    of(name, TRIES, spoilt, reader);
  }

  /** A quarter as many, for a reader most of whose work another test spoils as well. */
  public static void ofFewer(String name, Function<Random, byte[]> spoilt, Reader reader)
      throws IOException {
    of(name, TRIES / 4, spoilt, reader);
  }

  /**
   * The inputs of one test shared out between readers that read at once, each what is spoilt for it
   * and in a folder of its own.
   */
  public static void atOnce(List<Share> shares) {
    shares.parallelStream()
        .forEach(
            share -> {
              try {
                of(share.name(), TRIES / shares.size(), share.spoilt(), share.reader());
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
  }

  /**
   * What one of several readers reads.
   *
   * @param name folder of the inputs that were faults once
   */
  public record Share(String name, Function<Random, byte[]> spoilt, Reader reader) {}

  private static void of(String name, int tries, Function<Random, byte[]> spoilt, Reader reader)
      throws IOException {
    for (Path input : mended(name)) {
      refuses(name, Files.readAllBytes(input), reader);
    }
    Random random = new Random(name.hashCode());
    int refused = 0;
    for (int i = 0; i < tries; i++) {
      refused += refuses(name, spoilt.apply(random), reader) ? 1 : 0;
    }
    assertThat(refused).as("refused of " + tries).isBetween(tries / 10, tries);
  }

  private static List<Path> mended(String name) throws IOException {
    Path folder = MENDED.resolve(name);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inputs = Files.list(folder)) {
      return inputs.sorted().toList();
    }
  }

  private static boolean refuses(String name, byte[] input, Reader reader) throws IOException {
    try {
      reader.read(input);
      return false;
    } catch (BadInput e) {
      if (!isFit(e)) {
        throw new AssertionError(kept(name, input) + " is refused in a way that helps nobody.", e);
      }
      return true;
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      throw new AssertionError(kept(name, input) + " is neither taken nor refused.", e);
    }
  }

  private static Path kept(String name, byte[] input) throws IOException {
    Files.createDirectories(KEPT);
    return Files.write(Files.createTempFile(KEPT, name + "-", ""), input);
  }

  /** Whether a person can do something about it. */
  private static boolean isFit(BadInput e) {
    int count = e.problems().size();
    return count > 0
        && count <= Problems.SHOWN
        && e.problems().subList(0, Math.min(LOOKED_AT, count)).stream().allMatch(Spoiling::isFit);
  }

  private static boolean isFit(Problem p) {
    String text = p.text();
    return text.contains(": found ")
        && text.contains(". Way out: ")
        && text.length() < 1200
        && p.picture().startsWith(text)
        && p.line() >= 0;
  }
}
