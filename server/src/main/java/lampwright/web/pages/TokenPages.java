package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampwright.people.Membership;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.Studios;
import lampwright.tasks.Tokens;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.web.http.LinkAddresses;
import lampwright.wording.Wording;

/** The page of one's tokens for programs. */
public final class TokenPages {

  static final String PATH = "/account/tokens";

  /** Days that one may choose; none of them for a token that lasts until it is revoked. */
  private static final int[] DAYS = {7, 30, 90, Tokens.MOST_DAYS};

  private static final int USUAL_DAYS = 90;

  private final Door door;
  private final Tokens tokens;
  private final Studios studios;
  private final Clock clock;
  private final LinkAddresses links;
  private final Templates templates;
  private final OwnLayouts layouts;

  public TokenPages(
      Door door,
      Tokens tokens,
      Studios studios,
      Clock clock,
      LinkAddresses links,
      Templates templates,
      OwnLayouts layouts) {
    this.door = door;
    this.tokens = tokens;
    this.studios = studios;
    this.clock = clock;
    this.links = links;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows it: {@code /account/tokens}. */
  public void show(Context context) {
    show(
        context,
        new Typed("", "", "", Integer.toString(USUAL_DAYS)),
        Optional.empty(),
        FormErrors.none());
  }

  private record Typed(String name, String atMost, String studio, String days) {}

  private void show(Context context, Typed typed, Optional<Tokens.Made> made, FormErrors errors) {
    Layout layout = layouts.named(context, "token.title");
    Wording words = layout.words();
    List<Membership> mine = studios.list(door.caller(context));
    templates.show(
        context,
        "tokens",
        new TokensPage(
            layout,
            PATH,
            door.csrfToken(context),
            typed.name(),
            questions(typed, mine, words),
            made.map(
                one -> new TokensPage.Made(one.token().name(), one.secret(), example(context))),
            tokens.list(door.caller(context)).stream().map(one -> one(one, mine, words)).toList(),
            errors));
  }

  private static List<TokensPage.Question> questions(
      Typed typed, List<Membership> mine, Wording words) {
    return List.of(
        new TokensPage.Question(
            TokensPage.AT_MOST,
            words.say("token.atMost"),
            choices(
                typed.atMost(),
                words.say("token.atMost.all"),
                Stream.of(Role.values())
                    .map(role -> new Link(roleWord(role, words), role.word())))),
        new TokensPage.Question(
            TokensPage.STUDIO,
            words.say("token.studio"),
            choices(
                typed.studio(),
                words.say("token.studio.all"),
                mine.stream().map(one -> new Link(one.studioName(), one.studio().text())))),
        new TokensPage.Question(
            TokensPage.DAYS,
            words.say("token.ends"),
            choices(
                typed.days(),
                words.say("token.ends.never"),
                IntStream.of(DAYS)
                    .mapToObj(
                        days ->
                            new Link(
                                words.count("token.ends.after", days), Integer.toString(days))))));
  }

  private static List<TokensPage.Choice> choices(
      String typed, String withoutBound, Stream<Link> bounds) {
    List<TokensPage.Choice> choices = new ArrayList<>();
    choices.add(new TokensPage.Choice("", withoutBound, typed.isEmpty()));
    bounds.forEach(
        bound ->
            choices.add(
                new TokensPage.Choice(bound.path(), bound.words(), bound.path().equals(typed))));
    return choices;
  }

  private static String roleWord(Role role, Wording words) {
    return words.say("studio.people.role." + role.word());
  }

  private TokensPage.One one(Tokens.Token token, List<Membership> mine, Wording words) {
    DayWords days = new DayWords(words);
    String role =
        token
            .reach()
            .atMost()
            .map(most -> words.say("token.reach.atMost", roleWord(most, words)))
            .orElseGet(() -> words.say("token.reach.all"));
    String where =
        token
            .reach()
            .only()
            .map(studio -> words.say("token.reach.in", studioName(studio, mine, words)))
            .orElseGet(() -> words.say("token.reach.everywhere"));
    boolean isOver = token.expiresAt().map(end -> !end.isAfter(clock.instant())).orElse(false);
    return new TokensPage.One(
        token.name(),
        role + ", " + where,
        life(token.createdAt(), token.expiresAt(), isOver, days, words),
        isOver,
        token
            .lastUsedAt()
            .map(used -> words.say("token.used", days.day(used)))
            .orElseGet(() -> words.say("token.used.never")),
        PATH + "/" + token.id() + "/removal");
  }

  private static String life(
      Instant made, Optional<Instant> end, boolean isOver, DayWords days, Wording words) {
    return end.map(
            day ->
                words.say(
                    isOver ? "token.life.ended" : "token.life.ends", days.day(made), days.day(day)))
        .orElseGet(() -> words.say("token.life.open", days.day(made)));
  }

  private static String studioName(StudioId studio, List<Membership> mine, Wording words) {
    return mine.stream()
        .filter(membership -> membership.studio().equals(studio))
        .map(Membership::studioName)
        .findFirst()
        .orElseGet(() -> words.say("token.reach.left"));
  }

  /** The secret stands in a variable, so that it is in no history of commands. */
  private String example(Context context) {
    return "curl -H \"Authorization: Bearer $LAMPWRIGHT_TOKEN\" "
        + links.whole(context, "/api/studios");
  }

  /** Makes one, and shows its secret this once: a page that is asked for again has it no more. */
  public void make(Context context) {
    FormFields sent = Body.form(context);
    Typed typed =
        new Typed(
            sent.get(TokensPage.NAME).strip(),
            sent.get(TokensPage.AT_MOST),
            sent.get(TokensPage.STUDIO),
            sent.get(TokensPage.DAYS));
    Wording words = layouts.words(context);
    if (typed.name().isEmpty() || typed.name().length() > Tokens.LONGEST_NAME) {
      refuse(context, typed, TokensPage.NAME, words.say("token.name.wrong", Tokens.LONGEST_NAME));
      return;
    }
    try {
      Tokens.Made made = tokens.make(door.caller(context), wish(typed));
      show(
          context,
          new Typed("", "", "", Integer.toString(USUAL_DAYS)),
          Optional.of(made),
          FormErrors.none());
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.Clash)) {
        throw refused;
      }
      refuse(context, typed, "", words.say("token.tooMany", Tokens.MOST));
    }
  }

  private void refuse(Context context, Typed typed, String field, String message) {
    context.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(context, typed, Optional.empty(), FormErrors.of(field, message));
  }

  private static Tokens.Wish wish(Typed typed) {
    Optional<Role> atMost =
        Stream.of(Role.values()).filter(role -> role.word().equals(typed.atMost())).findFirst();
    Optional<Integer> days =
        IntStream.of(DAYS)
            .boxed()
            .filter(choice -> choice.toString().equals(typed.days()))
            .findFirst();
    if (atMost.isEmpty() != typed.atMost().isEmpty() || days.isEmpty() != typed.days().isEmpty()) {
      // Whoever asks for a bound that there is not must not get a token without one.
      throw Refused.invalid("/at_most", "Choose a role and a time that the page offers.");
    }
    return new Tokens.Wish(
        typed.name(),
        new Reach(
            atMost, Optional.of(typed.studio()).filter(text -> !text.isEmpty()).map(Leave::studio)),
        days);
  }

  /** Revokes one. */
  public void revoke(Context context) {
    tokens.revoke(door.caller(context), context.pathParam("token"));
    context.redirect(PATH, HttpStatus.SEE_OTHER);
  }
}
