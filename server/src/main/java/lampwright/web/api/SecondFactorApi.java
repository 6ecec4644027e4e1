package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.RecoveryCode;
import lampwright.tasks.Passwords;
import lampwright.tasks.SecondFactorKeeping;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;

/** A person's second factor: how it stands, on and off. */
public final class SecondFactorApi {

  private static final int CREATED = 201;
  private static final int LONGEST_CODE = 60;

  private static final Field<Proof, String> PASSWORD =
      Field.required(
          "password", Forms.text(Passwords.LONGEST), Proof::password, "The present password.");
  private static final Form<Proof> PROOF =
      ObjectForm.of(
          "password_proof",
          "Proves again who asks.",
          values -> new Proof(values.get(PASSWORD)),
          List.of(PASSWORD));
  private static final Field<First, String> FIRST_CODE =
      Field.required(
          "code", Forms.text(LONGEST_CODE), First::code, "The code that the device shows now.");
  private static final Form<First> FIRST =
      ObjectForm.of(
          "first_code",
          "Shows that a device has taken the secret.",
          values -> new First(values.get(FIRST_CODE)),
          List.of(FIRST_CODE));
  private static final Field<Both, String> BOTH_PASSWORD =
      Field.required(
          "password", Forms.text(Passwords.LONGEST), Both::password, "The present password.");
  private static final Field<Both, String> BOTH_CODE =
      Field.required(
          "code",
          Forms.text(LONGEST_CODE),
          Both::code,
          "The code that the device shows now, or a recovery code.");
  private static final Form<Both> BOTH =
      ObjectForm.of(
          "both_factors",
          "Proves again who asks, by both factors.",
          values -> new Both(values.get(BOTH_PASSWORD), values.get(BOTH_CODE)),
          List.of(BOTH_PASSWORD, BOTH_CODE));

  private final Door door;
  private final Entrance entrance;
  private final SecondFactorKeeping factors;

  public SecondFactorApi(Door door, Entrance entrance, SecondFactorKeeping factors) {
    this.door = door;
    this.entrance = entrance;
    this.factors = factors;
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    return List.of(PROOF, FIRST, BOTH);
  }

  private record Proof(String password) {

    /** No record's text may carry a password into a log. */
    @Override
    public String toString() {
      return "Proof";
    }
  }

  private record First(String code) {

    /** No record's text may carry a code into a log. */
    @Override
    public String toString() {
      return "First";
    }
  }

  private record Both(String password, String code) {

    /** No record's text may carry a password into a log. */
    @Override
    public String toString() {
      return "Both";
    }
  }

  private record Standing(boolean on, Optional<Instant> since, int recoveryCodesLeft) {}

  private record Offered(String secret, String address) {}

  private record Recovery(List<String> recoveryCodes) {}

  private record SwitchedOn(List<String> recoveryCodes, String csrfToken) {}

  /** How it stands. */
  public void get(Context context) {
    SecondFactorKeeping.Standing standing = factors.get(door.caller(context));
    context.json(
        new Standing(standing.since().isPresent(), standing.since(), standing.recoveryCodes()));
  }

  /** Offers a secret for a device to take. */
  public void offer(Context context) {
    SecondFactorKeeping.Offer offer =
        factors.offer(
            door.caller(context),
            Documents.read(context, PROOF).password(),
            entrance.visit(context));
    context.status(CREATED).header("Location", "/api/account/second-factor");
    context.json(new Offered(offer.secret().base32(), offer.address()));
  }

  /** Switches it on, and shows the recovery codes this once. */
  public void confirm(Context context) {
    SecondFactorKeeping.SwitchedOn on =
        factors.confirm(
            door.caller(context),
            entrance.session(context),
            Documents.read(context, FIRST).code(),
            entrance.visit(context));
    context.json(
        new SwitchedOn(
            on.recoveryCodes().stream().map(RecoveryCode::grouped).toList(),
            entrance.goOn(context, on.session())));
  }

  /** Makes new recovery codes, and shows them this once. */
  public void remakeRecoveryCodes(Context context) {
    Both both = Documents.read(context, BOTH);
    context.json(
        new Recovery(
            factors
                .remakeRecoveryCodes(
                    door.caller(context), both.password(), both.code(), entrance.visit(context))
                .stream()
                .map(RecoveryCode::grouped)
                .toList()));
  }

  /** Switches it off. */
  public void switchOff(Context context) {
    Both both = Documents.read(context, BOTH);
    String token =
        factors.switchOff(
            door.caller(context),
            entrance.session(context),
            both.password(),
            both.code(),
            entrance.visit(context));
    context.json(new AccountApi.GoesOn(entrance.goOn(context, token)));
  }
}
