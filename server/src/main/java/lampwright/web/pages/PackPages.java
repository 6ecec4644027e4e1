package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.document.Forms;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.setup.SetupId;
import lampwright.setup.packing.DayWishes;
import lampwright.setup.packing.SunEvent;
import lampwright.tasks.Caller;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.DayPacking;
import lampwright.tasks.Finding;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.api.PackingQuery;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/** The page on which a day is packed: {@code /studios/{studio}/packing?setup=…&kit=…}. */
public final class PackPages {

  private static final int MOST_FOUND = 8;
  private static final int USUAL_HANDS = 2;

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What this page asks. */
  public record Tasks(
      DayPacking packing, Cataloguing cataloguing, KitKeeping kits, Finding finding) {}

  public PackPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio + "/packing";
  }

  /** A day with one setup, for the light that it was made in. */
  static String forSetup(StudioId studio, SetupId setup) {
    return Address.of(path(studio))
        .with(PackQuery.SETUP, setup.text())
        .with(PackQuery.READY_BY, PackingQuery.SUN_AS_IT_WAS)
        .text();
  }

  /** Shows it. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    PackQuery query = PackQuery.of(context);
    if (query.isRaw()) {
      context.redirect(query.tidied(path(studio)), HttpStatus.SEE_OTHER);
      return;
    }
    Layout layout = layouts.named(context, studio, "packing.heading");
    Caller caller = door.caller(context);
    FormErrors errors = FormErrors.none();
    Optional<PackPage.Day> day = Optional.empty();
    if (!query.isEmpty()) {
      try {
        DayPacking.Packed packed = tasks.packing().pack(caller, studio, PackQuery.asked(context));
        day = Optional.of(new PackView(packed, layout.words()).day());
      } catch (Refused refused) {
        errors = errors(refused);
        context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      }
    }
    templates.show(
        context,
        "pack",
        new PackPage(
            layout,
            form(caller, studio, query, layout.words()),
            errors,
            found(caller, studio, query),
            day));
  }

  /** What is wrong with what was asked; all other refusals go on. */
  private static FormErrors errors(Refused refused) {
    return switch (refused.refusal()) {
      case Refusal.Invalid(var problems) ->
          new FormErrors(
              problems.stream()
                  .map(of -> new FormErrors.FormError(field(of.pointer()), of.message()))
                  .toList());
      default -> throw refused;
    };
  }

  private static String field(String pointer) {
    String name = pointer.replaceFirst("^/([^/]*).*", "$1");
    return switch (name) {
      case PackQuery.SETUP -> "pack-q";
      case PackQuery.KIT -> "pack-kits";
      case PackQuery.READY_BY -> "ready-0";
      default -> name;
    };
  }

  private PackForm form(Caller caller, StudioId studio, PackQuery query, Wording words) {
    List<String> setups = query.all(PackQuery.SETUP);
    List<PackForm.Chosen> chosen = new ArrayList<>();
    for (int i = 0; i < Math.min(setups.size(), DayPacking.MOST_SETUPS); i++) {
      chosen.add(chosen(caller, studio, query, i, words));
    }
    List<String> coming = query.all(PackQuery.KIT);
    return new PackForm(
        path(studio),
        chosen,
        query.one(PackForm.WORDS),
        hands(query),
        DayWishes.MOST_HANDS,
        tasks.kits().names(caller, studio).entrySet().stream()
            .map(
                kit ->
                    new PackForm.Kit(
                        kit.getKey().text(), kit.getValue(), coming.contains(kit.getKey().text())))
            .toList(),
        query.one(PackQuery.ADAPTED).equals("true"),
        query.one(PackQuery.DAY),
        query.one(PackQuery.NOT_BEFORE),
        query.one(PackQuery.COLD).equals("true"),
        times(query, words));
  }

  private static int hands(PackQuery query) {
    String hands = query.one(PackQuery.HANDS);
    return hands.matches("[1-8]") ? Integer.parseInt(hands) : USUAL_HANDS;
  }

  private PackForm.Chosen chosen(
      Caller caller, StudioId studio, PackQuery query, int i, Wording words) {
    String id = query.all(PackQuery.SETUP).get(i);
    String light = query.light(i, query.all(PackQuery.SETUP).size());
    boolean isTime = Forms.timeOfDay().read(light) instanceof Reading.Sound<?>;
    List<PackForm.Option> lights = new ArrayList<>();
    for (String key : lightKeys()) {
      lights.add(new PackForm.Option(key, words.say("packing.light." + key), key.equals(light)));
    }
    return new PackForm.Chosen(
        id, i + 1, title(caller, studio, id), pathOf(studio, id), lights, isTime ? light : "");
  }

  private static List<String> lightKeys() {
    List<String> keys = new ArrayList<>();
    keys.add(PackingQuery.ANY_TIME);
    keys.add(PackingQuery.SUN_AS_IT_WAS);
    for (SunEvent event : SunEvent.values()) {
      keys.add(event.key());
    }
    return keys;
  }

  /** The title, or the id where there is no such setup: the message says so. */
  private String title(Caller caller, StudioId studio, String id) {
    if (!Ids.isId(id)) {
      return id;
    }
    try {
      return tasks.cataloguing().get(caller, studio, new SetupId(id)).document().title();
    } catch (Refused refused) {
      return id;
    }
  }

  private static String pathOf(StudioId studio, String id) {
    return Ids.isId(id) ? SetupPages.setupPath(studio, new SetupId(id)) : path(studio);
  }

  private static List<PackForm.Time> times(PackQuery query, Wording words) {
    List<Integer> usual = PackingQuery.usualMinutes();
    return IntStream.range(0, PackingQuery.WORK.size())
        .mapToObj(
            i -> {
              String work = PackingQuery.WORK.get(i);
              String field = PackingQuery.minutes(work);
              return new PackForm.Time(
                  field, words.say("packing.time." + work), query.one(field), usual.get(i));
            })
        .toList();
  }

  private List<Link> found(Caller caller, StudioId studio, PackQuery query) {
    String asked = query.one(PackForm.WORDS);
    if (asked.isEmpty()) {
      return List.of();
    }
    return tasks
        .finding()
        .find(caller, studio, Question.of(studio.text(), asked).withLimit(MOST_FOUND))
        .items()
        .stream()
        .map(Finding.Found::setup)
        .map(
            setup ->
                new Link(setup.document().title(), query.adding(path(studio), setup.id().text())))
        .toList();
  }
}
