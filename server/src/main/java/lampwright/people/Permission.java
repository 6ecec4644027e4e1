package lampwright.people;

/** What a member may do in a studio. */
public enum Permission {
  /**
   * Read setups, kits and their revisions, search them, and have figures and adaptations computed.
   */
  READ_SETUPS,
  /** See setups that are drafts or archived too, not only the proven ones. */
  READ_DRAFTS,
  /** Log what happened on the day: takes, readings, notes. */
  LOG_TAKES,
  /** Make, change and delete setups. */
  WRITE_SETUPS,
  /** Make, change and delete kits. */
  WRITE_KITS,
  /** Make, change and delete trails. */
  WRITE_TRAILS,
  /** Sign off what others built, or send it back. */
  SIGN_OFF,
  /** See how far everybody is with learning. */
  SEE_LEARNING,
  /** Take the whole studio out as an archive, and bring such an archive in. */
  MOVE_STUDIO,
  /** See how the search index stands, and have it made anew. */
  KEEP_INDEX,
  /** Show one setup to somebody outside, by a link that ends. */
  SHARE_SETUPS,
  /** Read who did what to what, and when. */
  SEE_AUDIT,
  /** Take people in, change their roles, let them go; rename the studio. */
  MANAGE_MEMBERS
}
