package lampwright.web.pages;

import java.util.Locale;
import java.util.Optional;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.FormerName;
import lampwright.tasks.Audited;
import lampwright.wording.Wording;

/**
 * Says in a sentence what somebody did.
 *
 * @param isOfOneSetup where all is about one setup, whose title need not stand in each sentence
 */
record AuditSentences(Wording words, boolean isOfOneSetup) {

  private static final String ROLE = "role";

  /** "Ines changed the setup “Rope in the rain”". */
  String say(Audited line) {
    Optional<AuditAction> action = AuditAction.find(line.action());
    Optional<AuditKind> kind = AuditKind.find(line.kind());
    if (action.isEmpty() || kind.isEmpty()) {
      // A later version wrote it; said as it stands, it is better than not said.
      return words.say(
          "auditing.unknown", who(line), line.action(), line.kind(), line.subjectName());
    }
    if (kind.get() == AuditKind.MEMBER) {
      return ofMember(line, action.get());
    }
    return words.say("auditing.did." + action.get().word(), who(line), thing(line, kind.get()));
  }

  private String ofMember(Audited line, AuditAction action) {
    WhoWords names = new WhoWords(words);
    String called = line.subjectName().isEmpty() ? FormerName.UNNAMED : line.subjectName();
    String name = names.who(called);
    return switch (action) {
      case MADE -> words.say("auditing.member.made", who(line), name, role(line));
      case CHANGED -> words.say("auditing.member.changed", who(line), names.by(called), role(line));
      default -> words.say("auditing.member.deleted", who(line), name);
    };
  }

  private String role(Audited line) {
    Object role = line.detail().get(ROLE);
    return role == null
        ? "–"
        : words.say("studio.people.role." + role.toString().toLowerCase(Locale.ROOT));
  }

  /** How the kind is called with the name of the thing: "the setup “Rope in the rain”". */
  private String thing(Audited line, AuditKind kind) {
    String its = "auditing.its." + kind.word();
    if (isOfOneSetup && words.notation().phrases().keys().contains(its)) {
      return words.say(its);
    }
    String key = "auditing.thing." + kind.word();
    return switch (kind) {
      case INVITATION, RESET_LINK, ACCOUNT, TOKEN, ARCHIVE -> words.say(key);
      default -> words.say(key, line.subjectName());
    };
  }

  private String who(Audited line) {
    return line.by()
        .map(who -> Wording.capital(new WhoWords(words).who(who.name())))
        .orElseGet(
            () ->
                words.say(
                    line.action().equals(AuditAction.OPENED.word())
                        ? "auditing.outsider"
                        : "auditing.server"));
  }

  /** A small fact: the revision that came of it. That what is made is a first one says nothing. */
  String more(Audited line) {
    Object revision = line.detail().get("revision");
    return revision instanceof Number number && number.intValue() > 1
        ? words.say("auditing.revision", number.intValue())
        : "";
  }

  /** What a kind is called in a list of kinds. */
  String kind(AuditKind kind) {
    return words.say("auditing.kind." + kind.word());
  }
}
