package lampwright.web;

import static lampwright.people.Permission.MANAGE_MEMBERS;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.SEE_AUDIT;
import static lampwright.people.Permission.SHARE_SETUPS;
import static lampwright.web.http.Access.Outside.BY_LINK;
import static lampwright.web.http.Access.Outside.IN_PERSON;
import static lampwright.web.http.Access.Outside.SIGNED_IN;
import static lampwright.web.http.Access.may;

import lampwright.web.api.AuditApi;
import lampwright.web.api.InvitationApi;
import lampwright.web.api.MemberApi;
import lampwright.web.api.ShareLinkApi;
import lampwright.web.api.StudioApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.AccountLinkPages;
import lampwright.web.pages.AuditPages;
import lampwright.web.pages.PeoplePages;
import lampwright.web.pages.SharePages;
import lampwright.web.pages.SharedPages;
import lampwright.web.pages.StudiosPages;

/** Studios and who belongs to them, what was done in them, and what is shown to outsiders. */
public record StudioRoutes(
    StudioApi studioApi,
    MemberApi memberApi,
    InvitationApi invitationApi,
    AuditApi auditApi,
    ShareLinkApi shareLinkApi,
    StudiosPages studiosPages,
    PeoplePages peoplePages,
    AccountLinkPages accountLinkPages,
    AuditPages auditPages,
    SharePages sharePages,
    SharedPages sharedPages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios", studioApi::list, SIGNED_IN);
    routes.get("/api/studios/{studio}/audit", auditApi::list, may(SEE_AUDIT));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/share-links", shareLinkApi::list, may(SHARE_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/share-links",
        shareLinkApi::create,
        may(SHARE_SETUPS));
    routes.delete(
        "/api/studios/{studio}/setups/{setup}/share-links/{link}",
        shareLinkApi::delete,
        may(SHARE_SETUPS));
    routes.post("/api/studios", studioApi::found, IN_PERSON);
    routes.get("/api/studios/{studio}", studioApi::get, may(READ_SETUPS));
    routes.patch("/api/studios/{studio}", studioApi::change, may(MANAGE_MEMBERS));
    routes.get("/api/studios/{studio}/members", memberApi::list, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/members/{person}", memberApi::get, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/members/{person}", memberApi::replace, may(MANAGE_MEMBERS));
    // Everybody may leave; whoever takes somebody else out is asked inside.
    routes.delete("/api/studios/{studio}/members/{person}", memberApi::delete, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/members/{person}/reset-links",
        memberApi::makeResetLink,
        may(MANAGE_MEMBERS));
    routes.get("/api/studios/{studio}/invitations", invitationApi::list, may(MANAGE_MEMBERS));
    routes.post("/api/studios/{studio}/invitations", invitationApi::create, may(MANAGE_MEMBERS));
    routes.delete(
        "/api/studios/{studio}/invitations/{invitation}",
        invitationApi::withdraw,
        may(MANAGE_MEMBERS));
    routes.get("/api/invitations/{secret}", invitationApi::look, BY_LINK);
    routes.post("/api/invitations/{secret}", invitationApi::accept, BY_LINK);
  }

  private void forPeople(RouteList routes) {
    routes.get("/studios/{studio}/audit", auditPages::show, may(SEE_AUDIT));
    routes.get(
        "/studios/{studio}/setups/{setup}/share-links", sharePages::leadBack, may(SHARE_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/share-links", sharePages::make, may(SHARE_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/share-links/{link}/removal",
        sharePages::withdraw,
        may(SHARE_SETUPS));
    routes.get("/shared/{secret}", sharedPages::show, BY_LINK);
    routes.get("/shared/{secret}/pictures/{picture}", sharedPages::picture, BY_LINK);
    routes.get("/studios", studiosPages::show, SIGNED_IN);
    routes.post("/studios", studiosPages::found, IN_PERSON);
    routes.post("/studios/{studio}/name", studiosPages::rename, may(MANAGE_MEMBERS));
    routes.post("/studios/{studio}/people/invitations", peoplePages::invite, may(MANAGE_MEMBERS));
    routes.post(
        "/studios/{studio}/people/invitations/{invitation}/withdrawal",
        peoplePages::withdraw,
        may(MANAGE_MEMBERS));
    routes.post(
        "/studios/{studio}/people/{person}/role", peoplePages::changeRole, may(MANAGE_MEMBERS));
    routes.post("/studios/{studio}/people/{person}/removal", peoplePages::remove, may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/people/{person}/reset-links",
        peoplePages::makeResetLink,
        may(MANAGE_MEMBERS));
    routes.get("/invitations/{secret}", accountLinkPages::showInvitation, BY_LINK);
    routes.post("/invitations/{secret}", accountLinkPages::acceptInvitation, BY_LINK);
    routes.get("/password-reset/{secret}", accountLinkPages::showReset, BY_LINK);
    routes.post("/password-reset/{secret}", accountLinkPages::reset, BY_LINK);
    routes.get("/studios/{studio}/people", peoplePages::show, may(READ_SETUPS));
  }
}
