package lampwright.store;

import java.util.Locale;

/** What kind of thing a line of the change log is about. */
enum ChangedKind {
  SETUP,
  KIT,
  GEAR,
  LOCATION,
  TAKE,
  NOTE,
  PICTURE,
  TRAIL;

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
