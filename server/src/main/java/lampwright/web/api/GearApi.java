package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.gear.stock.WrittenKit;
import lampwright.people.StudioId;
import lampwright.tasks.GearKeeping;
import lampwright.tasks.KeptGear;
import lampwright.tasks.Listed;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** A studio's gear: list, make, read, change, delete; its history and the kits that use it. */
public final class GearApi {

  static final String KIND = "kind";
  private static final String NAMED = "q";
  private static final int LONGEST_NAME = 120;

  private final Door door;
  private final GearKeeping gear;

  public GearApi(Door door, GearKeeping gear) {
    this.door = door;
    this.gear = gear;
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    return List.of(GearItem.FORM, WrittenKit.FORM);
  }

  /** Part of it, the last changed first: {@code ?kind=&q=}. */
  public void list(Context context) {
    Query query = new Query(context, Set.of("cursor", "limit", KIND, NAMED));
    GearKeeping.Wish wish =
        new GearKeeping.Wish(
            query.text(KIND, GearKind.FORM), query.text(NAMED, Forms.text(LONGEST_NAME)));
    Listed<KeptGear> page =
        gear.list(door.caller(context), SetupApi.studio(context), wish, query.page());
    Query.linkNext(context, page);
    context.json(
        new GearJson.Part(page.items().stream().map(GearJson.Item::of).toList(), page.next()));
  }

  /** Keeps new gear. */
  public void create(Context context) {
    GearItem item = Documents.read(context, GearItem.FORM);
    KeptGear created =
        gear.create(
            door.caller(context),
            SetupApi.studio(context),
            item,
            Messages.of(context),
            Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(GearJson.One.of(created));
  }

  /** One as it is now. */
  public void get(Context context) {
    KeptGear one = current(context);
    if (!Preconditions.isKnown(context, one.revision())) {
      context.json(GearJson.One.of(one));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, GearItem.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptGear now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, GearItem.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, GearItem item) {
    KeptGear replaced =
        gear.replace(
            door.caller(context),
            SetupApi.studio(context),
            gear(context),
            Optional.of(based),
            item,
            Messages.of(context));
    Preconditions.show(context, replaced.revision());
    context.json(GearJson.One.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    gear.delete(
        door.caller(context),
        SetupApi.studio(context),
        gear(context),
        Optional.of(basedOn(context)),
        Messages.of(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** Every change, the newest first. */
  public void revisions(Context context) {
    StudioId studio = SetupApi.studio(context);
    context.json(
        new GearJson.Lines(
            gear.revisions(door.caller(context), studio, gear(context)).stream()
                .map(GearJson.Line::of)
                .toList()));
  }

  /** One revision with its document. */
  public void revision(Context context) {
    String written = context.pathParam("revision");
    if (!written.matches("[1-9]\\d{0,8}")) {
      throw Refused.notFound();
    }
    context.json(
        GearJson.Line.of(
            gear.revision(
                door.caller(context),
                SetupApi.studio(context),
                gear(context),
                Integer.parseInt(written))));
  }

  /** The kits that use it. */
  public void kits(Context context) {
    StudioId studio = SetupApi.studio(context);
    context.json(
        new GearJson.Kits(
            gear.kits(door.caller(context), studio, gear(context)).stream()
                .map(GearJson.KitItem::of)
                .toList()));
  }

  private KeptGear current(Context context) {
    return gear.get(door.caller(context), SetupApi.studio(context), gear(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  static GearId gear(Context context) {
    return GearKeeping.id(context.pathParam("gear"));
  }
}
