package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.web.pages.TokensPage.Choice;
import lampwright.web.pages.TokensPage.Question;

/** Tokens, taking out and leaving. */
final class LeavingPreviews {

  private static final List<String> STUDIOS = List.of("Tidewater Studio (Author)");

  private LeavingPreviews() {}

  private static TokensPage tokens(
      Optional<TokensPage.Made> made, List<TokensPage.One> all, FormErrors errors) {
    return new TokensPage(
        PagePreviews.layout("Tokens for programs"),
        "/account/tokens",
        "csrf",
        "",
        List.of(
            new Question(
                TokensPage.AT_MOST,
                "It may do",
                List.of(new Choice("", "all that I may", true), new Choice("crew", "Crew", false))),
            new Question(
                TokensPage.STUDIO, "In", List.of(new Choice("", "each of my studios", true))),
            new Question(
                TokensPage.DAYS, "It ends", List.of(new Choice("90", "after 90 days", true)))),
        made,
        all,
        errors);
  }

  static TokensPage tokens() {
    return tokens(
        Optional.of(
            new TokensPage.Made(
                "backup on the office machine",
                "kBv0m1pN3xRk7cYw2sHd9qLz4tJf6gUa8eVi5oXbWnC",
                "curl -H \"Authorization: Bearer $LAMPWRIGHT_TOKEN\""
                    + " https://light.studio.example/api/studios")),
        List.of(
            new TokensPage.One(
                "backup on the office machine",
                "at most as Reader, in Tidewater Studio only",
                "made 4 May 2031, ends 2 August 2031",
                false,
                "last used 5 May 2031",
                "/account/tokens/a/removal"),
            new TokensPage.One(
                "an old script with a very long name that goes on for longer than a line has room",
                "all that you may, in each of your studios",
                "made 4 May 2030, ended 2 August 2030",
                true,
                "not used yet",
                "/account/tokens/b/removal")),
        FormErrors.none());
  }

  static TokensPage noTokens() {
    return tokens(
        Optional.empty(),
        List.of(),
        FormErrors.of(TokensPage.NAME, "Say what the token is for, in 1 to 200 characters."));
  }

  static LeavingPage leaving() {
    return new LeavingPage(
        PagePreviews.layout("Your data, and leaving"),
        "/api/account/data",
        List.of(),
        "/account/leaving/question");
  }

  static LeavingPage heldBack() {
    return new LeavingPage(
        PagePreviews.layout("Your data, and leaving"),
        "/api/account/data",
        List.of(new Link("Tidewater Studio", "/studios/tidewater/people")),
        "");
  }

  static LeavingQuestionPage question() {
    return new LeavingQuestionPage(
        PagePreviews.layout("Leave for good?"),
        "/account/leaving/question",
        "csrf",
        "Imke Haldorsen",
        LeavingQuestionPage.NAMELESS,
        STUDIOS,
        "/account/leaving",
        FormErrors.of(
            LeavingQuestionPage.PASSWORD,
            "This is not the password that you sign in with. Type it again."));
  }

  static LeftPage left() {
    return new LeftPage(PagePreviews.layout("You have left"), "/");
  }
}
