package skidway.geometry;

import java.util.Arrays;

/** A growing list of numbered points seen from somewhere, with how far away each is. */
final class Sights {
  private int[] numbers;
  private double[] metres;
  private int count;

  Sights(int expected) {
    numbers = new int[expected + 1];
    metres = new double[expected + 1];
  }

  void add(int number, double howFarM) {
    if (count == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * count);
      metres = Arrays.copyOf(metres, 2 * count);
    }
    numbers[count] = number;
    metres[count] = howFarM;
    count++;
  }

  int count() {
    return count;
  }

  int number(int i) {
    return numbers[i];
  }

  double metres(int i) {
    return metres[i];
  }
}
