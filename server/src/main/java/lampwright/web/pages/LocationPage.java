package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.Figure;

/**
 * One location: how one gets in, power and hazards first, then its sun and its light.
 *
 * @param facts "harbour · 50.3500, −4.1500 · 12 m above the sea"
 * @param hazards may be empty
 * @param power what there is of mains; empty where it is not known
 * @param permissions each with its end
 * @param sun through the chosen day
 * @param readings the ambient that was metered there; may be empty
 * @param readingsChart the same over the hours of a day; absent where there are none
 * @param setups that were made there; may be empty
 * @param changePath where one changes it; empty for who may not
 */
public record LocationPage(
    Layout layout,
    String name,
    String facts,
    List<String> hazards,
    String access,
    String power,
    List<Permission> permissions,
    Sun sun,
    List<Reading> readings,
    Optional<DrawingView> readingsChart,
    List<Link> setups,
    String notes,
    String changePath,
    String listPath) {

  public LocationPage {
    hazards = List.copyOf(hazards);
    permissions = List.copyOf(permissions);
    readings = List.copyOf(readings);
    setups = List.copyOf(setups);
  }

  /**
   * Somebody's leave.
   *
   * @param until "until 4 May 2031", "over since 4 May 2031", or empty
   */
  public record Permission(String text, String until, boolean isOver) {}

  /**
   * The sun of a day.
   *
   * @param action the page, which asks for another day
   * @param date as the field holds it
   * @param clocks "by clocks +01:00 of universal time"
   * @param turns of the light, morning first
   * @param chart of its day
   * @param track every two hours
   */
  public record Sun(
      String action,
      String date,
      String clocks,
      Optional<String> dateError,
      List<Figure> noon,
      List<Turn> turns,
      Optional<DrawingView> chart,
      List<Moment> track) {

    public Sun {
      noon = List.copyOf(noon);
      turns = List.copyOf(turns);
      track = List.copyOf(track);
    }
  }

  /** Where the light goes over from one phase into the next. */
  public record Turn(String what, String morning, String evening) {}

  /** Where the sun stands, and what a clear sky gives; that may be empty. */
  public record Moment(String time, String height, String bearing, String clearSky) {}

  /** What was metered. */
  public record Reading(String when, String level, String how, String sky, String comment) {}
}
