package skidway.sheet;

/** Names job, revision and fingerprint; repeated on every printed page by the tables' heads. */
record RunningHead(String jobName, int revision, String fingerprint) {
  String words() {
    return jobName + ", revision " + revision + ", plan " + Fingerprints.brief(fingerprint);
  }
}
