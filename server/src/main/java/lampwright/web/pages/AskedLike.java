package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.document.Problem;
import lampwright.search.Question;
import lampwright.tasks.LikeThis;
import lampwright.tasks.LikeTones;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.api.SearchQuery;
import lampwright.wording.Wording;

/**
 * What the find page's setups should be like, as its address says it: the light of a setup, or a
 * picture that was shown.
 *
 * @param faults a line where there is no such setup; then the search goes on without it
 */
record AskedLike(Optional<Said> said, List<String> faults) {

  static final String SETUP = "like";
  static final String TONES = "like_tones";

  AskedLike {
    faults = List.copyOf(faults);
  }

  /**
   * One that is understood.
   *
   * @param title of the setup that it is like; empty where it is a picture that was shown
   * @param part as the address says it
   */
  record Said(Question.Like like, Optional<String> title, FindPage.Kept part) {}

  /**
   * Reads it. Where both are asked for, the setup counts.
   *
   * @param find looks a setup up by its id as it was written
   */
  static AskedLike of(Context context, Function<String, LikeThis> find) {
    try {
      Optional<Said> said =
          SearchQuery.like(context)
              .map(find)
              .map(AskedLike::ofSetup)
              .or(() -> SearchQuery.likeTones(context).map(AskedLike::ofTones));
      return new AskedLike(said, List.of());
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Invalid(List<Problem> problems)) {
        return new AskedLike(Optional.empty(), problems.stream().map(Problem::message).toList());
      }
      throw refused;
    }
  }

  private static Said ofSetup(LikeThis one) {
    return new Said(
        one.like(),
        Optional.of(one.title()),
        new FindPage.Kept(SETUP, one.like().setup().orElseThrow()));
  }

  private static Said ofTones(String tones) {
    return new Said(LikeTones.read(tones), Optional.empty(), new FindPage.Kept(TONES, tones));
  }

  Optional<FindPage.Kept> part() {
    return said.map(Said::part);
  }

  Question ask(Question question) {
    return said.map(Said::like).map(question::withLike).orElse(question);
  }

  /** The mark that holds now, with the search without it. */
  Optional<Link> mark(FindAddress asked, Wording words) {
    return said.map(
        one ->
            new Link(
                one.title()
                    .map(title -> words.say("pages.like.light", title))
                    .orElseGet(() -> words.say("pages.like.tones")),
                asked.withoutLike().toString()));
  }

  /** What is to be known of the order. */
  Optional<String> remark(Wording words) {
    return said.map(_ -> words.say("pages.like.first"));
  }
}
