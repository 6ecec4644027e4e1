package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.drawing.AddressCode;
import lampwright.wording.WordsForTests;

/** One's own account and its second factor in every state. */
final class AccountPreviews {

  private static final String ADDRESS =
      "otpauth://totp/Lampwright:imke%40light.example?secret=GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ&issuer=Lampwright";

  private AccountPreviews() {}

  static AccountPage account() {
    return account("password", FormErrors.none());
  }

  static AccountPage wrong() {
    return account(
        "",
        new FormErrors(
            List.of(
                new FormErrors.FormError("email", "E-mail must be an address with one @."),
                new FormErrors.FormError("current", "This is not your present password."))));
  }

  private static AccountPage account(String kept, FormErrors errors) {
    return new AccountPage(
        PagePreviews.layout("Your account"),
        "c5rf",
        3,
        "Imke Tal",
        "imke@light.example",
        12,
        "Off. Your password alone lets you in.",
        new Link("Switch on", "/account/second-factor"),
        List.of(
            new AccountPage.SessionLine(
                "Station tablet", "4 May 2031", "5 May 2031, 18:05 UTC", true, "/account/a"),
            new AccountPage.SessionLine(
                "Devicewithanamethatneverends".repeat(7),
                "4 May 2031",
                "5 May 2031, 18:05 UTC",
                false,
                "/account/b")),
        List.of(
            new AuditPage.Line(
                "5 May 2031, 18:05 UTC",
                "2031-05-05T18:05:00Z",
                "A wrong password or code was given, 14 times",
                ""),
            new AuditPage.Line(
                "4 May 2031, 09:12 UTC",
                "2031-05-04T09:12:00Z",
                "The token “" + "Atokenwithanamethatneverends".repeat(5) + "” was made",
                "")),
        "/account/events",
        kept,
        errors);
  }

  static AccountEventsPage events() {
    return new AccountEventsPage(
        PagePreviews.layout("What happened with your account"),
        "/account",
        List.of(
            new AuditPage.Day(
                "5 May 2031",
                List.of(
                    new AuditPage.Line(
                        "18:05", "2031-05-05T18:05:00Z", "Signed in, in a new browser", ""),
                    new AuditPage.Line(
                        "17:58",
                        "2031-05-05T17:58:00Z",
                        "The token “" + "Atokenwithanamethatneverends".repeat(5) + "” was made",
                        ""))),
            new AuditPage.Day(
                "4 May 2031",
                List.of(
                    new AuditPage.Line(
                        "09:12", "2031-05-04T09:12:00Z", "The password was changed", "")))),
        "/account/events?cursor=7");
  }

  static SecondFactorPage off() {
    return factor(
        Optional.empty(), "", List.of(), FormErrors.of("password", "Not your present password."));
  }

  static SecondFactorPage offered() {
    return factor(
        Optional.of(
            new SecondFactorPage.Offered(
                AddressCode.of(ADDRESS, "The key", 180),
                List.of("GEZD", "GNBV", "GY3T", "QOJQ", "GEZD", "GNBV", "GY3T", "QOJQ"),
                ADDRESS)),
        "",
        List.of(),
        FormErrors.of("code", "This code is not the one of now."));
  }

  static SecondFactorPage on() {
    return factor(Optional.empty(), "4 May 2031", List.of(), FormErrors.none());
  }

  static SecondFactorPage codes() {
    return factor(
        Optional.empty(),
        "4 May 2031",
        IntStream.range(0, 10).mapToObj(i -> "7f3k-20qd-5mzz-a8c4-00v" + i + "-9hjk").toList(),
        FormErrors.none());
  }

  private static SecondFactorPage factor(
      Optional<SecondFactorPage.Offered> offer,
      String since,
      List<String> codes,
      FormErrors errors) {
    return new SecondFactorPage(
        PagePreviews.layout("Second factor"),
        "c5rf",
        "imke@studio.example",
        "/account",
        offer,
        since,
        9,
        codes,
        false,
        errors);
  }

  static SignInCodePage code() {
    return new SignInCodePage(
        new Layout(
            "Your code",
            Optional.empty(),
            Theme.DEVICE,
            WordsForTests.usual(),
            PagePreviews.ASSETS),
        "/sign-in/code",
        "/account",
        "/sign-in?again",
        FormErrors.of("code", "This code is not the one of now."));
  }
}
