package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Function;
import lampwright.drawing.Plan;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Finding;
import lampwright.tasks.Leave;
import lampwright.tasks.PictureGiving;
import lampwright.web.http.Door;

/** The page where setups are found: {@code /studios/{studio}/setups?q=…&mood=…}. */
public final class FindPages {

  private static final int HITS_A_PAGE = 20;
  private static final String STATE = "state";
  private static final String ARCHIVED = "archived";
  private static final Set<String> STATES = Set.of("draft", "proven");
  private static final int MOST_CHOICES = 14;

  private final Door door;
  private final Finding finding;
  private final PictureGiving giving;
  private final Templates templates;
  private final StudioLayouts layouts;

  public FindPages(
      Door door,
      Finding finding,
      PictureGiving giving,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.finding = finding;
    this.giving = giving;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** What the visitor asked, as it stands in the address. */
  private record Asked(
      String path,
      String text,
      List<String> moods,
      Optional<String> place,
      Optional<String> kind,
      Optional<String> state,
      boolean archived) {

    static Asked of(Context context) {
      return new Asked(
          context.path(),
          first(context, "q").orElse(""),
          context.queryParams("mood").stream().filter(mood -> !mood.isBlank()).limit(20).toList(),
          first(context, "place"),
          first(context, "place_kind"),
          first(context, STATE).filter(STATES::contains),
          first(context, ARCHIVED).filter("true"::equals).isPresent());
    }

    private static Optional<String> first(Context context, String name) {
      return context.queryParams(name).stream().filter(value -> !value.isBlank()).findFirst();
    }

    Asked withMoods(List<String> other) {
      return new Asked(path, text, other, place, kind, state, archived);
    }

    Asked withPlace(Optional<String> other) {
      return new Asked(path, text, moods, other, kind, state, archived);
    }

    Asked withKind(Optional<String> other) {
      return new Asked(path, text, moods, place, other, state, archived);
    }

    Asked withState(Optional<String> other) {
      return new Asked(path, text, moods, place, kind, other, archived);
    }

    Question.StandingWanted standing() {
      return new Question.StandingWanted(state, archived, false);
    }

    Address address() {
      Address address = Address.of(path);
      if (!text.isEmpty()) {
        address = address.with("q", text);
      }
      for (String mood : moods) {
        address = address.with("mood", mood);
      }
      if (place.isPresent()) {
        address = address.with("place", place.get());
      }
      if (kind.isPresent()) {
        address = address.with("place_kind", kind.get());
      }
      if (state.isPresent()) {
        address = address.with(STATE, state.get());
      }
      return archived ? address.with(ARCHIVED, "true") : address;
    }

    List<FindPage.Kept> kept() {
      List<FindPage.Kept> kept = new ArrayList<>();
      moods.forEach(mood -> kept.add(new FindPage.Kept("mood", mood)));
      place.ifPresent(name -> kept.add(new FindPage.Kept("place", name)));
      kind.ifPresent(name -> kept.add(new FindPage.Kept("place_kind", name)));
      state.ifPresent(word -> kept.add(new FindPage.Kept(STATE, word)));
      if (archived) {
        kept.add(new FindPage.Kept(ARCHIVED, "true"));
      }
      return kept;
    }
  }

  /** Shows what was found; without words all setups, the last changed first. */
  public void find(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Asked asked = Asked.of(context);
    Question question =
        new Question(
            studio.text(),
            asked.text(),
            Set.copyOf(asked.moods()),
            asked.place(),
            asked.kind(),
            HITS_A_PAGE,
            Asked.first(context, "cursor"),
            Optional.empty(),
            asked.standing());
    Finding.FoundPage found = finding.find(door.caller(context), studio, question);
    templates.show(
        context,
        "find",
        new FindPage(
            layouts.of(context, studio, asked.text().isEmpty() ? "Setups" : asked.text()),
            asked.path(),
            asked.text(),
            asked.kept(),
            facets(asked, found),
            found.items().stream().map(item -> hit(studio, item, asked.path())).toList(),
            found.total() == 1 ? "1 setup" : found.total() + " setups",
            asked.path(),
            found.next().map(cursor -> asked.address().with("cursor", cursor).toString()),
            suggestions(asked, found)));
  }

  private static List<Facet> facets(Asked asked, Finding.FoundPage found) {
    List<Facet> facets = new ArrayList<>();
    facets.add(
        facet(
            "Mood",
            counts(found.facets().moods(), asked.moods()),
            asked.moods(),
            mood -> asked.withMoods(toggled(asked.moods(), mood)).address()));
    facets.add(
        facet(
            "Kind of place",
            counts(found.facets().placeKinds(), asked.kind().stream().toList()),
            asked.kind().stream().toList(),
            kind -> asked.withKind(toggled(asked.kind(), kind)).address()));
    facets.add(
        facet(
            "Place",
            counts(found.facets().places(), asked.place().stream().toList()),
            asked.place().stream().toList(),
            place -> asked.withPlace(toggled(asked.place(), place)).address()));
    if (found.facets().states().size() > 1 || asked.state().isPresent()) {
      facets.add(
          facet(
              "State",
              counts(found.facets().states(), asked.state().stream().toList()),
              asked.state().stream().toList(),
              state -> asked.withState(toggled(asked.state(), state)).address()));
    }
    return facets.stream().filter(facet -> !facet.choices().isEmpty()).toList();
  }

  /** The largest counts, and whatever is chosen, even where it now leads to nothing. */
  private static Map<String, Long> counts(SequencedMap<String, Long> all, List<String> chosen) {
    Map<String, Long> shown = new LinkedHashMap<>();
    chosen.forEach(value -> shown.put(value, all.getOrDefault(value, 0L)));
    all.entrySet().stream()
        .limit(MOST_CHOICES)
        .forEach(entry -> shown.putIfAbsent(entry.getKey(), entry.getValue()));
    return shown;
  }

  private static Facet facet(
      String name,
      Map<String, Long> counts,
      List<String> chosen,
      Function<String, Address> toggle) {
    return new Facet(
        name,
        counts.entrySet().stream()
            .map(
                entry ->
                    new Facet.Choice(
                        entry.getKey(),
                        Math.toIntExact(entry.getValue()),
                        toggle.apply(entry.getKey()).toString(),
                        chosen.contains(entry.getKey())))
            .toList());
  }

  private static List<String> toggled(List<String> chosen, String value) {
    List<String> other = new ArrayList<>(chosen);
    if (!other.remove(value)) {
      other.add(value);
    }
    return other;
  }

  private static Optional<String> toggled(Optional<String> chosen, String value) {
    return chosen.filter(value::equals).isPresent() ? Optional.empty() : Optional.of(value);
  }

  private Hit hit(StudioId studio, Finding.Found found, String findPath) {
    SetupDocument setup = found.setup().document();
    Figures figures = FiguresComputation.of(setup);
    return new Hit(
        setup.title(),
        findPath + "/" + found.setup().id().text(),
        SetupView.placeAndDate(setup),
        setup.intent().orElse(""),
        setup.moods(),
        found.reasons(),
        SetupFigures.forHit(setup.exposure(), figures),
        Optional.of(Plan.small(setup)),
        found
            .picture()
            .filter(picture -> giving.isThere(picture.sha256()))
            .map(picture -> PictureTile.of(studio, found.setup().id(), picture)));
  }

  private static List<Link> suggestions(Asked asked, Finding.FoundPage found) {
    if (!found.items().isEmpty() || asked.text().isEmpty()) {
      return List.of();
    }
    List<Link> links = new ArrayList<>();
    if (!asked.kept().isEmpty()) {
      links.add(
          new Link(
              "“" + asked.text() + "” anywhere, in any mood",
              Address.of(asked.path()).with("q", asked.text()).toString()));
    }
    links.add(new Link("all setups", asked.path()));
    return links;
  }
}
