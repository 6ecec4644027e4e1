package lampwright.web.api;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.beam.CandelaFile;
import lampwright.engine.beam.CandelaTable;
import lampwright.engine.beam.LuminousOpening;
import lampwright.engine.unit.Degrees;
import lampwright.gear.CandelaForm;
import lampwright.tasks.PhotometricFiles;
import lampwright.web.http.Body;
import lampwright.web.http.Door;

/** Photometric files, read into tables that a modifier can hold; nothing is stored. */
public final class CandelaTableApi {

  private final Door door;
  private final PhotometricFiles files;

  public CandelaTableApi(Door door, PhotometricFiles files) {
    this.door = door;
    this.files = files;
  }

  /**
   * What a file held.
   *
   * @param candela as a modifier's field of that name takes it
   * @param quantity what the intensities and the flux are: candela and lumens, or both times
   *     seconds
   * @param beamAngleDeg full angle at half the intensity on the axis, across the modifier's up
   */
  private record TableJson(
      Object candela,
      String quantity,
      double peakCd,
      double onAxisCd,
      double zonalFluxLm,
      Optional<Double> beamAngleDeg,
      OpeningJson luminousOpening) {

    static TableJson of(CandelaFile.Read file) {
      CandelaTable table = file.table();
      return new TableJson(
          CandelaForm.FORM.write(table),
          file.quantity().name().toLowerCase(Locale.ROOT),
          table.peakCandela(),
          table.candelaAt(new Degrees(0), new Degrees(0)),
          table.zonalFluxLm(),
          table.isDarkOnAxis()
              ? Optional.empty()
              : table.findHalfPeakAngle(new Degrees(90)).map(Degrees::value),
          OpeningJson.of(file.opening()));
    }
  }

  private record OpeningJson(double widthM, double lengthM, double heightM, boolean round) {

    static OpeningJson of(LuminousOpening opening) {
      return new OpeningJson(
          opening.width().value(),
          opening.length().value(),
          opening.height().value(),
          opening.round());
    }
  }

  /** Reads the file in the body. */
  public void read(Context context) {
    String text = Body.plainText(context);
    context.json(TableJson.of(files.read(door.caller(context), SetupApi.studio(context), text)));
  }
}
