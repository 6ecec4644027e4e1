package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.drawing.PreviewDrawings;
import lampwright.web.http.ProblemDetails;
import lampwright.web.http.ProblemKind;
import lampwright.wording.WordsForTests;

/** Every page drawn from invented data: full, empty, long and wrong. */
final class PagePreviews {

  static final Assets ASSETS = Assets.fromClassPath();

  private PagePreviews() {}

  /** One preview: a name for its file, the template and its record. */
  record Preview(String name, String template, Record page) {

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Preview> all() {
    return List.of(
        new Preview("sign-in", "signIn.jte", signIn(FormErrors.none(), Optional.empty())),
        new Preview("sign-in-demo", "signIn.jte", signIn(FormErrors.none(), Optional.of(demo()))),
        new Preview("sign-in-wrong", "signIn.jte", signIn(signInErrors(), Optional.empty())),
        new Preview("first-owner", "firstOwner.jte", firstOwner("", FormErrors.none())),
        new Preview("first-owner-wrong", "firstOwner.jte", firstOwner("Imke", ownerErrors())),
        new Preview("sign-in-code", "signInCode.jte", AccountPreviews.code()),
        new Preview("account", "account.jte", AccountPreviews.account()),
        new Preview("account-wrong", "account.jte", AccountPreviews.wrong()),
        new Preview("account-events", "accountEvents.jte", AccountPreviews.events()),
        new Preview("second-factor-off", "secondFactor.jte", AccountPreviews.off()),
        new Preview("second-factor-offered", "secondFactor.jte", AccountPreviews.offered()),
        new Preview("second-factor-on", "secondFactor.jte", AccountPreviews.on()),
        new Preview("second-factor-codes", "secondFactor.jte", AccountPreviews.codes()),
        new Preview("find", "find.jte", FindPreviews.full()),
        new Preview("find-search", "find.jte", FindPreviews.search()),
        new Preview("find-nothing", "find.jte", FindPreviews.nothing()),
        new Preview("find-empty", "find.jte", FindPreviews.empty()),
        new Preview("find-long", "find.jte", FindPreviews.longWords()),
        new Preview("setup", "setup.jte", SetupPreviews.full()),
        new Preview("setup-bare", "setup.jte", SetupPreviews.bare()),
        new Preview("setup-long", "setup.jte", SetupPreviews.longWords()),
        new Preview("figures", "figures.jte", FiguresPreviews.full()),
        new Preview("figures-bare", "figures.jte", FiguresPreviews.bare()),
        new Preview("figures-long", "figures.jte", FiguresPreviews.longWords()),
        new Preview("history", "history.jte", LifePreviews.history()),
        new Preview("history-deleted", "history.jte", LifePreviews.deleted()),
        new Preview("changes", "changes.jte", LifePreviews.changes()),
        new Preview("changes-none", "changes.jte", LifePreviews.noChanges()),
        new Preview("beside", "beside.jte", BesidePreviews.two()),
        new Preview("beside-choice", "besideChoice.jte", BesidePreviews.choice()),
        new Preview("beside-choice-none", "besideChoice.jte", BesidePreviews.noChoice()),
        new Preview("now", "now.jte", NowPreviews.answered()),
        new Preview("now-nothing", "now.jte", NowPreviews.nothingHelps()),
        new Preview("now-wrong", "now.jte", NowPreviews.wrong()),
        new Preview("without", "without.jte", WithoutPreviews.whole()),
        new Preview("without-off", "without.jte", WithoutPreviews.off()),
        new Preview("without-stage", "without.jte", WithoutPreviews.stage()),
        new Preview("without-long", "without.jte", WithoutPreviews.longWords()),
        new Preview("sheet", "sheet.jte", SheetsForTests.preview()),
        new Preview("field", "field.jte", FieldPreviews.full()),
        new Preview("pack", "pack.jte", PackPreviews.full()),
        new Preview("pack-empty", "pack.jte", PackPreviews.empty()),
        new Preview("field-list", "fieldList.jte", FieldPreviews.list()),
        new Preview("glossary", "glossary.jte", GlossaryPreviews.english()),
        new Preview("glossary-german", "glossary.jte", GlossaryPreviews.german()),
        new Preview("adapted", "adapted.jte", AdaptedPreviews.full()),
        new Preview("adapted-short", "adapted.jte", AdaptedPreviews.notEnough()),
        new Preview("adapted-none", "adapted.jte", AdaptedPreviews.nothingFits()),
        new Preview("adapted-wrong", "adapted.jte", AdaptedPreviews.wrong()),
        new Preview("takes", "takes.jte", DayPreviews.takes("")),
        new Preview("takes-empty", "takes.jte", DayPreviews.noTakes()),
        new Preview("takes-long", "takes.jte", DayPreviews.longTakes()),
        new Preview("takes-wrong", "takes.jte", DayPreviews.wrongTake()),
        new Preview("pictures", "pictures.jte", PicturePreviews.pictures()),
        new Preview("pictures-empty", "pictures.jte", PicturePreviews.noPictures()),
        new Preview("pictures-wrong", "pictures.jte", PicturePreviews.wrong()),
        new Preview("picture", "picture.jte", PicturePreviews.picture()),
        new Preview("picture-bare", "picture.jte", PicturePreviews.bare()),
        new Preview("picture-wrong", "picture.jte", PicturePreviews.wrongNote()),
        new Preview("saved-searches", "savedSearches.jte", SavedSearchPreviews.some()),
        new Preview("saved-searches-empty", "savedSearches.jte", SavedSearchPreviews.none()),
        new Preview("saved-searches-wrong", "savedSearches.jte", SavedSearchPreviews.wrong()),
        new Preview("editor", "editor.jte", EditorPreviews.full()),
        new Preview("editor-wrong", "editor.jte", EditorPreviews.wrong()),
        new Preview("locations", "locations.jte", DayPreviews.locations()),
        new Preview("locations-empty", "locations.jte", DayPreviews.noLocations()),
        new Preview("location", "location.jte", DayPreviews.location()),
        new Preview("location-bare", "location.jte", DayPreviews.bareLocation()),
        new Preview("location-form-wrong", "locationForm.jte", DayPreviews.wrongForm()),
        new Preview("kits", "kits.jte", StudioPreviews.kits()),
        new Preview("kits-empty", "kits.jte", StudioPreviews.noKits()),
        new Preview("kit", "kit.jte", StudioPreviews.kit()),
        new Preview("kit-form-wrong", "kitForm.jte", StudioPreviews.wrongKit()),
        new Preview("gear", "gear.jte", StudioPreviews.gear()),
        new Preview("gear-empty", "gear.jte", StudioPreviews.noGear()),
        new Preview("gear-piece", "gearPiece.jte", StudioPreviews.gearPiece()),
        new Preview("gear-form-wrong", "gearForm.jte", StudioPreviews.wrongGear()),
        new Preview("gear-piece-bare", "gearPiece.jte", StudioPreviews.gearWithoutReadings()),
        new Preview("learning", "learning.jte", LearningPreviews.learning()),
        new Preview("drill-number", "drill.jte", LearningPreviews.number()),
        new Preview("drill-number-wrong", "drill.jte", LearningPreviews.wrongNumber()),
        new Preview("drill-choice", "drill.jte", LearningPreviews.choice()),
        new Preview("drill-right", "drill.jte", LearningPreviews.right()),
        new Preview("drill-not-right", "drill.jte", LearningPreviews.notRight()),
        new Preview("trail", "trail.jte", LearningPreviews.trail()),
        new Preview("trail-form-wrong", "trailForm.jte", LearningPreviews.edit()),
        new Preview("sign-off", "signOff.jte", LearningPreviews.signOff()),
        new Preview("sign-off-judged", "signOff.jte", LearningPreviews.judged()),
        new Preview("learning-report", "learningReport.jte", LearningPreviews.report()),
        new Preview("learning-report-empty", "learningReport.jte", LearningPreviews.emptyReport()),
        new Preview("studios", "studios.jte", StudioPreviews.studios()),
        new Preview("tokens", "tokens.jte", LeavingPreviews.tokens()),
        new Preview("tokens-wrong", "tokens.jte", LeavingPreviews.noTokens()),
        new Preview("leaving", "leaving.jte", LeavingPreviews.leaving()),
        new Preview("leaving-held", "leaving.jte", LeavingPreviews.heldBack()),
        new Preview("leaving-question", "leavingQuestion.jte", LeavingPreviews.question()),
        new Preview("left", "left.jte", LeavingPreviews.left()),
        new Preview("people", "people.jte", StudioPreviews.people()),
        new Preview("audit", "audit.jte", AuditPreviews.full()),
        new Preview("audit-empty", "audit.jte", AuditPreviews.empty()),
        new Preview("share-made", "shareMade.jte", AuditPreviews.made()),
        new Preview("shared", "shared.jte", AuditPreviews.shared()),
        new Preview("invitation", "invitation.jte", MembersPreviews.invitation(false)),
        new Preview("invitation-signed-in", "invitation.jte", MembersPreviews.invitation(true)),
        new Preview("new-password", "newPassword.jte", MembersPreviews.newPassword(false)),
        new Preview("new-password-set", "newPassword.jte", MembersPreviews.newPassword(true)),
        new Preview("archive-wrong", "archive.jte", StudioPreviews.archive()),
        new Preview("index", "searchIndex.jte", StudioPreviews.index()),
        new Preview("import-running", "import.jte", StudioPreviews.running()),
        new Preview("import-faulty", "import.jte", StudioPreviews.faulty()),
        error(ProblemKind.NOT_FOUND, List.of()),
        error(ProblemKind.NOT_ALLOWED, List.of()),
        error(
            ProblemKind.INVALID,
            List.of(
                new Problem(
                    "/lights/0/place",
                    "Distance of the key (0 m) must be more than 0. Maybe 0.5 m?"),
                new Problem("/exposure/iso", "ISO (90) is not on this body’s scale. Maybe 100?"))),
        error(ProblemKind.OUR_FAULT, List.of()));
  }

  /** An error as a visitor really gets it. */
  private static Preview error(ProblemKind kind, List<Problem> problems) {
    return new Preview(
        "error-" + kind.status(),
        "error.jte",
        ProblemPages.page(
            new Layout(kind.title(), Optional.empty(), Theme.DEVICE, WordsForTests.usual(), ASSETS),
            new ProblemDetails(kind, kind.explanation(), "7f3k20qd5m", problems)));
  }

  static Layout layout(String title) {
    return new Layout(
        title, Optional.of(member("Veskarn Light")), Theme.DEVICE, WordsForTests.usual(), ASSETS);
  }

  static SignedIn member(String studioName) {
    return new SignedIn(
        studioName,
        "/demo",
        "/studios",
        "Imke Tal",
        "/sign-out",
        "c5rf",
        "/demo/setups",
        List.of(new Link("Setups", "/demo/setups"), new Link("Kits", "/demo/kits")),
        new SignedIn.Saved("/demo/saved-searches", 3),
        "/demo/setups/new",
        "/demo/setups");
  }

  static KitForm kitForm(String chosen) {
    return new KitForm(
        "/demo/setups/k3v9/adapted",
        List.of(
            kit("van", "The van: five battery heads", chosen),
            kit("two", "Two small heads and an umbrella", chosen),
            kit("hire", "Hire list, 3 packs", chosen)),
        "/demo/kits/new");
  }

  private static KitForm.Choice kit(String id, String name, String chosen) {
    return new KitForm.Choice(id, name, id.equals(chosen));
  }

  static Layout outside(String title) {
    return new Layout(title, Optional.empty(), Theme.DEVICE, WordsForTests.usual(), ASSETS);
  }

  private static SignInPage signIn(FormErrors errors, Optional<SignInPage.DemoHint> demo) {
    return new SignInPage(
        outside("Sign in"),
        "/sign-in",
        "",
        "/demo/setups/k3v9",
        errors.isEmpty() ? "" : "imke",
        errors,
        demo);
  }

  private static SignInPage.DemoHint demo() {
    return new SignInPage.DemoHint(
        List.of(
            new SignInPage.DemoMember("owner@demo.example", "may do everything"),
            new SignInPage.DemoMember("author@demo.example", "writes setups"),
            new SignInPage.DemoMember("crew@demo.example", "builds them, logs takes"),
            new SignInPage.DemoMember("reader@demo.example", "reads")),
        "first-light");
  }

  private static FormErrors signInErrors() {
    return new FormErrors(
        List.of(
            new FormErrors.FormError(
                "", "E-mail or password is wrong. After five tries wait a minute."),
            new FormErrors.FormError(
                SignInPage.EMAIL, "E-mail (imke) has no @. Maybe imke@studio.example?")));
  }

  private static FirstOwnerPage firstOwner(String name, FormErrors errors) {
    return new FirstOwnerPage(
        outside("First owner"), "/first-owner/x7", "", "Veskarn Light", name, "", 12, errors);
  }

  private static FormErrors ownerErrors() {
    return new FormErrors(
        List.of(
            new FormErrors.FormError(FirstOwnerPage.EMAIL, "E-mail is empty. You sign in with it."),
            new FormErrors.FormError(
                FirstOwnerPage.PASSWORD_AGAIN, "The two passwords differ. Type both again.")));
  }

  static PlanView plan() {
    return PlanView.of(PreviewDrawings.plan(), PreviewDrawings.planTable());
  }
}
