package lampwright.web.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.setup.LightId;
import lampwright.setup.SetupId;
import lampwright.setup.comparing.About;
import lampwright.setup.comparing.Change;
import lampwright.tasks.Caller;
import lampwright.tasks.Comparing;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;

/** What differs between two revisions, or two setups: {@code ?from=&to=} or {@code ?to_setup=}. */
public final class ComparisonApi {

  private static final String FROM = "from";
  private static final String TO = "to";
  private static final String TO_SETUP = "to_setup";

  private final Door door;
  private final Comparing comparing;

  public ComparisonApi(Door door, Comparing comparing) {
    this.door = door;
    this.comparing = comparing;
  }

  private record Side(String setup, int revision, String title) {

    static Side of(Comparing.Side side) {
      return new Side(side.setup().text(), side.revision(), side.document().title());
    }
  }

  private record AboutJson(String kind, Optional<String> light, Optional<String> role) {

    static AboutJson of(About about) {
      return new AboutJson(
          about.kind().word(),
          about.light().map(LightId::text),
          about.role().map(role -> role.name().toLowerCase(Locale.ROOT)));
    }
  }

  private record ChangeJson(
      String pointer,
      AboutJson about,
      Optional<Object> before,
      Optional<Object> after,
      Optional<String> unit,
      String sentence) {

    static ChangeJson of(Change change) {
      return new ChangeJson(
          change.pointer(),
          AboutJson.of(change.about()),
          change.before(),
          change.after(),
          Optional.of(change.unit()).filter(unit -> !unit.isEmpty()),
          InEnglish.say(change.sentence()));
    }
  }

  private record Compared(Side from, Side to, List<ChangeJson> changes) {}

  /** Compares. */
  public void compare(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = SetupApi.studio(context);
    SetupId id = SetupApi.setup(context);
    Optional<Integer> from = revision(context, FROM);
    Optional<Integer> to = revision(context, TO);
    Optional<String> other = Optional.ofNullable(context.queryParam(TO_SETUP));
    if (other.isPresent() && (from.isPresent() || to.isPresent())) {
      throw Refused.invalid("/" + TO_SETUP, "To setup stands alone, without from and to.");
    }
    Comparing.Compared compared =
        other.isPresent()
            ? comparing.setups(caller, studio, id, other.get())
            : comparing.revisions(caller, studio, id, from.orElseThrow(ComparisonApi::missing), to);
    context.json(
        new Compared(
            Side.of(compared.from()),
            Side.of(compared.to()),
            compared.changes().stream().map(ChangeJson::of).toList()));
  }

  private static Refused missing() {
    return Refused.invalid(
        "/" + FROM, "From is missing. The revision to compare from, or to_setup.");
  }

  private static Optional<Integer> revision(Context context, String name) {
    Optional<String> written = Optional.ofNullable(context.queryParam(name));
    if (written.filter(text -> !text.matches("[1-9]\\d{0,8}")).isPresent()) {
      throw Refused.invalid("/" + name, "A revision is a whole number from 1. Maybe 1?");
    }
    return written.map(Integer::valueOf);
  }
}
