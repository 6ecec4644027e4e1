package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Says in plain words what a setup would have to say for the figures that are absent. */
final class MissingWords {

  private static final Pattern IN_LIST = Pattern.compile("/(lights|subjects)/(\\d+)(/.*)?");
  private static final Pattern UNIT =
      Pattern.compile("_(m|m2|m_per_s|mm|ms|s|deg|k|ws|stops|kg|w|va|v|a)$");

  private static final Map<String, String> GROUPS =
      Map.of(
          "exposure", "Exposure",
          "camera", "Camera",
          "lights", "Lights",
          "ambient", "Ambient",
          "subjects", "Subjects",
          "occasion", "Place and time",
          "plan", "Plan");

  private static final Map<String, String> INPUTS =
      Map.ofEntries(
          Map.entry("/exposure/white_balance_k", "the white balance"),
          Map.entry("/camera", "a camera"),
          Map.entry("/camera/body", "the body"),
          Map.entry("/camera/lens", "the lens"),
          Map.entry("/camera/place", "the camera’s place"),
          Map.entry("/camera/aim", "the camera’s aim"),
          Map.entry("/camera/bearing_deg", "the bearing that the camera looks toward"),
          Map.entry("/camera/focus_distance_m", "the focus distance"),
          Map.entry("/camera/body/pixels_wide", "the body’s pixels across"),
          Map.entry("/camera/body/curtain_travel_ms", "the travel of the body’s curtain"),
          Map.entry("/lights/reading", "a metered reading, or output and losses,"),
          Map.entry("/lights/stops_down", "the power"),
          Map.entry("/lights/aim", "an aim at the target"),
          Map.entry("/lights/target/held", "a meter held toward the light"),
          Map.entry("/lights/stand", "the stand"),
          Map.entry("/lights/stand/leg_radius_m", "how far the stand’s legs reach"),
          Map.entry("/occasion/wind_m_per_s", "the wind"),
          Map.entry("/lights/head/recycle_s", "the time to recycle"),
          Map.entry("/lights/head/flashes_per_charge", "the flashes to a charge"),
          Map.entry("/lights/head/duration_t05_ms", "the flash duration (t0.5)"),
          Map.entry("/ambient", "an ambient reading"),
          Map.entry("/ambient/temperature_k", "the ambient’s colour temperature"),
          Map.entry("/subjects/speed_m_per_s", "the speed"),
          Map.entry("/subjects/height_m", "the height"),
          Map.entry("/subjects/path", "the path"),
          Map.entry("/occasion/date", "the date"),
          Map.entry("/occasion/time", "the time of day"),
          Map.entry("/occasion/utc_offset", "the clock’s offset from universal time"),
          Map.entry("/occasion/place/latitude_deg", "the latitude"),
          Map.entry("/occasion/place/longitude_deg", "the longitude"));

  private final SetupDocument setup;
  private final Map<LightId, Integer> numbers;

  MissingWords(SetupDocument setup, Map<LightId, Integer> numbers) {
    this.setup = setup;
    this.numbers = numbers;
  }

  /** Everything that is missing, by what it is about, in the order of the pointers. */
  List<MissingInput> of(List<String> pointers) {
    Map<String, Map<String, Set<String>>> groups = new LinkedHashMap<>();
    for (String pointer : pointers) {
      Matcher inList = IN_LIST.matcher(pointer);
      boolean listed = inList.matches();
      String plain =
          listed
              ? "/" + inList.group(1) + (inList.group(3) == null ? "" : inList.group(3))
              : pointer;
      String group = plain.split("/", -1)[1];
      Set<String> members =
          groups
              .computeIfAbsent(
                  GROUPS.getOrDefault(group, Wording.sentence(group)), g -> new LinkedHashMap<>())
              .computeIfAbsent(words(plain), w -> new LinkedHashSet<>());
      if (listed) {
        members.add(member(inList.group(1), Integer.parseInt(inList.group(2))));
      }
    }
    List<MissingInput> missing = new ArrayList<>();
    groups.forEach(
        (of, inputs) ->
            missing.add(
                new MissingInput(
                    of,
                    inputs.entrySet().stream()
                        .map(input -> input.getKey() + whose(of, input.getValue()))
                        .toList())));
    return missing;
  }

  /**
   * What is missing among some of the pointers, as one sentence; empty where nothing is.
   *
   * @param wanted regular expressions for the pointers that count
   */
  String sentence(List<String> pointers, String... wanted) {
    List<String> inputs =
        of(pointers.stream().filter(pointer -> matches(pointer, wanted)).toList()).stream()
            .flatMap(missing -> missing.inputs().stream())
            .toList();
    return inputs.isEmpty() ? "" : "Needs " + MissingInput.listed(inputs) + ".";
  }

  private static boolean matches(String pointer, String... wanted) {
    for (String expression : wanted) {
      if (pointer.matches(expression)) {
        return true;
      }
    }
    return false;
  }

  private static String words(String plain) {
    String known = INPUTS.get(plain);
    if (known != null) {
      return known;
    }
    String name = plain.substring(plain.lastIndexOf('/') + 1);
    return "the " + UNIT.matcher(name).replaceFirst("").replace('_', ' ');
  }

  private String member(String list, int index) {
    if (list.equals("lights")) {
      return index < setup.lights().size()
          ? String.valueOf(number(setup.lights().get(index)))
          : String.valueOf(index + 1);
    }
    return index < setup.subjects().size()
        ? setup.subjects().get(index).name()
        : "subject " + (index + 1);
  }

  private int number(Light light) {
    return numbers.getOrDefault(light.id(), 0);
  }

  private static String whose(String group, Set<String> members) {
    if (members.isEmpty()) {
      return "";
    }
    if (!group.equals("Lights")) {
      return " of " + MissingInput.listed(List.copyOf(members));
    }
    List<String> inOrder =
        members.stream()
            .map(Integer::valueOf)
            .sorted()
            .map(String::valueOf)
            .collect(Collectors.toList());
    return (inOrder.size() == 1 ? " of light " : " of lights ") + MissingInput.listed(inOrder);
  }
}
