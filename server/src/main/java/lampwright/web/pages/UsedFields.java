package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.engine.Known;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;
import lampwright.setup.Used;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.wording.Wording;

/**
 * The fields in which one tells what was really used, to and fro: filled with what is there, read
 * as what a program would send. A field that still says what it was filled with tells nothing.
 */
final class UsedFields {

  private static final String APERTURE = "used-aperture";
  private static final String TIME = "used-time";
  private static final String ISO = "used-iso";

  /** "f/5.6", "5.6 + 0.3", "5.6 3": the mark, and the tenths after it. */
  private static final Pattern METERED =
      Pattern.compile(
          "(?:[fF]\\s*/?\\s*)?(\\d{1,3}(?:\\.\\d{1,2})?)(?:\\s*\\+\\s*0?\\.(\\d)|\\s+(\\d))?");

  private final SetupDocument setup;
  private final Figures expected;
  private final boolean isAgain;
  private final Wording words;
  private final Map<String, String> filled = new LinkedHashMap<>();

  /**
   * @param setup as it is now
   * @param expected figures of the plan
   * @param isAgain whether the setup as it is now tells what was used
   */
  UsedFields(SetupDocument setup, Figures expected, boolean isAgain, Wording words) {
    this.setup = setup;
    this.expected = expected;
    this.isAgain = isAgain;
    this.words = words;
    for (Light light : setup.lights()) {
      filled.put(
          power(light.id()),
          light.stopsDown().map(down -> decimal("%.1f", down.value())).orElse(""));
      filled.put(reading(light.id()), metered(light).map(UsedFields::text).orElse(""));
      filled.put(
          distance(light.id()),
          decimal("%.2f", light.place().distanceTo(light.target().at()).value()));
    }
    filled.put(APERTURE, setup.exposure().fNumber().toString().replace("f/", ""));
    filled.put(TIME, setup.exposure().time().toString().replace(" s", ""));
    filled.put(ISO, words.iso(setup.exposure().iso()));
  }

  private static String power(LightId light) {
    return "used-" + light + "-power";
  }

  private static String reading(LightId light) {
    return "used-" + light + "-reading";
  }

  private static String distance(LightId light) {
    return "used-" + light + "-distance";
  }

  private static String decimal(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  /** A planned reading is not offered as the day's: it would be sent back unseen. */
  private Optional<MeterReading> metered(Light light) {
    return light.reading().filter(of -> isAgain && of.known() == Known.METERED);
  }

  private static String text(MeterReading reading) {
    String mark = reading.printed().toString().replace("f/", "");
    return reading.tenths() == 0 ? mark : mark + " + 0." + reading.tenths();
  }

  /** The form as it is when nobody has typed yet. */
  UsedForm form(String action, String csrfToken, int revision, String note) {
    return form(
        action,
        csrfToken,
        revision,
        note,
        field -> filled.getOrDefault(field, ""),
        FormErrors.none());
  }

  /** The form with what was typed, and what is wrong with it. */
  UsedForm form(
      String action,
      String csrfToken,
      int revision,
      String note,
      UnaryOperator<String> typed,
      FormErrors errors) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    return new UsedForm(
        action,
        csrfToken,
        revision,
        isAgain,
        false,
        setup.lightsInBuildOrder().stream()
            .map(
                light ->
                    new UsedForm.LightFields(
                        numbers.getOrDefault(light.id(), 0),
                        words.role(light.role()),
                        fields(light, typed)))
            .toList(),
        List.of(
            number(APERTURE, words.say("pages.used.field.aperture"), "", typed),
            new UsedForm.TypedField(
                TIME, words.say("pages.used.field.time"), typed.apply(TIME), "", false),
            number(ISO, "ISO", "", typed)),
        note,
        errors);
  }

  private List<UsedForm.TypedField> fields(Light light, UnaryOperator<String> typed) {
    LightFigures plan = expected.get(light.id());
    return List.of(
        number(
            power(light.id()),
            words.say("pages.used.field.power"),
            plan.light()
                .stopsDown()
                .map(
                    down ->
                        words.say(
                            "pages.used.plannedPower",
                            words.fixed(down.value(), 1),
                            words.power(plan.light().head(), Optional.of(down))))
                .orElse(""),
            typed),
        new UsedForm.TypedField(
            reading(light.id()),
            words.say("pages.used.field.meter"),
            typed.apply(reading(light.id())),
            plan.level()
                .map(level -> words.say("pages.used.expected", words.reading(atIso(level))))
                .orElse(""),
            false),
        number(
            distance(light.id()),
            words.say("pages.used.field.distance"),
            words.say("pages.used.planned.value", words.fixed(plan.distance().value(), 2)),
            typed));
  }

  /** What the meter was to show at the ISO that the setup says now. */
  private FNumber atIso(Level level) {
    return FNumber.ofExposure(level.exposure(), setup.exposure().iso(), MeterConstant.FLAT);
  }

  private static UsedForm.TypedField number(
      String id, String label, String hint, UnaryOperator<String> typed) {
    return new UsedForm.TypedField(id, label, typed.apply(id), hint, true);
  }

  /** What was typed, as a program would send it; problems point to fields. */
  Reading<Used> read(UnaryOperator<String> typed) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("exposure", exposure(typed));
    told.put("lights", lights(typed));
    String note = typed.apply(UsedForm.NOTE).replace("\r\n", "\n").strip();
    if (!note.isEmpty()) {
      told.put("note", note);
    }
    return Used.FORM.read(told);
  }

  private Map<String, Object> exposure(UnaryOperator<String> typed) {
    Map<String, Object> exposure = new LinkedHashMap<>();
    changed(APERTURE, typed)
        .ifPresent(text -> exposure.put("f_number", plain(text.replaceFirst("^[fF]\\s*/", ""))));
    changed(TIME, typed)
        .ifPresent(text -> exposure.put("time", text.replaceFirst("\\s*s$", "").replace(',', '.')));
    changed(ISO, typed)
        .ifPresent(text -> exposure.put("iso", plain(text.replaceFirst("^ISO\\s*", ""))));
    return exposure;
  }

  private List<Map<String, Object>> lights(UnaryOperator<String> typed) {
    List<Map<String, Object>> lights = new ArrayList<>();
    for (Light light : setup.lights()) {
      Map<String, Object> told = new LinkedHashMap<>();
      changed(power(light.id()), typed).ifPresent(text -> told.put("stops_down", plain(text)));
      changed(distance(light.id()), typed).ifPresent(text -> told.put("distance_m", plain(text)));
      String reading = typed.apply(reading(light.id())).strip();
      // One that stands there still is what the meter gave with what is corrected beside it.
      boolean isSaid =
          changed(reading(light.id()), typed).isPresent()
              || (!told.isEmpty() && !reading.isEmpty());
      if (isSaid) {
        told.put("reading", reading(reading, light));
      }
      if (!told.isEmpty()) {
        told.put("light", light.id().text());
        lights.add(told);
      }
    }
    return lights;
  }

  /** A meter's word as it is typed, "5.6 + 0.3", in the fields of a reading. */
  static Map<String, Object> metered(String text) {
    Map<String, Object> reading = new LinkedHashMap<>();
    Matcher metered = METERED.matcher(text.replace(',', '.'));
    if (metered.matches()) {
      reading.put("f_number", Double.valueOf(metered.group(1)));
      Optional.ofNullable(metered.group(2))
          .or(() -> Optional.ofNullable(metered.group(3)))
          .ifPresent(tenths -> reading.put("tenths", Double.valueOf(tenths)));
    } else {
      reading.put("f_number", text);
    }
    return reading;
  }

  /** By the same kind of meter as before, where there was one. */
  private Map<String, Object> reading(String text, Light light) {
    Map<String, Object> reading = metered(text);
    light
        .reading()
        .filter(before -> before.receptor() == MeterReading.Receptor.DOME)
        .ifPresent(before -> reading.put("receptor", "dome"));
    if (text.equals(filled.get(reading(light.id())))) {
      light
          .reading()
          .ifPresent(
              before -> {
                reading.put("includes_ambient", before.includesAmbient());
                before.iso().ifPresent(iso -> reading.put("iso", iso.value()));
              });
    }
    return reading;
  }

  private Optional<String> changed(String field, UnaryOperator<String> typed) {
    return Optional.of(typed.apply(field).strip())
        .filter(text -> !text.isEmpty() && !text.equals(filled.get(field)));
  }

  /** A number where it is one, else the text, about which the form then has something to say. */
  private static Object plain(String text) {
    String number = text.strip().replace(',', '.').replace('−', '-');
    return number.matches("-?\\d{1,9}(\\.\\d{1,9})?") ? Double.valueOf(number) : text;
  }

  /**
   * Problems of what was told, at their fields.
   *
   * @param typed what was told, for the order of its lights
   */
  FormErrors errors(List<Problem> problems, UnaryOperator<String> typed) {
    List<Map<String, Object>> told = lights(typed);
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    return new FormErrors(problems.stream().map(problem -> error(problem, told, numbers)).toList());
  }

  private FormErrors.FormError error(
      Problem problem, List<Map<String, Object>> told, Map<LightId, Integer> numbers) {
    String[] parts = problem.pointer().split("/", -1);
    if (parts.length > 3 && parts[1].equals("lights")) {
      LightId id = new LightId(String.valueOf(told.get(Integer.parseInt(parts[2])).get("light")));
      String field =
          switch (parts[3]) {
            case "stops_down" -> power(id);
            case "distance_m" -> distance(id);
            default -> reading(id);
          };
      return new FormErrors.FormError(
          field,
          words.light(numbers.getOrDefault(id, 0), expected.get(id).light())
              + ": "
              + problem.message());
    }
    String field =
        switch (problem.pointer()) {
          case "/exposure/f_number" -> APERTURE;
          case "/exposure/time" -> TIME;
          case "/exposure/iso" -> ISO;
          case "/note" -> UsedForm.NOTE;
          default -> "";
        };
    return new FormErrors.FormError(field, problem.message());
  }
}
