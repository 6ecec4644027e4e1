package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.setup.LightId;
import lampwright.setup.adapting.AdaptedLight.Made;
import lampwright.web.pages.WishPairs.Pair;
import lampwright.wording.Wording;

/**
 * What can be decided about one light, so that only the rest is solved again.
 *
 * @param asked what the address wishes already
 * @param path of the page
 * @param words of the person who decides
 */
record AdaptedPins(WishPairs asked, String path, LightId light, Wording words) {

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
        links.add(link(words.say("adapting.pin.keepHead"), keepsHead));
      }
      if (asked.find(modifier).isEmpty()) {
        links.add(
            link(
                words.say(
                    asked.find(head).isEmpty()
                        ? "adapting.pin.keepBoth"
                        : "adapting.pin.keepModifier"),
                keepsHead.with(modifier, made.get().modifier().name())));
      }
    }
    if (!isLeftOut()) {
      links.add(
          link(
              words.say("adapting.pin.leaveOut"),
              asked.without(this::isAboutIt).and(WishPairs.WITHOUT, light.text())));
    }
    return links;
  }

  /** What is decided; each link asks again without it. */
  List<Link> kept() {
    List<Link> links = new ArrayList<>();
    for (Pair pair : asked.pairs()) {
      if (isAboutIt(pair)) {
        String said =
            pair.name().equals(WishPairs.WITHOUT)
                ? words.say("adapting.pin.leftOut")
                : pair.name().startsWith(WishPairs.COUNT)
                    ? WishWords.heads(pair.value(), words)
                    : pair.value();
        links.add(link(said, asked.without(pair::equals)));
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

  private Link link(String said, WishPairs then) {
    return new Link(said, then.fromTheFirstWay().address(path));
  }
}
