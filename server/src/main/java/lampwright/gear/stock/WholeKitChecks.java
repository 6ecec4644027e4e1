package lampwright.gear.stock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.Piece;
import lampwright.gear.Several;

/**
 * Whether a kit with the studio's gear in it is a whole one: as all of it were in order, so that a
 * repair never makes a kept kit wrong.
 */
final class WholeKitChecks {

  private static final Map<String, GearKind> LISTS =
      Map.of(
          "bodies", GearKind.BODY,
          "lenses", GearKind.LENS,
          "heads", GearKind.HEAD,
          "packs", GearKind.PACK,
          "modifiers", GearKind.MODIFIER,
          "gels", GearKind.GEL,
          "neutral_densities", GearKind.NEUTRAL_DENSITY,
          "stands", GearKind.STAND);

  private final Kit own;
  private final List<PlacedGear> gear;

  WholeKitChecks(Kit own, List<PlacedGear> gear) {
    this.own = own;
    this.gear = List.copyOf(gear);
  }

  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>(sameNames());
    if (problems.isEmpty()
        && Kit.FORM.read(Kit.FORM.write(PlacedGear.join(own, gear)))
            instanceof Reading.Faulty<Kit> faulty) {
      faulty.problems().forEach(problem -> problems.add(inWritten(problem)));
    }
    return problems;
  }

  /** Pairings, packs and pins name pieces; two of one name would be one guess. */
  private List<Problem> sameNames() {
    Set<List<Object>> taken = new HashSet<>();
    ownPieces().forEach(piece -> taken.add(called(piece)));
    List<Problem> problems = new ArrayList<>();
    for (PlacedGear placed : gear) {
      if (!taken.add(called(placed.item().piece()))) {
        problems.add(
            new Problem(
                WholeKit.at(placed.number()).text(),
                "%s \"%s\" stands in this kit already. Take one of them out, or rename it."
                    .formatted(placed.item().kind().title(), placed.item().name())));
      }
    }
    return problems;
  }

  /** A zoom stands in a kit once for each focal length that is used. */
  private static List<Object> called(Piece piece) {
    GearKind kind = GearKind.of(piece);
    return piece instanceof Lens lens
        ? List.of(kind, lens.name(), lens.focalLength())
        : List.of(kind, piece.name());
  }

  private Stream<Piece> ownPieces() {
    return Stream.of(
            own.bodies(),
            own.lenses(),
            own.neutralDensities(),
            items(own.heads()),
            items(own.packs()),
            items(own.modifiers()),
            items(own.gels()),
            items(own.stands()))
        .flatMap(List::stream);
  }

  private static <P extends Piece> List<P> items(List<Several<P>> several) {
    return several.stream().map(Several::item).toList();
  }

  /** A problem of the whole kit, at the place in the written one that it comes from. */
  private Problem inWritten(Problem problem) {
    String[] steps = problem.pointer().split("/", -1);
    GearKind kind = steps.length > 1 ? LISTS.get(steps[1]) : null;
    if (kind == null) {
      return problem;
    }
    List<PlacedGear> ofKind = gear.stream().filter(g -> g.item().kind() == kind).toList();
    Optional<PlacedGear> from =
        steps.length == 2
            ? ofKind.stream().reduce((_, last) -> last)
            : at(ofKind, Integer.parseInt(steps[2]) - ownCount(kind));
    return from.map(placed -> new Problem(WholeKit.at(placed.number()).text(), problem.message()))
        .orElse(problem);
  }

  private static Optional<PlacedGear> at(List<PlacedGear> gear, int index) {
    return index >= 0 && index < gear.size() ? Optional.of(gear.get(index)) : Optional.empty();
  }

  private int ownCount(GearKind kind) {
    return (int) ownPieces().filter(piece -> GearKind.of(piece) == kind).count();
  }
}
