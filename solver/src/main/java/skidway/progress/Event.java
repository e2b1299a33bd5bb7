package skidway.progress;

import java.time.LocalDateTime;
import java.util.List;

/** One thing that happened on site. Events are only ever added; {@link Undo} takes one back. */
public sealed interface Event {
  /** Its number in the order of recording: 1, 2, …. */
  int seq();

  /** When it happened, in the site's local time. */
  LocalDateTime at();

  /** Who says so. */
  String by();

  <R> R match(Cases<R> cases);

  /** A truck is here; its bundles are still on it. */
  record Arrived(int seq, LocalDateTime at, String by, String loadId) implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.arrived(this);
    }
  }

  /**
   * A bundle was put down for the first time.
   *
   * @param tier 1 = bottom; 0 in a rack
   */
  record Placed(int seq, LocalDateTime at, String by, String bundleId, String spotId, int tier)
      implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.placed(this);
    }
  }

  /**
   * A bundle that lay somewhere lies elsewhere now.
   *
   * @param tier 1 = bottom; 0 in a rack
   */
  record Moved(int seq, LocalDateTime at, String by, String bundleId, String spotId, int tier)
      implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.moved(this);
    }
  }

  /**
   * Something is not there.
   *
   * @param id a bundle, or the mark of one piece; of a bundle and a piece of one name, the bundle
   * @param note what the supplier should know, or an empty text
   */
  record Missing(int seq, LocalDateTime at, String by, String id, String note) implements Event {
    public Missing(int seq, LocalDateTime at, String by, String id) {
      this(seq, at, by, id, "");
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.missing(this);
    }
  }

  /**
   * Something is there but must not be built in.
   *
   * @param id as in {@link Missing}
   * @param note as in {@link Missing}
   */
  record Damaged(int seq, LocalDateTime at, String by, String id, String note) implements Event {
    public Damaged(int seq, LocalDateTime at, String by, String id) {
      this(seq, at, by, id, "");
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.damaged(this);
    }
  }

  /**
   * Something came that no list of the job has. It is nobody's bundle until a list names it, so
   * nothing is planned with it.
   *
   * @param id what is written on it, or what people call it
   * @param note what it is
   */
  record Extra(int seq, LocalDateTime at, String by, String loadId, String id, String note)
      implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.extra(this);
    }
  }

  /**
   * What was missing turned up; what was damaged was replaced or judged fit.
   *
   * @param id as it was recorded missing or damaged
   */
  record Found(int seq, LocalDateTime at, String by, String id) implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.found(this);
    }
  }

  /**
   * A truck comes at another time than was expected.
   *
   * @param until when it is expected now, in the site's local time
   */
  record Late(int seq, LocalDateTime at, String by, String loadId, LocalDateTime until)
      implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.late(this);
    }
  }

  /**
   * Pieces were drawn from their bundles and built in.
   *
   * @param through the piece or course that somebody named, or an empty text
   * @param marks the pieces that it meant when it was recorded
   */
  record Pulled(int seq, LocalDateTime at, String by, String through, List<String> marks)
      implements Event {
    public Pulled {
      marks = List.copyOf(marks);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.pulled(this);
    }
  }

  /** An earlier event did not happen. Undoing an undo restores what that had taken back. */
  record Undo(int seq, LocalDateTime at, String by, int undone) implements Event {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.undo(this);
    }
  }

  /** One method for each kind of event, so that none can be forgotten. */
  interface Cases<R> {
    R arrived(Arrived event);

    R placed(Placed event);

    R moved(Moved event);

    R missing(Missing event);

    R damaged(Damaged event);

    R extra(Extra event);

    R found(Found event);

    R late(Late event);

    R pulled(Pulled event);

    R undo(Undo event);
  }
}
