package lampwright.web.pages;

import java.util.function.Supplier;
import lampwright.people.FormerName;
import lampwright.wording.Wording;

/** What somebody is called on a page, who perhaps has left. */
record WhoWords(Wording words) {

  /** By itself, or as who does something: "Ines Okoro", "a former member". */
  String who(String called) {
    return said(called, () -> words.say("members.former"));
  }

  /** After "by": some languages bend it there. */
  String by(String called) {
    return said(called, () -> words.say("members.formerBy"));
  }

  private String said(String called, Supplier<String> unnamed) {
    return called.equals(FormerName.UNNAMED)
        ? unnamed.get()
        : FormerName.findArchived(called)
            .map(name -> words.say("members.archived", name))
            .orElse(called);
  }
}
