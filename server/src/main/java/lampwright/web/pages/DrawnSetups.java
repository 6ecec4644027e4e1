package lampwright.web.pages;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Objects;
import lampwright.drawing.Elevation;
import lampwright.drawing.PackedSvg;
import lampwright.drawing.Plan;
import lampwright.drawing.PlanTable;
import lampwright.drawing.Svg;
import lampwright.language.Notation;
import lampwright.setup.Burning;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;

/**
 * Setups as they were drawn, kept for whoever looks next: nothing but the document and the reader's
 * notation decides how they look. The levels of a plan take longer to compute than all the rest of
 * a setup's page. What was not looked at for longest is let go.
 */
public final class DrawnSetups {

  /** Some fifteen hundred sheets. */
  private static final long MOST_SHEET_BYTES = 48_000_000;

  private static final long MOST_BURNING_BYTES = 8_000_000;

  private static final long MOST_CARD_LETTERS = 8_000_000;

  /** About what the document that a sheet is of, and its table, take in memory. */
  private static final int BESIDE_DRAWINGS_BYTES = 20_000;

  private final Cache<Key, PackedSheet> sheets =
      Caffeine.newBuilder()
          .maximumWeight(MOST_SHEET_BYTES)
          .weigher((Key _, PackedSheet sheet) -> sheet.bytes())
          .build();

  private final Cache<Key, Card> cards =
      Caffeine.newBuilder()
          .maximumWeight(MOST_CARD_LETTERS)
          .weigher((Key _, Card card) -> card.plan().markup().length())
          .build();

  private final Cache<BurningKey, PackedSheet> burning =
      Caffeine.newBuilder()
          .maximumWeight(MOST_BURNING_BYTES)
          .weigher((BurningKey _, PackedSheet sheet) -> sheet.bytes())
          .build();

  private record Key(SetupDocument setup, Notation notation) {}

  private record BurningKey(SetupDocument setup, Burning burning, Notation notation) {}

  /** A plan with its table and its elevations, as it is kept. */
  private record PackedSheet(
      PackedSvg drawing, List<PlanView.Place> places, List<PackedSvg> elevations) {

    static PackedSheet of(PlanView sheet) {
      return new PackedSheet(
          PackedSvg.of(sheet.drawing()),
          sheet.places(),
          sheet.elevations().stream().map(PackedSvg::of).toList());
    }

    PlanView unpacked() {
      return new PlanView(
          drawing.unpacked(), places, elevations.stream().map(PackedSvg::unpacked).toList());
    }

    int bytes() {
      return BESIDE_DRAWINGS_BYTES
          + drawing.packedBytes()
          + elevations.stream().mapToInt(PackedSvg::packedBytes).sum();
    }
  }

  /**
   * What a list shows of a setup.
   *
   * @param plan small
   * @param figures the camera's setting and the ambient
   */
  record Card(Svg plan, List<Figure> figures) {

    Card {
      figures = List.copyOf(figures);
    }
  }

  /** The plan with its table and both elevations. */
  PlanView sheet(SetupDocument setup, Figures figures, Notation notation) {
    return Objects.requireNonNull(
            sheets.get(
                new Key(setup, notation), _ -> PackedSheet.of(drawn(setup, figures, notation))))
        .unpacked();
  }

  private static PlanView drawn(SetupDocument setup, Figures figures, Notation notation) {
    return PlanView.of(Plan.of(setup, figures, notation), PlanTable.of(setup, figures, notation))
        .withElevations(
            List.of(
                Elevation.side(setup, figures, notation),
                Elevation.front(setup, figures, notation)));
  }

  /** The plan with its table, and the levels of what burns. */
  PlanView burning(SetupDocument setup, Figures figures, Burning burns, Notation notation) {
    return Objects.requireNonNull(
            burning.get(
                new BurningKey(setup, burns, notation),
                _ ->
                    PackedSheet.of(
                        PlanView.of(
                            Plan.burning(setup, figures, burns, notation),
                            PlanTable.of(setup, figures, notation)))))
        .unpacked();
  }

  /** What a list shows of it. */
  Card card(SetupDocument setup, Notation notation) {
    return Objects.requireNonNull(
        cards.get(
            new Key(setup, notation),
            _ ->
                new Card(
                    Plan.small(setup, notation),
                    KeyFigures.inShort(setup.exposure(), FiguresComputation.of(setup), notation))));
  }
}
