package lampwright.place;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.Ev100;

/**
 * The ambient light that somebody metered at a location.
 *
 * @param at when, by the clocks of the place
 * @param towards what an incident meter faced, or what a spot meter took
 */
public record AmbientReading(
    OffsetDateTime at,
    Ev100 level,
    Meter how,
    Optional<String> towards,
    Optional<Sky> sky,
    Optional<String> weather,
    Optional<String> comment) {

  /** How the meter took it. */
  public enum Meter {
    INCIDENT,
    SPOT
  }

  /** What was overhead. */
  public enum Sky {
    CLEAR,
    HAZE,
    BROKEN_CLOUD,
    OVERCAST,
    FOG
  }

  private static final Field<AmbientReading, OffsetDateTime> AT =
      required(
          "at",
          Forms.dateTime(),
          AmbientReading::at,
          "When, by the clocks of the place, such as 2025-09-12T19:13:00+01:00.");
  private static final Field<AmbientReading, Ev100> EV100 =
      required(
          "ev100",
          Forms.number("EV").atLeast(-10).atMost(20).maybe(10).as(Ev100::new, Ev100::value),
          AmbientReading::level,
          "What the meter gave, as an EV at ISO 100.");
  private static final Field<AmbientReading, Meter> HOW =
      usually(
          Meter.INCIDENT,
          "how",
          Forms.choice(Meter.values()),
          AmbientReading::how,
          "How the meter took it; usually incident.");
  private static final Field<AmbientReading, Optional<String>> TOWARDS =
      optional(
          "towards",
          PlaceForms.line(),
          AmbientReading::towards,
          "What an incident meter faced, or what a spot meter took.");
  private static final Field<AmbientReading, Optional<Sky>> SKY =
      optional("sky", Forms.choice(Sky.values()), AmbientReading::sky, "What was overhead.");
  private static final Field<AmbientReading, Optional<String>> WEATHER =
      optional("weather", PlaceForms.line(), AmbientReading::weather, "The weather.");
  private static final Field<AmbientReading, Optional<String>> COMMENT =
      optional("comment", PlaceForms.paragraph(), AmbientReading::comment, "Anything else.");

  static final ObjectForm<AmbientReading> FORM =
      ObjectForm.of(
          "ambient_reading",
          "The ambient light that somebody metered at a location.",
          values ->
              new AmbientReading(
                  values.get(AT),
                  values.get(EV100),
                  values.get(HOW),
                  values.get(TOWARDS),
                  values.get(SKY),
                  values.get(WEATHER),
                  values.get(COMMENT)),
          List.of(AT, EV100, HOW, TOWARDS, SKY, WEATHER, COMMENT));
}
