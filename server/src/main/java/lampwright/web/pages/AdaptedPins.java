package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.setup.LightId;
import lampwright.setup.adapting.AdaptedLight.Made;
import lampwright.web.pages.WishPairs.Pair;

/**
 * What can be decided about one light, so that only the rest is solved again.
 *
 * @param asked what the address wishes already
 * @param path of the page
 */
record AdaptedPins(WishPairs asked, String path, LightId light) {

  boolean isLeftOut() {
    return asked.has(WishPairs.WITHOUT, light.text());
  }

  /** The decisions that are open. */
  List<Link> keep(Optional<Made> made) {
    List<Link> links = new ArrayList<>();
    if (made.isPresent()) {
      String head = WishPairs.HEAD + light.text();
      String modifier = WishPairs.MODIFIER + light.text();
      WishPairs keepsHead = withHeads(made.get()).with(head, made.get().head().name());
      if (asked.find(head).isEmpty()) {
        links.add(link("keep this head", keepsHead));
      }
      if (asked.find(modifier).isEmpty()) {
        links.add(
            link(
                asked.find(head).isEmpty() ? "this head and modifier" : "keep this modifier",
                keepsHead.with(modifier, made.get().modifier().name())));
      }
    }
    if (!isLeftOut()) {
      links.add(
          link(
              "leave it out", asked.without(this::isAboutIt).and(WishPairs.WITHOUT, light.text())));
    }
    return links;
  }

  /** What is decided; each link asks again without it. */
  List<Link> kept() {
    List<Link> links = new ArrayList<>();
    for (Pair pair : asked.pairs()) {
      if (isAboutIt(pair)) {
        String words =
            pair.name().equals(WishPairs.WITHOUT)
                ? "left out"
                : pair.name().startsWith(WishPairs.COUNT)
                    ? pair.value() + (pair.value().equals("1") ? " head" : " heads")
                    : pair.value();
        links.add(link(words, asked.without(pair::equals)));
      }
    }
    return links;
  }

  /** Of several heads the number is part of what is kept. */
  private WishPairs withHeads(Made made) {
    return made.heads() == 1
        ? asked
        : asked.with(WishPairs.COUNT + light.text(), Integer.toString(made.heads()));
  }

  private boolean isAboutIt(Pair pair) {
    return pair.equals(new Pair(WishPairs.WITHOUT, light.text()))
        || List.of(WishPairs.HEAD, WishPairs.MODIFIER, WishPairs.COUNT).stream()
            .anyMatch(prefix -> pair.name().equals(prefix + light.text()));
  }

  private Link link(String words, WishPairs then) {
    return new Link(words, then.fromTheFirstWay().address(path));
  }
}
