package skidway.demo;

import java.util.List;
import java.util.Map;

/**
 * A demo job: the house, how the mill bundles it, and the texts that a person on the job would
 * write. {@code @walls@} in the site's text stands for the walls, {@code @course@} for the height
 * of a course.
 *
 * @param folder its folder's name under {@code demo-data}
 */
record DemoJob(
    String folder,
    House house,
    Bundling bundling,
    String jobJson,
    String siteJson,
    String loadsCsv,
    String about) {

  List<MillBundle> bundles() {
    return bundling.bundle(PieceList.of(house));
  }

  /** The folder's files by name, as text. */
  Map<String, String> files() {
    return new JobFolderText(house).write(this);
  }

  @Override
  public String toString() {
    return folder;
  }

  static List<DemoJob> all() {
    return List.of(Cabin.job(), LHouse.job());
  }
}
