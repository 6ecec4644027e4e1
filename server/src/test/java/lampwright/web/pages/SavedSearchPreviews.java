package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/** The page of kept searches with invented ones. */
final class SavedSearchPreviews {

  private SavedSearchPreviews() {}

  static SavedSearchesPage some() {
    return page(Optional.empty(), FormErrors.none());
  }

  static SavedSearchesPage none() {
    return new SavedSearchesPage(
        PagePreviews.layout("Kept searches"),
        "c5rf",
        List.of(),
        Optional.empty(),
        FormErrors.none(),
        "/demo/setups");
  }

  static SavedSearchesPage wrong() {
    return page(
        Optional.of(new SavedSearchesPage.Again("/demo/saved-searches", "harbours", "q=harbour")),
        new FormErrors(
            List.of(
                new FormErrors.FormError(
                    "name", "You keep a search named “harbours” already. Maybe another name?"))));
  }

  private static SavedSearchesPage page(
      Optional<SavedSearchesPage.Again> again, FormErrors errors) {
    return new SavedSearchesPage(
        PagePreviews.layout("Kept searches"),
        "c5rf",
        List.of(
            new SavedSearchesPage.Card(
                "h1",
                2,
                "Harbours",
                List.of("“lonely cold”", "Kind of place: harbour"),
                "41 setups",
                "7 new",
                List.of(
                    new Link("Rope in the rain", "/demo/setups/k1"),
                    new Link("Unfathomably".repeat(8), "/demo/setups/k2")),
                5,
                "",
                "/demo/saved-searches/h1"),
            new SavedSearchesPage.Card(
                "h2",
                1,
                "Near the weir",
                List.of(),
                "",
                "",
                List.of(),
                0,
                "There is no location “Weir”. Maybe Weir bridge?",
                "/demo/saved-searches/h2")),
        again,
        errors,
        "/demo/setups");
  }
}
