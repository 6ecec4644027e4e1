package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import lampwright.document.Problem;
import lampwright.drawing.AddressCode;
import lampwright.people.RecoveryCode;
import lampwright.tasks.Caller;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SecondFactorKeeping;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The page on which one switches one's second factor on and off. */
public final class SecondFactorPages {

  static final String PATH = AccountPages.PATH + "/second-factor";

  private static final double CODE_PT = 180;
  private static final int GROUP = 4;

  private final Door door;
  private final Entrance entrance;
  private final SecondFactorKeeping factors;
  private final Templates templates;
  private final OwnLayouts layouts;

  public SecondFactorPages(
      Door door,
      Entrance entrance,
      SecondFactorKeeping factors,
      Templates templates,
      OwnLayouts layouts) {
    this.door = door;
    this.entrance = entrance;
    this.factors = factors;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows it: {@code /account/second-factor}. */
  public void show(Context context) {
    show(context, List.of(), false, FormErrors.none());
  }

  private void show(Context context, List<RecoveryCode> fresh, boolean areAnew, FormErrors errors) {
    Caller caller = door.caller(context);
    SecondFactorKeeping.Standing standing = factors.get(caller);
    Layout layout = layouts.named(context, "account.factor.title");
    Wording words = layout.words();
    templates.show(
        context,
        "secondFactor",
        new SecondFactorPage(
            layout,
            door.csrfToken(context),
            caller.person().email(),
            AccountPages.PATH,
            factors.findOffer(caller).map(offer -> offered(words, offer)),
            standing.since().map(new DayWords(words)::day).orElse(""),
            standing.recoveryCodes(),
            fresh.stream().map(RecoveryCode::grouped).toList(),
            areAnew,
            errors));
  }

  private static SecondFactorPage.Offered offered(Wording words, SecondFactorKeeping.Offer offer) {
    return new SecondFactorPage.Offered(
        AddressCode.of(offer.address(), words.say("account.factor.qr"), CODE_PT),
        List.of(offer.secret().base32().split("(?<=\\G.{" + GROUP + "})", -1)).stream()
            .filter(group -> !group.isEmpty())
            .toList(),
        offer.address());
  }

  /** Offers a secret. */
  public void offer(Context context) {
    FormFields sent = Body.form(context);
    attempt(
        context,
        () -> {
          factors.offer(
              door.caller(context), sent.get(SecondFactorPage.PASSWORD), entrance.visit(context));
          context.redirect(PATH, HttpStatus.SEE_OTHER);
        });
  }

  /** Takes the first code, and shows the recovery codes: no redirect, or nobody would see them. */
  public void confirm(Context context) {
    FormFields sent = Body.form(context);
    attempt(
        context,
        () -> {
          SecondFactorKeeping.SwitchedOn on =
              factors.confirm(
                  door.caller(context),
                  entrance.session(context),
                  sent.get(SecondFactorPage.CODE),
                  entrance.visit(context));
          entrance.goOn(context, on.session());
          show(context, on.recoveryCodes(), false, FormErrors.none());
        });
  }

  /** Makes new recovery codes and shows them: no redirect, or nobody would see them. */
  public void remakeRecoveryCodes(Context context) {
    FormFields sent = Body.form(context);
    attempt(
        context,
        SecondFactorPage.ANEW,
        () ->
            show(
                context,
                factors.remakeRecoveryCodes(
                    door.caller(context),
                    sent.get(SecondFactorPage.ANEW + SecondFactorPage.PASSWORD),
                    sent.get(SecondFactorPage.ANEW + SecondFactorPage.CODE),
                    entrance.visit(context)),
                true,
                FormErrors.none()));
  }

  /** Switches it off. */
  public void switchOff(Context context) {
    FormFields sent = Body.form(context);
    attempt(
        context,
        () -> {
          String token =
              factors.switchOff(
                  door.caller(context),
                  entrance.session(context),
                  sent.get(SecondFactorPage.PASSWORD),
                  sent.get(SecondFactorPage.CODE),
                  entrance.visit(context));
          entrance.goOn(context, token);
          context.redirect(AccountPages.PATH, HttpStatus.SEE_OTHER);
        });
  }

  private void attempt(Context context, Runnable change) {
    attempt(context, "", change);
  }

  /**
   * Does it; or shows the page again.
   *
   * @param before what stands before the names of the form's fields
   */
  private void attempt(Context context, String before, Runnable change) {
    try {
      change.run();
    } catch (Refused refused) {
      switch (refused.refusal()) {
        case Refusal.Invalid(List<Problem> problems) -> {
          context.status(HttpStatus.UNPROCESSABLE_CONTENT);
          FormErrors errors = AccountPages.errors(layouts.words(context), problems);
          show(context, List.of(), false, errors.withFieldsAfter(before));
        }
        // Done elsewhere meanwhile, or too late: the page says how it stands now.
        case Refusal.Clash _ -> context.redirect(PATH, HttpStatus.SEE_OTHER);
        default -> throw refused;
      }
    }
  }
}
