package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.stream.Stream;
import lampwright.language.Notation;
import lampwright.people.Member;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Leave;
import lampwright.tasks.MemberListing;
import lampwright.web.http.Door;

/** The page of who belongs to a studio. */
public final class PeoplePages {

  private final Door door;
  private final MemberListing members;
  private final Templates templates;
  private final StudioLayouts layouts;

  public PeoplePages(Door door, MemberListing members, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.members = members;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/people";
  }

  /** Shows it: {@code /studios/{studio}/people}. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    Layout layout = layouts.named(context, studio, "studio.people.heading");
    Notation notation = layout.notation();
    templates.show(
        context,
        "people",
        new PeoplePage(
            layout,
            members.list(caller, studio).stream().map(one -> one(notation, caller, one)).toList(),
            Stream.of(Role.values()).map(role -> word(notation, role)).toList(),
            Stream.of(Permission.values()).map(what -> row(notation, what)).toList()));
  }

  private static PeoplePage.One one(Notation notation, Caller caller, Member member) {
    return new PeoplePage.One(
        member.person().name(),
        word(notation, member.role()),
        member.person().id().equals(caller.person().id()));
  }

  private static PeoplePage.Row row(Notation notation, Permission permission) {
    return new PeoplePage.Row(
        notation.say("studio.people.permission." + permission.name().toLowerCase(Locale.ROOT)),
        Stream.of(Role.values()).map(role -> role.may(permission)).toList());
  }

  private static String word(Notation notation, Role role) {
    return notation.say("studio.people.role." + role.word());
  }
}
