package skidway.cli;

import picocli.CommandLine.IVersionProvider;

/** Tells the version that the jar's manifest names. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"skidway " + (version == null ? "(not from a jar)" : version)};
  }
}
