package lampwright.web.pages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Pack;
import lampwright.gear.Piece;
import lampwright.gear.Several;
import lampwright.gear.Stand;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearKind;
import lampwright.language.Notation;
import lampwright.tasks.KeptKit;
import lampwright.wording.Figure;

/** A kit in words and figures. */
record KitView(Notation notation, KeptKit kit) {

  private record Counted(Piece piece, int count) {}

  String facts() {
    Kit whole = kit.document();
    return String.join(
        " · ",
        Stream.of(
                counted("heads", total(whole.heads())),
                counted("modifiers", total(whole.modifiers())),
                counted("bodies", whole.bodies().size()),
                counted("lenses", whole.lenses().size()))
            .flatMap(Optional::stream)
            .toList());
  }

  private Optional<String> counted(String what, int count) {
    return count == 0 ? Optional.empty() : Optional.of(notation.count("studio.kit." + what, count));
  }

  String missing() {
    return kit.missing().isEmpty()
        ? ""
        : notation.count("studio.kits.missing", kit.missing().size());
  }

  List<Figure> figures() {
    Kit whole = kit.document();
    List<Figure> figures = new ArrayList<>();
    figures.add(Figure.of(Integer.toString(total(whole.heads())), "", say("figure.heads")));
    double energyWs =
        whole.heads().stream().mapToDouble(of -> of.count() * of.item().energy().value()).sum();
    if (energyWs > 0) {
      figures.add(
          energyWs < 1_000
              ? Figure.of(notation.rounded(energyWs, 0), "W·s", say("figure.energy"))
              : Figure.of(notation.fixed(energyWs / 1_000, 2), "kJ", say("figure.energy")));
    }
    OptionalInt charge =
        whole.heads().stream()
            .flatMap(of -> of.item().flashesPerCharge().stream())
            .mapToInt(Integer::intValue)
            .min();
    charge.ifPresent(
        flashes -> figures.add(Figure.of(Integer.toString(flashes), "", say("figure.charges"))));
    double weightKg = weightKg();
    if (weightKg > 0) {
      figures.add(Figure.of(notation.fixed(weightKg, 1), "kg", say("figure.weight")));
    }
    return figures;
  }

  private double weightKg() {
    return all().values().stream()
        .flatMap(List::stream)
        .mapToDouble(one -> one.count() * weightKg(one.piece()))
        .sum();
  }

  private static double weightKg(Piece piece) {
    Optional<Double> known =
        switch (piece) {
          case Head head -> head.weightKg();
          case Pack pack -> pack.weightKg();
          case Modifier modifier -> modifier.weightKg();
          case Body body -> body.weightKg();
          case Lens lens -> lens.weightKg();
          case Stand stand -> stand.weightKg();
          case Gel _, NeutralDensity _ -> Optional.empty();
        };
    return known.orElse(0.0);
  }

  /**
   * Every piece by its kind.
   *
   * @param gear the studio's, by kind and name, to lead there
   * @param gearPath before the ids of that
   */
  List<KitPage.Shelf> shelves(Map<GearKind, Map<String, GearId>> gear, String gearPath) {
    PieceWords words = new PieceWords(notation);
    List<KitPage.Shelf> shelves = new ArrayList<>();
    all()
        .forEach(
            (kind, pieces) ->
                shelves.add(
                    new KitPage.Shelf(
                        heading(notation, kind),
                        pieces.stream()
                            .map(
                                one ->
                                    new KitPage.Row(
                                        one.count(),
                                        one.piece().name(),
                                        Optional.ofNullable(
                                                gear.getOrDefault(kind, new HashMap<>())
                                                    .get(one.piece().name()))
                                            .map(id -> gearPath + "/" + id.text())
                                            .orElse(""),
                                        words.facts(one.piece())))
                            .toList())));
    return shelves;
  }

  /** The pieces of the kit as it can be used, by kind. */
  private Map<GearKind, List<Counted>> all() {
    Kit whole = kit.document();
    Map<GearKind, List<Counted>> all = new LinkedHashMap<>();
    put(all, GearKind.HEAD, several(whole.heads()));
    put(all, GearKind.PACK, several(whole.packs()));
    put(all, GearKind.MODIFIER, several(whole.modifiers()));
    put(all, GearKind.BODY, whole.bodies().stream().map(one -> new Counted(one, 1)).toList());
    put(all, GearKind.LENS, whole.lenses().stream().map(one -> new Counted(one, 1)).toList());
    put(all, GearKind.GEL, several(whole.gels()));
    put(
        all,
        GearKind.NEUTRAL_DENSITY,
        whole.neutralDensities().stream().map(one -> new Counted(one, 1)).toList());
    put(all, GearKind.STAND, several(whole.stands()));
    return all;
  }

  private static void put(Map<GearKind, List<Counted>> all, GearKind kind, List<Counted> pieces) {
    if (!pieces.isEmpty()) {
      all.put(kind, pieces);
    }
  }

  private static <P extends Piece> List<Counted> several(List<Several<P>> pieces) {
    return pieces.stream().map(of -> new Counted(of.item(), of.count())).toList();
  }

  private static int total(List<? extends Several<?>> pieces) {
    return pieces.stream().mapToInt(Several::count).sum();
  }

  /** What gear of a kind is called, as a heading. */
  static String heading(Notation notation, GearKind kind) {
    return notation.say("studio.kit.shelf." + kind.word());
  }

  private String say(String key) {
    return notation.say("studio.kit." + key);
  }
}
