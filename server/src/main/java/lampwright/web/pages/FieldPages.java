package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import lampwright.document.Json;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptKit;
import lampwright.tasks.KitKeeping;
import lampwright.tasks.Leave;
import lampwright.tasks.TakeLogging;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/**
 * The pages on location, which a phone can keep: {@code /studios/{studio}/setups/{setup}/field} and
 * the list of what is kept, {@code /studios/{studio}/field}; and what makes the site installable.
 */
public final class FieldPages {

  static final String FIELD = "/field";

  /** More would make the page heavy; a crew has one or two with it. */
  private static final int MOST_KITS = 12;

  private final Door door;
  private final Tasks tasks;
  private final Assets assets;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask. */
  public record Tasks(Cataloguing cataloguing, KitKeeping kits, TakeLogging takes) {}

  public FieldPages(
      Door door, Tasks tasks, Assets assets, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.assets = assets;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String listPath(StudioId studio) {
    return "/studios/" + studio + FIELD;
  }

  /** Shows one setup. */
  public void show(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Caller caller = door.caller(context);
    Catalogued setup = tasks.cataloguing().get(caller, studio, id);
    SetupDocument document = setup.document();
    Layout layout = layouts.named(context, studio, "field.page.of", document.title());
    Wording words = layout.words();
    String path = SetupPages.setupPath(studio, id);
    List<KeptKit> kits = tasks.kits().list(caller, studio).stream().limit(MOST_KITS).toList();
    boolean mayLog = tasks.takes().may(caller, studio).log();
    templates.show(
        context,
        "field",
        new FieldView(document, FiguresComputation.of(document), words)
            .page(
                new FieldView.Around(
                    layout,
                    path,
                    listPath(studio),
                    data(caller, studio, words).ofSetup(setup, path, kits, mayLog),
                    mayLog,
                    NowPages.form(
                        NowPages.path(studio, id),
                        document,
                        NowPages.names(tasks.kits().names(caller, studio)),
                        words))));
  }

  /** Shows what is kept on this phone. */
  public void list(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    Layout layout = layouts.named(context, studio, "field.list.heading");
    templates.show(
        context,
        "fieldList",
        new FieldListPage(
            layout,
            data(door.caller(context), studio, layout.words()).ofList(),
            SetupPages.findPath(studio)));
  }

  private FieldData data(Caller caller, StudioId studio, Wording words) {
    return new FieldData(words.notation(), caller.person().id(), listPath(studio), assets);
  }

  /** The service worker. It stands at the root, since none may look after more than its folder. */
  public void worker(Context context) {
    context.header("Cache-Control", "no-cache");
    context
        .contentType("text/javascript; charset=utf-8")
        .result("import \"" + assets.path("field-worker.js") + "\";\n");
  }

  /** What a phone needs to install the site (W3C Web Application Manifest). */
  public void manifest(Context context) {
    context.header("Cache-Control", "no-cache");
    context
        .contentType("application/manifest+json")
        .result(
            Json.print(
                Map.of(
                    "id", "/",
                    "name", "Lampwright",
                    "short_name", "Lampwright",
                    "start_url", "/",
                    "scope", "/",
                    "display", "standalone",
                    "icons",
                        List.of(
                            Map.of(
                                "src", assets.path("favicon.svg"),
                                "sizes", "any",
                                "type", "image/svg+xml")))));
  }
}
