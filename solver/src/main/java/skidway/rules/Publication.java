package skidway.rules;

/** The publications that numbers come from, with the edition that was read. */
public enum Publication {
  OSHA("29 CFR 1910, 1926 as read in public copies; look up the edition in force"),
  OSHA_LETTER("OSHA letter of 15 May 1972, withdrawn since"),
  NIOSH("NIOSH 94-110, rev. 9/2021"),
  ISO_11228("ISO 11228-1:2021"),
  MURTAGH("Murtagh et al. 2020"),
  HSE_L23("UK Manual Handling Operations Regulations 1992, guidance L23"),
  QUEBEC("Quebec S-2.1, r. 4, as read; look up the edition in force"),
  STORAGE_MANUAL("TM 38-400, Joint Storage Manual, April 1994"),
  IBC("IBC 2012 Table 1806.2, IRC R401.4.1"),
  /** Common practice, memory or assumption. */
  NONE("none");

  private final String edition;

  Publication(String edition) {
    this.edition = edition;
  }

  /** What to print in a column for the edition. */
  public String edition() {
    return edition;
  }
}
