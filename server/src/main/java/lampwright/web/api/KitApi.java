package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.Kit;
import lampwright.gear.KitId;
import lampwright.gear.stock.Missing;
import lampwright.gear.stock.WrittenKit;
import lampwright.tasks.KeptKit;
import lampwright.tasks.KitKeeping;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The kits of a studio: list, make, read, change, delete. */
public final class KitApi {

  private final Door door;
  private final KitKeeping kits;

  public KitApi(Door door, KitKeeping kits) {
    this.door = door;
    this.kits = kits;
  }

  private record Item(String id, String name, int revision, Instant changedAt, int heads) {

    static Item of(KeptKit kit) {
      int heads = kit.document().heads().stream().mapToInt(several -> several.count()).sum();
      return new Item(
          kit.id().text(), kit.document().name(), kit.revision(), kit.changedAt(), heads);
    }
  }

  private record All(List<Item> items, int total, Optional<String> next) {}

  private record One(
      String id,
      int revision,
      Instant changedAt,
      Map<String, Object> document,
      Map<String, Object> resolved,
      List<Missing> missing) {

    static One of(KeptKit kit) {
      return new One(
          kit.id().text(),
          kit.revision(),
          kit.changedAt(),
          WrittenKit.FORM.writeObject(kit.written()),
          Kit.FORM.writeObject(kit.document()),
          kit.missing());
    }
  }

  /** All of them, the last changed first. */
  public void list(Context context) {
    List<KeptKit> all = kits.list(door.caller(context), SetupApi.studio(context));
    context.json(new All(all.stream().map(Item::of).toList(), all.size(), Optional.empty()));
  }

  /** Keeps a new kit. */
  public void create(Context context) {
    WrittenKit document = Documents.read(context, WrittenKit.FORM);
    KeptKit created =
        kits.create(door.caller(context), SetupApi.studio(context), document, Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(One.of(created));
  }

  /** One kit as it is now. */
  public void get(Context context) {
    KeptKit kit = current(context);
    if (!Preconditions.isKnown(context, kit.revision())) {
      context.json(One.of(kit));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, WrittenKit.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptKit now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, WrittenKit.FORM, based, now.revision(), now.written()));
  }

  private void replace(Context context, int based, WrittenKit document) {
    KeptKit replaced =
        kits.replace(
            door.caller(context),
            SetupApi.studio(context),
            kit(context),
            Optional.of(based),
            document);
    Preconditions.show(context, replaced.revision());
    context.json(One.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    kits.delete(
        door.caller(context),
        SetupApi.studio(context),
        kit(context),
        Optional.of(basedOn(context)));
    context.status(HttpStatus.NO_CONTENT);
  }

  private KeptKit current(Context context) {
    return kits.get(door.caller(context), SetupApi.studio(context), kit(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  private static KitId kit(Context context) {
    return KitKeeping.id(context.pathParam("kit"));
  }
}
