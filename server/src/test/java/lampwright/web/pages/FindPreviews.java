package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.PreviewDrawings;
import lampwright.search.MarkedText;
import lampwright.wording.Figure;

/** The finding page: all setups, a search, one that finds nothing, a new studio, long words. */
final class FindPreviews {

  private FindPreviews() {}

  static FindPage full() {
    return page("", facets(""), hits(List.of()), "41 setups", Optional.of("/demo/setups?cursor=b"));
  }

  static FindPage search() {
    return page(
        "lonely, cold, first light",
        facets("lonely"),
        hits(
            List.of(
                "“lonely” is one of its moods", "“bleak harbour before dawn” is near in meaning")),
        "3 setups",
        Optional.empty());
  }

  static FindPage nothing() {
    return page(
        "submarine at noon [lihgts 2]", facets("lonely"), List.of(), "No setup", Optional.empty());
  }

  static FindPage empty() {
    return page("", List.of(), List.of(), "No setup", Optional.empty());
  }

  static FindPage longWords() {
    String word = "Harbourmasterofficestaircaseundertheemergencylamplight";
    return page(
        word + " " + word,
        List.of(
            new Facet(
                "Mood",
                List.of(
                    new Facet.Choice(word, 12_041, "/demo/setups?mood=x", true),
                    new Facet.Choice(
                        "melancholy without any self-pity", 2, "/demo/setups", false)))),
        List.of(
            new Hit(
                pieces(word + " on the long stair"),
                "/demo/setups/l1",
                "The staircase behind the third warehouse from the slip, second floor · 2030",
                pieces("A story told by one lamp. ".repeat(12)),
                List.of(word, "slow", "quiet", "patient"),
                List.of(new Hit.Passage("notes", pieces("Here " + word + " stands."))),
                List.of("“" + word + "” stands in its intent"),
                figures("f/5.6", "1/8000", "102400", "−10.3"),
                Optional.of(PreviewDrawings.smallPlan()),
                Optional.of(PicturePreviews.tile(word.repeat(5), 320, 20)))),
        "1 setup",
        Optional.empty());
  }

  private static FindPage page(
      String query, List<Facet> facets, List<Hit> hits, String total, Optional<String> next) {
    List<Link> marks =
        facets.stream()
            .flatMap(f -> f.choices().stream().map(c -> new Chosen(f.name(), c)))
            .filter(chosen -> chosen.choice().active())
            .map(c -> new Link(c.facet() + ": " + c.choice().words(), c.choice().path()))
            .toList();
    return new FindPage(
        PagePreviews.layout(query.isEmpty() ? "Setups" : query),
        "/demo/setups",
        query,
        marks.isEmpty() ? List.of() : List.of(new FindPage.Kept("filter", "mood lonely")),
        query.contains("[")
            ? List.of("“[lihgts 2]” at character 6: There is no mark “lihgts”. Maybe lights?")
            : List.of(),
        marks,
        facets,
        facets.isEmpty()
            ? List.of()
            : List.of(
                new Facet("Aperture", List.of(choice("f/5.6 to f/8", 3, ""))),
                new Facet("Ambient, stops", List.of(choice("−2 to −1", 4, "")))),
        hits,
        total,
        "/demo/setups",
        hits.size() > 1 ? List.of(new Link("Nearest first", "/demo/setups?sort=near")) : List.of(),
        next,
        Optional.empty(),
        hits.isEmpty() && !query.isEmpty() ? instead() : List.of(),
        facets.isEmpty() ? List.of() : examples(),
        facets.isEmpty()
            ? List.of()
            : List.of(
                new FindPage.Tolerance("⅓ stop", "/demo/setups?filter=a", true),
                new FindPage.Tolerance("1 stop", "/demo/setups?filter=b", false)),
        facets.isEmpty()
            ? List.of()
            : List.of(new FindPage.KitChoice("The bag", "buildable with The bag")),
        new FindPage.Showing("/demo/shown-pictures", "c5rf"),
        marks.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new FindPage.Keeping("/demo/saved-searches", "c5rf", "q=" + query, query)));
  }

  private record Chosen(String facet, Facet.Choice choice) {}

  private static List<FindPage.Lack> instead() {
    return List.of(
        new FindPage.Lack(
            "No setup within 20 km of Slate quay",
            List.of(
                new FindPage.Offer("within 45 km", 3, "/demo/setups?filter=a"),
                new FindPage.Offer("without this mark", 41, "/demo/setups"))),
        new FindPage.Lack(
            "No setup with 2 lights",
            List.of(new FindPage.Offer("with 3", 4, "/demo/setups?filter=b"))));
  }

  private static List<FindPage.Example> examples() {
    return List.of(
        new FindPage.Example("[lights 2 to 4]", "2 to 4 lights", "/demo/setups?q=a"),
        new FindPage.Example("[place kind quarry]", "Kind of place: quarry", "/demo/setups?q=b"));
  }

  private static List<Facet> facets(String active) {
    return List.of(
        new Facet(
            "Mood",
            List.of(
                choice("lonely", 9, active),
                choice("cold", 7, active),
                choice("last light", 5, active),
                choice("tender", 4, active),
                choice("restless", 2, active))),
        new Facet(
            "Place",
            List.of(
                choice("Slate quay, Veskarn Sound", 6, active),
                choice("Studio B", 14, active),
                choice("Gravel pit", 3, active))),
        new Facet("Your kit", List.of(choice("The van can make it", 22, active))));
  }

  private static Facet.Choice choice(String words, int count, String active) {
    return new Facet.Choice(words, count, "/demo/setups?x=" + count, words.equals(active));
  }

  private static List<MarkedText.Piece> pieces(String text) {
    return List.of(new MarkedText.Piece(text, false));
  }

  private static List<Hit> hits(List<String> reasons) {
    return List.of(
        new Hit(
            pieces("Last ferry, slate quay"),
            "/demo/setups/k3v9",
            "Slate quay, Veskarn Sound · 14 October 2030",
            List.of(
                new MarkedText.Piece("Dusk, after rain. ", false),
                new MarkedText.Piece("Alone", true),
                new MarkedText.Piece(
                    " but not lost: one warm window of light, the sea already night.", false)),
            List.of("lonely", "cold", "last light"),
            List.of(),
            reasons,
            figures("f/5.6", "1/125", "100", "−1.3"),
            Optional.of(PreviewDrawings.smallPlan()),
            Optional.of(PicturePreviews.tile("The quay at dusk.", 320, 213))),
        new Hit(
            pieces("Gravel, two runners"),
            "/demo/setups/m2",
            "Gravel pit · 2 May 2030",
            pieces("Early and hard. They run towards us and nothing else moves."),
            List.of("cold", "restless"),
            List.of(),
            reasons.stream().skip(1).toList(),
            figures("f/11", "1/250", "200", "−2.0"),
            Optional.of(PreviewDrawings.smallPlan()),
            Optional.empty()),
        new Hit(
            pieces("Hands of the net mender"),
            "/demo/setups/n4",
            "Studio B · 19 January 2030",
            List.of(),
            List.of("tender"),
            List.of(),
            reasons.stream().skip(1).toList(),
            figures("f/8", "1/125", "50", "−6.1"),
            Optional.empty(),
            Optional.of(PicturePreviews.tile("", 213, 320))));
  }

  private static List<Figure> figures(String aperture, String time, String iso, String ambient) {
    return List.of(
        Figure.of(aperture, "", "aperture"),
        Figure.of(time, "", "time"),
        Figure.of(iso, "", "ISO"),
        Figure.of(ambient, "", "ambient, stops"));
  }
}
