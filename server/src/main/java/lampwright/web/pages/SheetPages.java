package lampwright.web.pages;

import io.javalin.http.Context;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import lampwright.document.Problem;
import lampwright.language.LengthUnit;
import lampwright.people.StudioId;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Wishes;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Adapting;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Leave;
import lampwright.tasks.Refused;
import lampwright.web.http.Digests;
import lampwright.web.http.Door;
import lampwright.web.http.LinkAddresses;
import lampwright.web.http.Preconditions;
import lampwright.wording.Wording;

/**
 * The field sheet of a setup: {@code /studios/{studio}/setups/{setup}/sheet} to look at and print,
 * {@code …/sheet.pdf} as a file. With the query of an adaptation's page it is the sheet of that.
 */
public final class SheetPages {

  static final String SHEET = "/sheet";

  private static final String PAPER = "paper";

  /** A code of more letters is too fine for a phone in the rain. */
  private static final int LONGEST_ADDRESS = 300;

  private final Door door;
  private final Cataloguing cataloguing;
  private final Adapting adapting;
  private final LinkAddresses links;
  private final SheetPrinter printer;
  private final Templates templates;
  private final StudioLayouts layouts;

  public SheetPages(
      Door door,
      Cataloguing cataloguing,
      Adapting adapting,
      LinkAddresses links,
      Templates templates,
      StudioLayouts layouts) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.adapting = adapting;
    this.links = links;
    this.printer = new SheetPrinter(templates);
    this.templates = templates;
    this.layouts = layouts;
  }

  /**
   * What is on a sheet.
   *
   * @param path of the page that it is of, its query with it
   */
  private record Sheeted(
      Catalogued from,
      SetupDocument document,
      Map<LightId, Integer> numbers,
      String kit,
      WishPairs pairs,
      String path) {

    boolean isAdapted() {
      return !kit.isEmpty();
    }

    SheetView view(Wording words) {
      return new SheetView(document, FiguresComputation.of(document), numbers, words);
    }
  }

  /** Shows it, to be printed. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Wording words = layouts.words(context);
    Sheeted sheeted = sheeted(context, studio, words);
    Layout layout =
        layouts.named(context, studio, "sheet.page.of", sheeted.from().document().title());
    SheetFile.Paper paper = paper(context, words);
    SheetView view = sheeted.view(words);
    SheetView.Around around = around(context, studio, sheeted, layout);
    IntFunction<SheetPage> page = room -> view.page(around, SheetRoom.of(room));
    int room = printer.room(SheetRoom.firstFor(sheeted.document()), page, paper);
    templates.show(context, "sheet", page.apply(room));
  }

  /** Gives it as a PDF; its words and units are the caller's. */
  public void file(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Wording words = layouts.words(context);
    SheetFile.Paper paper = paper(context, words);
    Sheeted sheeted = sheeted(context, studio, words);
    String title = sheeted.from().document().title();
    SheetView view = sheeted.view(words);
    SheetView.Around around =
        around(context, studio, sheeted, layouts.named(context, studio, "sheet.page.of", title));
    IntFunction<SheetPage> page = room -> view.page(around, SheetRoom.of(room));
    int first = SheetRoom.firstFor(sheeted.document());
    // A weak one: what is printed twice says the same, but carries its hour.
    String etag = "\"" + Digests.sha256(printer.markup(page.apply(first), paper)) + "\"";
    boolean known = Preconditions.isKnown(context, etag);
    context.header("ETag", "W/" + etag);
    context.header("Cache-Control", "private, no-cache");
    if (known) {
      return;
    }
    SheetPrinter.Printed printed = printer.print(first, page, paper);
    context.header(
        "Content-Disposition", "inline; filename=\"" + fileName(title, sheeted.from()) + "\"");
    context.contentType("application/pdf").result(printed.pdf().open());
  }

  private Sheeted sheeted(Context context, StudioId studio, Wording words) {
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Caller caller = door.caller(context);
    String path = SetupPages.setupPath(studio, id);
    WishPairs pairs =
        WishPairs.of(context.queryParamMap()).without(pair -> pair.name().equals(PAPER));
    int chosen = way(pairs);
    if (pairs.find(WishPairs.KIT).isEmpty()) {
      Catalogued setup = cataloguing.get(caller, studio, id);
      return new Sheeted(
          setup, setup.document(), setup.document().numbersInBuildOrder(), "", pairs, path);
    }
    Wishes wishes = wishes(pairs);
    Adapting.Adapted adapted =
        adapting.adapt(caller, studio, id, pairs.find(WishPairs.KIT).orElse(""), wishes);
    List<Adaptation> ways = AdaptedView.ways(adapted.answer());
    if (ways.isEmpty()) {
      throw Refused.invalid(
          "/kit", "Nothing can be made of this setup with that kit. Print it as it was.");
    }
    Adaptation way = ways.get(Math.min(chosen, ways.size()) - 1);
    SetupDocument original = adapted.setup().document();
    return new Sheeted(
        adapted.setup(),
        way.document(),
        original.numbersInBuildOrder(),
        words.say(
            "sheet.adapted",
            adapted.kit().document().name(),
            new AdaptedView(original, wishes, adapted.answer(), words).inShort(way)),
        pairs,
        pairs.address(path + "/adapted"));
  }

  private static Wishes wishes(WishPairs pairs) {
    return switch (AdaptedQuery.read(pairs)) {
      case AdaptedQuery.Read.Sound(Wishes wishes) -> wishes;
      case AdaptedQuery.Read.Wrong(FormErrors errors) ->
          throw Refused.invalid(
              errors.items().stream()
                  .map(error -> new Problem("/" + error.field(), error.message()))
                  .toList());
    };
  }

  /** From 1. */
  private static int way(WishPairs pairs) {
    String written = pairs.find(WishPairs.WAY).orElse("1");
    if (!written.matches("[1-9]")) {
      throw Refused.invalid(
          "/way", "Way must be 1 to 9, as the adaptation counts them; leave it out for the first.");
    }
    return Integer.parseInt(written);
  }

  /** Who reads feet prints on Letter, if nothing else is said. */
  private static SheetFile.Paper paper(Context context, Wording words) {
    String said = Optional.ofNullable(context.queryParam(PAPER)).orElse("");
    return switch (said) {
      case "" ->
          words.notation().lengths() == LengthUnit.FEET
              ? SheetFile.Paper.LETTER
              : SheetFile.Paper.A4;
      case "a4" -> SheetFile.Paper.A4;
      case "letter" -> SheetFile.Paper.LETTER;
      default ->
          throw Refused.invalid("/paper", "Paper must be a4 or letter; leave it out for yours.");
    };
  }

  private SheetView.Around around(
      Context context, StudioId studio, Sheeted sheeted, Layout layout) {
    Wording words = layout.words();
    String setup = SetupPages.setupPath(studio, sheeted.from().id());
    String file = setup + SHEET + ".pdf";
    String whole = links.whole(context, sheeted.path());
    return new SheetView.Around(
        layout,
        sheeted.from(),
        new Link(
            words.say(sheeted.isAdapted() ? "sheet.back.adapted" : "sheet.back"), sheeted.path()),
        List.of(
            new Link(words.say("sheet.paper.a4"), sheeted.pairs().with(PAPER, "a4").address(file)),
            new Link(
                words.say("sheet.paper.letter"),
                sheeted.pairs().with(PAPER, "letter").address(file))),
        sheeted.kit(),
        whole.length() > LONGEST_ADDRESS ? links.whole(context, setup) : whole,
        new SheetChanges(sheeted.document(), sheeted.numbers(), words).all());
  }

  /** Of letters that no system stumbles over: "field-sheet-dusk-on-the-pier-3.pdf". */
  private static String fileName(String title, Catalogued from) {
    String plain =
        Normalizer.normalize(title, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-");
    String shortened = plain.substring(0, Math.min(plain.length(), 60));
    return ("field-sheet-" + shortened + "-" + from.revision()).replaceAll("-+", "-") + ".pdf";
  }
}
