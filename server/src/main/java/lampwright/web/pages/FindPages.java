package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampwright.people.StudioId;
import lampwright.search.Instead;
import lampwright.search.MarkedText;
import lampwright.search.Question;
import lampwright.search.filter.Filter;
import lampwright.setup.SetupDocument;
import lampwright.tasks.Caller;
import lampwright.tasks.Finding;
import lampwright.tasks.Leave;
import lampwright.tasks.PictureGiving;
import lampwright.web.api.AskedSearch;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/** The page where setups are found: {@code /studios/{studio}/setups?q=…&filter=…}. */
public final class FindPages {

  private static final int HITS_A_PAGE = 20;

  private static final int LONGEST_PASSAGE = 160;

  /** What a list does not show anyway. */
  private static final Set<String> IN_PASSAGES = Set.of("notes");

  /** A dial's click, half a stop and what one still sees past; common practice, no source. */
  private static final List<Double> TOLERANCES_STOPS =
      List.of(Filter.Buildable.USUAL_STOPS, 0.5, 1.0, 2.0, Filter.Buildable.MOST_STOPS);

  private final Door door;
  private final Finding finding;
  private final PictureGiving giving;
  private final DrawnSetups drawings;
  private final Templates templates;
  private final StudioLayouts layouts;

  public FindPages(
      Door door,
      Finding finding,
      PictureGiving giving,
      DrawnSetups drawings,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.finding = finding;
    this.giving = giving;
    this.drawings = drawings;
    this.templates = templates;
    this.layouts = layouts;
  }

  /**
   * Shows what was found; without words all setups. A bracket that says nothing that is known stays
   * in the box with a line about it, and the rest of the search goes on.
   */
  public void find(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Caller caller = door.caller(context);
    AskedSearch search =
        AskedSearch.of(context, filters -> finding.locate(caller, studio, filters));
    AskedLike like = AskedLike.of(context, setup -> finding.likeThis(caller, studio, setup));
    FindAddress asked = address(context, search, like);
    Question question =
        new Question(
            studio.text(),
            search.words(),
            asked.filters(),
            FoundFacets.COUNTED,
            asked.order(),
            HITS_A_PAGE,
            first(context, "cursor"),
            Optional.empty(),
            new Question.StandingWanted(asked.archived(), false));
    Finding.FoundPage found = finding.find(caller, studio, like.ask(question));
    if (found.byWordsAlone() || found.notJudged() > 0) {
      KeptPages.passing(context);
    }
    Wording words = layouts.words(context);
    FilterWords filterWords = new FilterWords(words);
    FoundFacets facets = new FoundFacets(asked, found.facets(), found.total(), words);
    Layout layout =
        layouts.of(
            context,
            studio,
            asked.text().isEmpty() ? words.say("pages.find.setups") : asked.text());
    templates.show(
        context,
        "find",
        new FindPage(
            layout,
            asked.path(),
            asked.text(),
            asked.kept(),
            Stream.concat(
                    search.faults().stream().map(fault -> words.say(fault.line())),
                    like.faults().stream())
                .toList(),
            Stream.concat(
                    like.mark(asked, words).stream(),
                    asked.filters().stream()
                        .map(f -> new Link(filterWords.of(f), asked.without(f).toString())))
                .toList(),
            facets.telling(),
            facets.others(),
            found.items().stream().map(item -> hit(studio, item, asked.path(), words)).toList(),
            words.count("pages.find.total", found.total()),
            asked.path(),
            orders(asked, words),
            found.next().map(cursor -> asked.address().with("cursor", cursor).toString()),
            remark(found, like, words),
            lacks(asked, found.instead(), filterWords),
            examples(asked.path(), finding.examples(caller, studio), words),
            tolerances(asked, words),
            asked.filters().stream().anyMatch(Filter.Buildable.class::isInstance)
                ? List.of()
                : finding.kits(caller, studio).stream().map(FindPages::kitChoice).toList(),
            new FindPage.Showing(ShownPicturePages.path(studio), door.csrfToken(context)),
            search.faults().isEmpty()
                ? keeping(context, studio, asked, filterWords)
                : Optional.empty()));
  }

  private Optional<FindPage.Keeping> keeping(
      Context context, StudioId studio, FindAddress asked, FilterWords words) {
    String address = asked.toString();
    boolean isAnySearch = !asked.text().isEmpty() || !asked.filters().isEmpty();
    return !isAnySearch || asked.like().isPresent()
        ? Optional.empty()
        : Optional.of(
            new FindPage.Keeping(
                SavedSearchPages.path(studio),
                door.csrfToken(context),
                address.substring(address.indexOf('?') + 1),
                SavedSearchPages.suggestedName(
                    asked.text(), asked.filters().stream().map(words::of).toList())));
  }

  /** The tolerances to choose from, where there is a kit. */
  private static List<FindPage.Tolerance> tolerances(FindAddress asked, Wording words) {
    return asked.filters().stream()
        .flatMap(
            filter ->
                filter instanceof Filter.Buildable buildable
                    ? TOLERANCES_STOPS.stream()
                        .map(stops -> tolerance(asked, buildable, stops, words))
                    : Stream.empty())
        .toList();
  }

  private static FindPage.Tolerance tolerance(
      FindAddress asked, Filter.Buildable now, double stops, Wording words) {
    Filter other = now.withStops(stops);
    List<Filter> filters = new ArrayList<>(asked.filters());
    filters.replaceAll(filter -> filter.equals(now) ? other : filter);
    return new FindPage.Tolerance(
        stops == Filter.Buildable.MOST_STOPS ? words.say("pages.find.however") : words.stops(stops),
        asked.withFilters(filters).toString(),
        other.equals(now));
  }

  private static FindPage.KitChoice kitChoice(String name) {
    Filter filter = new Filter.Buildable(name, Filter.Buildable.USUAL_STOPS);
    return new FindPage.KitChoice(name, filter.bracket());
  }

  private static Optional<String> remark(Finding.FoundPage found, AskedLike like, Wording words) {
    List<String> remarks = new ArrayList<>(like.remark(words).stream().toList());
    if (found.byWordsAlone()) {
      remarks.add(words.say("pages.find.byWordsAlone"));
    }
    if (found.notJudged() > 0) {
      remarks.add(words.count("pages.find.notJudged", found.notJudged()));
    }
    return remarks.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", remarks));
  }

  private static FindAddress address(Context context, AskedSearch search, AskedLike like) {
    return new FindAddress(
        context.path(),
        (search.words() + " " + search.faulty()).strip(),
        search.filters(),
        first(context, "archived").filter("true"::equals).isPresent(),
        switch (first(context, "sort").orElse("")) {
          case "near" -> Question.Order.NEAR;
          case "off" -> Question.Order.OFF;
          default -> Question.Order.BEST;
        },
        like.part());
  }

  private static Optional<String> first(Context context, String name) {
    return context.queryParams(name).stream().filter(value -> !value.isBlank()).findFirst();
  }

  private static List<Link> orders(FindAddress asked, Wording words) {
    return asked.orders().stream()
        .filter(order -> order != asked.order())
        .map(order -> new Link(named(asked, order, words), asked.withOrder(order).toString()))
        .toList();
  }

  private static String named(FindAddress asked, Question.Order order, Wording words) {
    return switch (order) {
      case BEST ->
          asked.text().isEmpty() ? words.say("pages.find.newest") : words.say("pages.find.best");
      case NEAR -> words.say("pages.find.nearest");
      case OFF -> words.say("pages.find.leastOff");
    };
  }

  private static List<FindPage.Lack> lacks(
      FindAddress asked, List<Instead> instead, FilterWords words) {
    Map<String, List<FindPage.Offer>> offers = new LinkedHashMap<>();
    for (Instead other : instead) {
      offers
          .computeIfAbsent(words.lack(other), _ -> new ArrayList<>())
          .add(
              new FindPage.Offer(
                  words.offer(other),
                  other.total(),
                  asked.withText(other.text()).withFilters(other.filters()).toString()));
    }
    List<FindPage.Lack> lacks = new ArrayList<>();
    offers.forEach((lack, all) -> lacks.add(new FindPage.Lack(lack, all)));
    return lacks;
  }

  private static List<FindPage.Example> examples(String path, List<Filter> filters, Wording words) {
    return filters.stream()
        .map(
            filter -> {
              String typed = "[" + filter.bracket() + "]";
              return new FindPage.Example(
                  typed, meaning(filter, words), Address.of(path).with("q", typed).toString());
            })
        .toList();
  }

  private static String meaning(Filter filter, Wording words) {
    return switch (filter) {
      case Filter.OneOf _ -> words.say("pages.find.oneOf");
      case Filter.NoneOf _ -> words.say("pages.find.noneOf");
      case Filter.Range _ -> words.say("pages.find.range");
      case Filter.Buildable _ -> words.say("pages.find.makes");
      case Filter.Near _ -> words.say("pages.find.near");
    };
  }

  /** A text that the list shows whole. */
  private static List<MarkedText.Piece> marked(Finding.Found found, String field, String text) {
    return found.why().stream()
        .filter(why -> why.field().equals(field) && why.text().equals(text))
        .findFirst()
        .orElseGet(() -> new MarkedText(field, text, List.of()))
        .pieces();
  }

  private static List<Hit.Passage> passages(Finding.Found found, Wording words) {
    return found.why().stream()
        .filter(why -> IN_PASSAGES.contains(why.field()))
        .map(
            why ->
                new Hit.Passage(
                    words.say("finding.field." + why.field()),
                    why.passage(LONGEST_PASSAGE).pieces()))
        .toList();
  }

  private Hit hit(StudioId studio, Finding.Found found, String findPath, Wording words) {
    SetupDocument setup = found.setup().document();
    DrawnSetups.Card card = drawings.card(setup, words.notation());
    return new Hit(
        marked(found, "title", setup.title()),
        findPath + "/" + found.setup().id().text(),
        SetupView.placeAndDate(setup, words),
        marked(found, "intent", setup.intent().orElse("")),
        setup.moods(),
        passages(found, words),
        words.say(found.reasons()),
        card.figures(),
        Optional.of(card.plan()),
        found
            .picture()
            .filter(
                picture -> giving.whereabouts(picture.sha256()) == PictureGiving.Whereabouts.THERE)
            .map(picture -> PictureTile.of(studio, found.setup().id(), picture, words)));
  }
}
