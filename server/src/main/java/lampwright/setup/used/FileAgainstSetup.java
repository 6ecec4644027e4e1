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
  public record Difference(String pointer, String file, String setup, String sentence) {}

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
        "light of every kind");
  }

  private static Optional<Difference> time(ShutterTime told, ShutterTime planned) {
    ShutterTime file = told.nearestMark(MarkedScale.SHUTTER_THIRD);
    ShutterTime setup = planned.nearestMark(MarkedScale.SHUTTER_THIRD);
    return difference(
        "/exposure/time", file.toString(), setup.toString(), file.stopsOver(setup), "ambient");
  }

  private static Optional<Difference> iso(Iso told, Iso planned) {
    Iso file = told.nearestMark(MarkedScale.ISO_THIRD);
    Iso setup = planned.nearestMark(MarkedScale.ISO_THIRD);
    return difference(
        "/exposure/iso", file.toString(), setup.toString(), file.stopsOver(setup), "sensitive");
  }

  private static Optional<Difference> difference(
      String pointer, String file, String setup, Stops more, String of) {
    int thirds = (int) Math.rint(STEPS_A_STOP * more.value());
    return thirds == 0
        ? Optional.empty()
        : Optional.of(
            new Difference(
                pointer,
                file,
                setup,
                "The file says %s, the setup %s: %s %s %s."
                    .formatted(
                        file, setup, words(Math.abs(thirds)), thirds > 0 ? "more" : "less", of)));
  }

  private static String words(int thirds) {
    String rest = thirds % 3 == 1 ? "a third" : "two thirds";
    int whole = thirds / 3;
    if (whole == 0) {
      return rest + " of a stop";
    }
    String stops = whole == 1 ? "one" : Integer.toString(whole);
    if (thirds % 3 == 0) {
      return stops + (whole == 1 ? " stop" : " stops");
    }
    return stops + " and " + rest + " stops";
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
                        "The file says %s, the setup %s.".formatted(day, date)));
              }
            },
            () -> offers.add(new Offer("/occasion/date", day)));
    if (occasion.flatMap(Occasion::time).isEmpty()) {
      LocalTime minute = LocalTime.of(at.getHour(), at.getMinute());
      offers.add(new Offer("/occasion/time", minute.toString()));
    }
  }
}
