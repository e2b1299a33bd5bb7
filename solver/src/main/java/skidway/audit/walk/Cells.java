package skidway.audit.walk;

import java.util.stream.IntStream;

/** A few cells of a grid, such as those near a place. */
final class Cells {
  static final Cells NONE = new Cells(new int[0]);

  private final int[] numbers;

  private Cells(int[] numbers) {
    this.numbers = numbers;
  }

  static Cells of(IntStream numbers) {
    return new Cells(numbers.toArray());
  }

  IntStream stream() {
    return IntStream.of(numbers);
  }

  /** Whether any of them carries a mark. */
  boolean any(byte[] marks, byte mark) {
    for (int cell : numbers) {
      if ((marks[cell] & mark) != 0) {
        return true;
      }
    }
    return false;
  }

  void addMark(byte[] marks, byte mark) {
    for (int cell : numbers) {
      marks[cell] |= mark;
    }
  }
}
