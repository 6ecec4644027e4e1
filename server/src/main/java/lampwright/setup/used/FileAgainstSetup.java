package lampwright.setup.used;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;

/**
 * What a picture's file says against its setup. Settings are compared by the nearest printed marks
 * of thirds of a stop; what is nearer than a third is the same.
 *
 * @param differs where file and setup disagree
 * @param offers fields that the setup lacks and the file can fill
 */
public record FileAgainstSetup(List<Difference> differs, List<Offer> offers) {

  private static final int STEPS_A_STOP = 3;

  public FileAgainstSetup {
    differs = List.copyOf(differs);
    offers = List.copyOf(offers);
  }

  /**
   * One disagreement.
   *
   * @param pointer the field of the setup
   * @param file as cameras print it
   * @param setup as cameras print it
   * @param sentence both, and what that means for the light
   */
  public record Difference(String pointer, String file, String setup, Said sentence) {}

  /**
   * A field that could be filled.
   *
   * @param value as the document writes it
   */
  public record Offer(String pointer, String value) {}

  /** Compares them. */
  public static FileAgainstSetup of(SetupDocument setup, FileSettings file) {
    List<Difference> differs = new ArrayList<>();
    ShootingExposure planned = setup.exposure();
    file.fNumber().flatMap(told -> aperture(told, planned.fNumber())).ifPresent(differs::add);
    file.time().flatMap(told -> time(told, planned.time())).ifPresent(differs::add);
    file.iso().flatMap(told -> iso(told, planned.iso())).ifPresent(differs::add);
    List<Offer> offers = new ArrayList<>();
    file.takenAt().ifPresent(at -> addWhen(setup.occasion(), at, differs, offers));
    boolean lacksOffset = setup.occasion().flatMap(Occasion::utcOffset).isEmpty();
    file.utcOffset()
        .filter(offset -> lacksOffset)
        .ifPresent(
            offset ->
                offers.add(
                    new Offer(
                        "/occasion/utc_offset",
                        offset.getTotalSeconds() == 0 ? "+00:00" : offset.getId())));
    return new FileAgainstSetup(differs, offers);
  }

  private static Optional<Difference> aperture(FNumber told, FNumber planned) {
    FNumber file = told.nearestMark(MarkedScale.APERTURE_THIRD);
    FNumber setup = planned.nearestMark(MarkedScale.APERTURE_THIRD);
    // A smaller number lets in more.
    return difference(
        "/exposure/f_number",
        file.toString(),
        setup.toString(),
        new Stops(-file.stopsAbove(setup).value()),
        "aperture");
  }

  private static Optional<Difference> time(ShutterTime told, ShutterTime planned) {
    ShutterTime file = told.nearestMark(MarkedScale.SHUTTER_THIRD);
    ShutterTime setup = planned.nearestMark(MarkedScale.SHUTTER_THIRD);
    return difference(
        "/exposure/time", file.toString(), setup.toString(), file.stopsOver(setup), "time");
  }

  private static Optional<Difference> iso(Iso told, Iso planned) {
    Iso file = told.nearestMark(MarkedScale.ISO_THIRD);
    Iso setup = planned.nearestMark(MarkedScale.ISO_THIRD);
    return difference(
        "/exposure/iso", file.toString(), setup.toString(), file.stopsOver(setup), "iso");
  }

  private static Optional<Difference> difference(
      String pointer, String file, String setup, Stops more, String what) {
    int thirds = (int) Math.rint(STEPS_A_STOP * more.value());
    return thirds == 0
        ? Optional.empty()
        : Optional.of(
            new Difference(
                pointer,
                file,
                setup,
                Said.of(
                    "picture.differs." + what + (thirds > 0 ? ".more" : ".less"),
                    Filling.shown(file),
                    Filling.shown(setup),
                    size(Math.abs(thirds)).asFilling())));
  }

  private static Said size(int thirds) {
    int whole = thirds / 3;
    int rest = thirds % 3;
    if (whole == 0) {
      return Said.of("picture.thirds." + rest);
    }
    return rest == 0
        ? Said.counted("picture.stops", whole)
        : Said.counted("picture.stopsAnd." + rest, whole);
  }

  private static void addWhen(
      Optional<Occasion> occasion, LocalDateTime at, List<Difference> differs, List<Offer> offers) {
    String day = at.toLocalDate().toString();
    occasion
        .flatMap(Occasion::date)
        .ifPresentOrElse(
            date -> {
              if (!date.toString().equals(day)) {
                differs.add(
                    new Difference(
                        "/occasion/date",
                        day,
                        date.toString(),
                        Said.of("picture.differs.day", Filling.text(day), Filling.text(date))));
              }
            },
            () -> offers.add(new Offer("/occasion/date", day)));
    if (occasion.flatMap(Occasion::time).isEmpty()) {
      LocalTime minute = LocalTime.of(at.getHour(), at.getMinute());
      offers.add(new Offer("/occasion/time", minute.toString()));
    }
  }
}
