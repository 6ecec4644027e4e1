package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Wishes;
import lampwright.tasks.Adapting;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptKit;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.Message;
import lampwright.tasks.Once;
import lampwright.tasks.Recording;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/**
 * A setup recomputed for a kit and for what else is wished: {@code
 * /studios/{studio}/setups/{setup}/adapted?kit=…&iso=400&head.key=…}. The whole question stands in
 * the address, so that it can be shared.
 */
public final class AdaptedPages {

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  public AdaptedPages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** What these pages ask of the tasks. */
  public record Tasks(
      Cataloguing cataloguing, Recording recording, KitKeeping kits, Adapting adapting) {}

  /** What was asked of which setup. */
  private record Asked(
      Context context, Caller caller, StudioId studio, SetupId setup, WishPairs pairs) {

    String kit() {
      return pairs.find(WishPairs.KIT).orElse("");
    }

    String setupPath() {
      return SetupPages.setupPath(studio, setup);
    }

    /** Ways are numbered from 1 in addresses; anything else is the first. */
    int way() {
      String written = pairs.find(WishPairs.WAY).orElse("1");
      return written.matches("[1-9]") ? Integer.parseInt(written) - 1 : 0;
    }
  }

  /** Shows it; what a form sent goes to the address that says the same and no more. */
  public void show(Context context) {
    Asked asked = asked(context);
    switch (AdaptedQuery.read(asked.pairs())) {
      case AdaptedQuery.Read.Wrong(FormErrors errors) -> showWrong(asked, errors);
      case AdaptedQuery.Read.Sound(Wishes wishes) -> {
        if (isOfForm(context)) {
          context.redirect(
              tidy(asked, wishes).fromTheFirstWay().address(context.path()), HttpStatus.SEE_OTHER);
        } else {
          adapt(asked, wishes).ifPresent(adapted -> show(asked, wishes, adapted, Optional.empty()));
        }
      }
    }
  }

  /** Keeps the way that the address shows as a setup of its own, and goes there. */
  public void save(Context context) {
    String title = Body.form(context).get(SaveForm.TITLE);
    Asked asked = asked(context);
    switch (AdaptedQuery.read(asked.pairs())) {
      case AdaptedQuery.Read.Wrong(FormErrors errors) -> showWrong(asked, errors);
      case AdaptedQuery.Read.Sound(Wishes wishes) ->
          adapt(asked, wishes).ifPresent(adapted -> save(asked, wishes, adapted, title));
    }
  }

  private void save(Asked asked, Wishes wishes, Adapting.Adapted adapted, String title) {
    List<Adaptation> ways = AdaptedView.ways(adapted.answer());
    if (ways.isEmpty()) {
      show(asked, wishes, adapted, Optional.empty());
      return;
    }
    SetupDocument way = ways.get(Math.clamp(asked.way(), 0, ways.size() - 1)).document();
    switch (titled(way, title)) {
      case Reading.Sound<SetupDocument>(SetupDocument document) -> {
        Catalogued kept =
            tasks
                .cataloguing()
                .create(
                    asked.caller(),
                    asked.studio(),
                    document,
                    Optional.of(
                        new Cataloguing.From(
                            asked.setup().text(), Optional.of(adapted.setup().revision()))),
                    Message.none(),
                    Once.unkeyed());
        asked
            .context()
            .redirect(SetupPages.setupPath(asked.studio(), kept.id()), HttpStatus.SEE_OTHER);
      }
      case Reading.Faulty<SetupDocument>(List<Problem> problems) -> {
        asked.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(
            asked,
            wishes,
            adapted,
            Optional.of(new WrongTitle(title, problems.getFirst().message())));
      }
    }
  }

  private static Reading<SetupDocument> titled(SetupDocument document, String title) {
    Map<String, Object> written = new LinkedHashMap<>(SetupDocument.FORM.writeObject(document));
    written.put("title", title);
    return SetupDocument.FORM.read(written);
  }

  /** A title that cannot be kept, and why. */
  private record WrongTitle(String title, String message) {}

  private Asked asked(Context context) {
    return new Asked(
        context,
        door.caller(context),
        Leave.studio(context.pathParam("studio")),
        Cataloguing.id(context.pathParam("setup")),
        forItsKit(WishPairs.of(context.queryParamMap())));
  }

  /** Browsers send a form's empty and unseen fields too. */
  private static boolean isOfForm(Context context) {
    return context.queryParamMap().containsKey(WishPairs.SAID_OF)
        || context.queryParamMap().values().stream()
            .anyMatch(values -> values.stream().anyMatch(String::isBlank));
  }

  /** Where another kit was chosen, what was said of the first one's gear is not meant. */
  private static WishPairs forItsKit(WishPairs pairs) {
    Optional<String> saidOf = pairs.find(WishPairs.SAID_OF);
    WishPairs said = pairs.without(pair -> pair.name().equals(WishPairs.SAID_OF));
    return saidOf.isEmpty() || saidOf.equals(pairs.find(WishPairs.KIT)) ? said : said.forAnyKit();
  }

  /** The same question as short as it can be asked. */
  private static WishPairs tidy(Asked asked, Wishes wishes) {
    WishPairs tidy = new WishPairs(List.of()).with(WishPairs.KIT, asked.kit());
    for (WishPairs.Pair pair : AdaptedQuery.write(wishes).pairs()) {
      tidy = tidy.and(pair.name(), pair.value());
    }
    Optional<String> way = asked.pairs().find(WishPairs.WAY);
    return way.isPresent() ? tidy.with(WishPairs.WAY, way.get()) : tidy;
  }

  /** Empty where it could not be asked so, and the page says why. */
  private Optional<Adapting.Adapted> adapt(Asked asked, Wishes wishes) {
    try {
      return Optional.of(
          tasks
              .adapting()
              .adapt(asked.caller(), asked.studio(), asked.setup(), asked.kit(), wishes));
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Invalid(List<Problem> problems)) {
        showWrong(asked, AdaptedQuery.errors(asked.pairs(), problems));
        return Optional.empty();
      }
      throw refused;
    }
  }

  private void show(
      Asked asked, Wishes wishes, Adapting.Adapted adapted, Optional<WrongTitle> wrong) {
    SetupDocument setup = adapted.setup().document();
    WishPairs tidy = tidy(asked, wishes);
    FormErrors errors =
        new FormErrors(
            wrong.stream()
                .map(of -> new FormErrors.FormError(SaveForm.TITLE_ID, of.message()))
                .toList());
    Layout layout = layouts.of(asked.context(), asked.studio(), setup.title());
    templates.show(
        asked.context(),
        "adapted",
        new AdaptedView(setup, wishes, adapted.answer(), layout.words())
            .page(
                new AdaptedView.Around(
                    layout,
                    asked.setupPath(),
                    adapted.kit().document().name(),
                    asked.context().path(),
                    tidy,
                    asked.way(),
                    form(asked, setup, tidy, errors, layout.words()),
                    saveForm(asked, tidy, adapted, wrong, layout.words()))));
  }

  /** For whoever may write setups. */
  private Optional<SaveForm> saveForm(
      Asked asked,
      WishPairs tidy,
      Adapting.Adapted adapted,
      Optional<WrongTitle> wrong,
      Wording words) {
    if (!tasks.recording().state(asked.caller(), asked.studio(), adapted.setup()).mayRecord()) {
      return Optional.empty();
    }
    String offered =
        words.say(
            "adapting.savedTitle",
            adapted.setup().document().title(),
            adapted.kit().document().name());
    return Optional.of(
        new SaveForm(
            tidy.with(WishPairs.WAY, Integer.toString(asked.way() + 1))
                .address(asked.context().path()),
            door.csrfToken(asked.context()),
            wrong.map(WrongTitle::title).orElse(offered),
            wrong.map(WrongTitle::message)));
  }

  private void showWrong(Asked asked, FormErrors errors) {
    SetupDocument setup =
        tasks.cataloguing().get(asked.caller(), asked.studio(), asked.setup()).document();
    asked.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
    Layout layout = layouts.of(asked.context(), asked.studio(), setup.title());
    templates.show(
        asked.context(),
        "adapted",
        AdaptedPage.of(
            layout,
            setup.title(),
            asked.setupPath(),
            kitName(asked),
            form(asked, setup, asked.pairs(), errors, layout.words())));
  }

  private String kitName(Asked asked) {
    return tasks.kits().list(asked.caller(), asked.studio()).stream()
        .filter(kit -> kit.id().text().equals(asked.kit()))
        .map(kit -> kit.document().name())
        .findFirst()
        .orElse("");
  }

  private WishesForm form(
      Asked asked, SetupDocument setup, WishPairs pairs, FormErrors errors, Wording words) {
    List<KeptKit> all = tasks.kits().list(asked.caller(), asked.studio());
    return new WishesFormView(setup, all, pairs, errors, words).form(asked.context().path());
  }
}
