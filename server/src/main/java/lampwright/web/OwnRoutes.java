package lampwright.web;

import static lampwright.web.http.Access.Outside.IN_PERSON;
import static lampwright.web.http.Access.Outside.SIGNED_IN;

import lampwright.web.api.AccountApi;
import lampwright.web.api.AuditApi;
import lampwright.web.api.LeavingApi;
import lampwright.web.api.PreferencesApi;
import lampwright.web.api.SecondFactorApi;
import lampwright.web.api.TokenApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.AccountEventPages;
import lampwright.web.pages.AccountPages;
import lampwright.web.pages.LeavingPages;
import lampwright.web.pages.PreferencesPages;
import lampwright.web.pages.SecondFactorPages;
import lampwright.web.pages.TokenPages;

/** One's own matters: account, second factor, tokens, how one reads, taking out and leaving. */
public record OwnRoutes(
    AccountApi accountApi,
    SecondFactorApi secondFactorApi,
    AuditApi auditApi,
    TokenApi tokenApi,
    LeavingApi leavingApi,
    PreferencesApi preferencesApi,
    AccountPages accountPages,
    SecondFactorPages secondFactorPages,
    AccountEventPages accountEventPages,
    TokenPages tokenPages,
    LeavingPages leavingPages,
    PreferencesPages preferencesPages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/tokens", tokenApi::list, IN_PERSON);
    routes.post("/api/tokens", tokenApi::create, IN_PERSON);
    routes.delete("/api/tokens/{token}", tokenApi::delete, IN_PERSON);
    routes.get("/api/preferences", preferencesApi::get, SIGNED_IN);
    routes.put("/api/preferences", preferencesApi::replace, SIGNED_IN);
    routes.get("/api/account", accountApi::get, IN_PERSON);
    routes.patch("/api/account", accountApi::change, IN_PERSON);
    routes.put("/api/account/password", accountApi::changePassword, IN_PERSON);
    routes.get("/api/account/sessions", accountApi::listSessions, IN_PERSON);
    routes.delete("/api/account/sessions", accountApi::endOtherSessions, IN_PERSON);
    routes.delete("/api/account/sessions/{session}", accountApi::endSession, IN_PERSON);
    routes.get("/api/account/events", auditApi::listOwn, IN_PERSON);
    routes.get("/api/account/second-factor", secondFactorApi::get, IN_PERSON);
    routes.post("/api/account/second-factor", secondFactorApi::offer, IN_PERSON);
    routes.post("/api/account/second-factor/confirmation", secondFactorApi::confirm, IN_PERSON);
    routes.post(
        "/api/account/second-factor/recovery-codes",
        secondFactorApi::remakeRecoveryCodes,
        IN_PERSON);
    routes.post("/api/account/second-factor/removal", secondFactorApi::switchOff, IN_PERSON);
    routes.get("/api/account/data", leavingApi::data, IN_PERSON);
    routes.delete("/api/account", leavingApi::leave, IN_PERSON);
  }

  private void forPeople(RouteList routes) {
    routes.get("/preferences", preferencesPages::show, SIGNED_IN);
    routes.post("/preferences", preferencesPages::change, SIGNED_IN);
    routes.get("/account", accountPages::show, IN_PERSON);
    routes.post("/account/details", accountPages::changeDetails, IN_PERSON);
    routes.post("/account/password", accountPages::changePassword, IN_PERSON);
    routes.post("/account/sessions/{session}/removal", accountPages::endSession, IN_PERSON);
    routes.post("/account/other-sessions/removal", accountPages::endOtherSessions, IN_PERSON);
    routes.get("/account/events", accountEventPages::show, IN_PERSON);
    routes.get("/account/second-factor", secondFactorPages::show, IN_PERSON);
    routes.post("/account/second-factor", secondFactorPages::offer, IN_PERSON);
    routes.post("/account/second-factor/confirmation", secondFactorPages::confirm, IN_PERSON);
    routes.post(
        "/account/second-factor/recovery-codes", secondFactorPages::remakeRecoveryCodes, IN_PERSON);
    routes.post("/account/second-factor/removal", secondFactorPages::switchOff, IN_PERSON);
    routes.get("/account/tokens", tokenPages::show, IN_PERSON);
    routes.post("/account/tokens", tokenPages::make, IN_PERSON);
    routes.post("/account/tokens/{token}/removal", tokenPages::revoke, IN_PERSON);
    routes.get("/account/leaving", leavingPages::show, IN_PERSON);
    routes.get("/account/leaving/question", leavingPages::ask, IN_PERSON);
    routes.post("/account/leaving/question", leavingPages::leave, IN_PERSON);
  }
}
