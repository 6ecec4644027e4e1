package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.PreviewDrawings;

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
    return page("submarine at noon", facets("lonely"), List.of(), "No setup", Optional.empty());
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
                word + " on the long stair",
                "/demo/setups/l1",
                "The staircase behind the third warehouse from the slip, second floor · 2030",
                "A story told by one lamp. ".repeat(12),
                List.of(word, "slow", "quiet", "patient"),
                List.of("“" + word + "” stands in its intent"),
                figures("f/5.6", "1/8000", "102400", "−10.3"),
                Optional.of(PreviewDrawings.smallPlan()),
                Optional.of(PicturePreviews.tile(word.repeat(5), 320, 20)))),
        "1 setup",
        Optional.empty());
  }

  private static FindPage page(
      String query, List<Facet> facets, List<Hit> hits, String total, Optional<String> next) {
    boolean narrowed = facets.stream().flatMap(f -> f.choices().stream()).anyMatch(c -> c.active());
    return new FindPage(
        PagePreviews.layout(query.isEmpty() ? "Setups" : query),
        "/demo/setups",
        query,
        narrowed ? List.of(new FindPage.Kept("mood", "lonely")) : List.of(),
        facets,
        hits,
        total,
        "/demo/setups",
        next,
        hits.isEmpty() && !query.isEmpty()
            ? List.of(new Link("lonely", "/demo/setups?q=lonely"), new Link("harbour", "/demo/s"))
            : List.of());
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

  private static List<Hit> hits(List<String> reasons) {
    return List.of(
        new Hit(
            "Last ferry, slate quay",
            "/demo/setups/k3v9",
            "Slate quay, Veskarn Sound · 14 October 2030",
            "Dusk, after rain. Alone but not lost: one warm window of light, the sea already"
                + " night.",
            List.of("lonely", "cold", "last light"),
            reasons,
            figures("f/5.6", "1/125", "100", "−1.3"),
            Optional.of(PreviewDrawings.smallPlan()),
            Optional.of(PicturePreviews.tile("The quay at dusk.", 320, 213))),
        new Hit(
            "Gravel, two runners",
            "/demo/setups/m2",
            "Gravel pit · 2 May 2030",
            "Early and hard. They run towards us and nothing else moves.",
            List.of("cold", "restless"),
            reasons.stream().skip(1).toList(),
            figures("f/11", "1/250", "200", "−2.0"),
            Optional.of(PreviewDrawings.smallPlan()),
            Optional.empty()),
        new Hit(
            "Hands of the net mender",
            "/demo/setups/n4",
            "Studio B · 19 January 2030",
            "",
            List.of("tender"),
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
