package skidway.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import skidway.plan.Task;
import skidway.rules.Setting;
import skidway.site.Site;
import skidway.timber.Bundle;
import skidway.timber.Moisture;
import skidway.timber.Piece;
import skidway.units.UnitSystem;

final class JobReaderTest {
  @TempDir Path temp;

  @Test
  void readsAValidFolderIntoSi() {
    Job job = JobReader.read(JobFolder.in(temp).path());

    assertThat(job.remarks()).isEmpty();
    assertThat(job.fingerprint()).matches("[0-9a-f]{64}");
    Task task = job.task();
    assertThat(task.jobName()).isEqualTo("Hut at the lake");
    assertThat(task.figures().units()).isEqualTo(UnitSystem.US);
    assertThat(task.settings().get(Setting.STACK_HEIGHT)).isCloseTo(1.524, within(1e-9));
    assertThat(task.settings().change(Setting.DECK_EDGE_SETBACK).orElseThrow().reason())
        .isEqualTo("guard barricade along the edge");
    Site site = task.site();
    assertThat(site.courseM()).isCloseTo(0.1524, within(1e-9));
    assertThat(site.walls()).hasSize(4);
    assertThat(site.wall("W1").orElseThrow().lengthM()).isCloseTo(32 * 0.3048, within(1e-9));
    assertThat(site.wall("W1").orElseThrow().openings().get(0).door()).isTrue();
    assertThat(site.wall("W3").orElseThrow().openings().get(0).door()).isFalse();
    assertThat(site.zone("deck").orElseThrow().allowedKpa()).isCloseTo(2.873, within(0.001));
    assertThat(site.machine().chart().get(1).capacityKg()).isCloseTo(1814.4, within(0.1));
    assertThat(site.spots().get(0).massLimitKg().getAsDouble()).isCloseTo(4082.3, within(0.1));
    assertThat(task.delivery().bundles()).extracting(Bundle::id).containsExactly("B01", "B02");
    Piece last = task.delivery().bundle("B02").orElseThrow().packed().get(1).piece();
    assertThat(last.mark()).isEqualTo("W2-C1-2");
    assertThat(last.moisture()).isEqualTo(Moisture.of(18));
    assertThat(last.lengthM()).isCloseTo(3.048, within(1e-9));
    assertThat(task.delivery().load("L1").orElseThrow().arrival()).isEqualTo("2031-05-05T08:00:00");
  }
}
