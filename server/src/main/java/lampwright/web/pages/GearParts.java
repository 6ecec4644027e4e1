package lampwright.web.pages;

import static lampwright.web.pages.GearPart.Kind.FLAG;
import static lampwright.web.pages.GearPart.Kind.LENGTH;
import static lampwright.web.pages.GearPart.Kind.LINE;
import static lampwright.web.pages.GearPart.Kind.NUMBER;
import static lampwright.web.pages.GearPart.Kind.PARAGRAPH;
import static lampwright.web.pages.GearPart.Kind.REACH;

import java.util.List;
import lampwright.gear.stock.GearKind;

/** What a form asks about gear of each kind, in groups. */
final class GearParts {

  private GearParts() {}

  /**
   * A group of fields.
   *
   * @param key of its heading
   */
  record Group(String key, List<GearPart> parts) {

    Group {
      parts = List.copyOf(parts);
    }

    private static Group named(String key, GearPart... parts) {
      return new Group("studio.gear.group." + key, List.of(parts));
    }
  }

  private static final GearPart NAME = GearPart.of(LINE, "name");
  private static final GearPart ENERGY = GearPart.of(NUMBER, "energy_ws");
  private static final GearPart RECYCLE = GearPart.of(NUMBER, "recycle_s");
  private static final GearPart FLASHES = GearPart.of(NUMBER, "flashes_per_charge");
  private static final GearPart BATTERIES = GearPart.of(NUMBER, "batteries").usually("1");
  private static final GearPart FEED = GearPart.choice(List.of("feed"), "battery", "mains");
  private static final GearPart MOUNT = GearPart.of(LINE, "mount");
  private static final GearPart WEIGHT = GearPart.of(NUMBER, "weight_kg");
  private static final GearPart NOTE = GearPart.of(PARAGRAPH, "note");

  private static final List<Group> HEAD =
      List.of(
          Group.named("piece", NAME, ENERGY),
          Group.named(
              "output",
              GearPart.choice(List.of("output", "kind"), "guide_number", "reading"),
              GearPart.of(REACH, "output", "guide_number_m").where("kind", "guide_number"),
              GearPart.of(NUMBER, "output", "f_number").where("kind", "reading"),
              GearPart.of(LENGTH, "output", "distance_m").where("kind", "reading"),
              GearPart.of(NUMBER, "output", "iso").usually("100").where("kind", "reading"),
              GearPart.of(NUMBER, "output", "stops_down").usually("0").where("kind", "reading")),
          Group.named(
              "dial",
              GearPart.of(NUMBER, "range_stops").usually("6"),
              GearPart.of(NUMBER, "step_stops").usually("0.1"),
              GearPart.choice(
                  List.of("scale"), "fractions", "one_stop_units", "watt_seconds", "percent"),
              GearPart.choice(List.of("control"), "cut", "voltage")),
          Group.named("supply", FEED, GearPart.of(LINE, "pack"), RECYCLE, FLASHES, BATTERIES),
          Group.named(
              "rest",
              GearPart.of(NUMBER, "duration_t05_ms"),
              GearPart.of(NUMBER, "long_burst_efficiency"),
              GearPart.of(NUMBER, "temperature_k"),
              GearPart.of(NUMBER, "modelling_w"),
              MOUNT,
              WEIGHT,
              NOTE));

  private static final List<Group> PACK =
      List.of(
          Group.named("piece", NAME, ENERGY, GearPart.of(NUMBER, "outlets")),
          Group.named("supply", FEED, RECYCLE, FLASHES, BATTERIES),
          Group.named("rest", WEIGHT, NOTE));

  private static final List<Group> MODIFIER =
      List.of(
          Group.named(
              "piece",
              NAME,
              GearPart.choice(
                  List.of("kind"),
                  "reflector",
                  "softbox",
                  "octagon",
                  "strip",
                  "umbrella",
                  "dish",
                  "snoot",
                  "barn_doors",
                  "scrim",
                  "bare")),
          Group.named(
              "face",
              GearPart.choice(List.of("face", "shape"), "point", "disc", "octagon", "rectangle"),
              GearPart.of(LENGTH, "face", "diameter_m").where("shape", "disc"),
              GearPart.of(LENGTH, "face", "across_flats_m").where("shape", "octagon"),
              GearPart.of(LENGTH, "face", "width_m").where("shape", "rectangle"),
              GearPart.of(LENGTH, "face", "height_m").where("shape", "rectangle")),
          Group.named(
              "effect",
              GearPart.of(NUMBER, "loss_stops"),
              GearPart.of(LENGTH, "loss_at_m").usually("2"),
              GearPart.of(NUMBER, "spread_deg"),
              GearPart.of(NUMBER, "transmission"),
              GearPart.of(FLAG, "grid"),
              GearPart.of(NUMBER, "grid_depth_to_width"),
              GearPart.of(NUMBER, "cutoff_deg")),
          Group.named(
              "rest", MOUNT, GearPart.of(NUMBER, "takes_heads").usually("1"), WEIGHT, NOTE));

  private static final List<Group> BODY =
      List.of(
          Group.named(
              "piece",
              NAME,
              GearPart.of(NUMBER, "width_mm"),
              GearPart.of(NUMBER, "height_mm"),
              GearPart.of(NUMBER, "pixels_wide")),
          Group.named(
              "shutter",
              GearPart.choice(List.of("shutter"), "focal_plane", "leaf"),
              GearPart.of(LINE, "sync"),
              GearPart.of(NUMBER, "curtain_travel_ms"),
              GearPart.of(NUMBER, "iso_lowest").usually("100"),
              GearPart.of(NUMBER, "iso_highest").usually("6400")),
          Group.named("rest", WEIGHT, NOTE));

  private static final List<Group> LENS =
      List.of(
          Group.named(
              "piece",
              NAME,
              GearPart.of(NUMBER, "focal_length_mm"),
              GearPart.of(NUMBER, "widest_f_number").usually("2.8"),
              GearPart.of(NUMBER, "smallest_f_number").usually("22")),
          Group.named("rest", WEIGHT, NOTE));

  private static final List<Group> GEL =
      List.of(
          Group.named(
              "piece",
              NAME,
              GearPart.of(NUMBER, "shift_mired"),
              GearPart.of(NUMBER, "loss_stops")));

  private static final List<Group> FILTER =
      List.of(Group.named("piece", NAME, GearPart.of(NUMBER, "loss_stops")));

  private static final List<Group> STAND =
      List.of(
          Group.named(
              "piece",
              NAME,
              GearPart.of(LENGTH, "highest_m"),
              GearPart.of(LENGTH, "leg_radius_m"),
              GearPart.of(NUMBER, "legs").usually("3"),
              GearPart.of(NUMBER, "ballast_kg").usually("0")),
          Group.named("rest", WEIGHT, NOTE));

  static List<Group> groups(GearKind kind) {
    return switch (kind) {
      case HEAD -> HEAD;
      case PACK -> PACK;
      case MODIFIER -> MODIFIER;
      case BODY -> BODY;
      case LENS -> LENS;
      case GEL -> GEL;
      case NEUTRAL_DENSITY -> FILTER;
      case STAND -> STAND;
    };
  }

  /** Whether a meter can say something about gear of this kind. */
  static boolean isMetered(GearKind kind) {
    return kind == GearKind.HEAD || kind == GearKind.MODIFIER;
  }
}
