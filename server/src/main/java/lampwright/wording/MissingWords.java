package lampwright.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/** Says in plain words what a setup would have to say for the figures that are absent. */
public final class MissingWords {

  private static final Pattern IN_LIST = Pattern.compile("/(lights|subjects)/(\\d+)(/.*)?");
  private static final Pattern UNIT =
      Pattern.compile("_(m|m2|m_per_s|mm|ms|s|deg|k|ws|stops|kg|w|va|v|a)$");
  private static final String LIGHTS = "lights";

  private final SetupDocument setup;
  private final Wording words;

  public MissingWords(SetupDocument setup, Wording words) {
    this.setup = setup;
    this.words = words;
  }

  /** Everything that is missing, by what it is about, in the order of the pointers. */
  public List<MissingInput> of(List<String> pointers) {
    Map<String, Map<String, Set<String>>> groups = new LinkedHashMap<>();
    for (String pointer : pointers) {
      Matcher inList = IN_LIST.matcher(pointer);
      boolean listed = inList.matches();
      String plain =
          listed
              ? "/" + inList.group(1) + (inList.group(3) == null ? "" : inList.group(3))
              : pointer;
      Set<String> members =
          groups
              .computeIfAbsent(plain.split("/", -1)[1], group -> new LinkedHashMap<>())
              .computeIfAbsent(input(plain), input -> new LinkedHashSet<>());
      if (listed) {
        members.add(member(inList.group(1), Integer.parseInt(inList.group(2))));
      }
    }
    List<MissingInput> missing = new ArrayList<>();
    groups.forEach((group, inputs) -> missing.add(missing(group, inputs)));
    return missing;
  }

  private MissingInput missing(String group, Map<String, Set<String>> inputs) {
    List<String> said = new ArrayList<>();
    inputs.forEach((input, members) -> said.add(whose(input, group, members)));
    String key = "wording.missing.group." + group;
    return new MissingInput(
        has(key) ? words.say(key) : Wording.capital(group.replace('_', ' ')), said, needs(said));
  }

  /**
   * What is missing among some of the pointers, as one sentence; empty where nothing is.
   *
   * @param wanted regular expressions for the pointers that count
   */
  public String sentence(List<String> pointers, String... wanted) {
    List<String> inputs =
        of(pointers.stream().filter(pointer -> matches(pointer, wanted)).toList()).stream()
            .flatMap(missing -> missing.inputs().stream())
            .toList();
    return inputs.isEmpty() ? "" : needs(inputs);
  }

  private String needs(List<String> inputs) {
    return words.say("wording.missing.needs", words.listed(inputs));
  }

  private static boolean matches(String pointer, String... wanted) {
    for (String expression : wanted) {
      if (pointer.matches(expression)) {
        return true;
      }
    }
    return false;
  }

  private String input(String plain) {
    String key = "wording.missing.input" + plain.replace('/', '.');
    if (has(key)) {
      return words.say(key);
    }
    String name = plain.substring(plain.lastIndexOf('/') + 1);
    return words.say(
        "wording.missing.other", UNIT.matcher(name).replaceFirst("").replace('_', ' '));
  }

  private boolean has(String key) {
    return words.notation().phrases().keys().contains(key);
  }

  private String member(String list, int index) {
    if (list.equals(LIGHTS)) {
      return index < setup.lights().size()
          ? String.valueOf(number(setup.lights().get(index)))
          : String.valueOf(index + 1);
    }
    return index < setup.subjects().size()
        ? setup.subjects().get(index).name()
        : words.say("wording.missing.subject", index + 1);
  }

  private int number(Light light) {
    return setup.numbersInBuildOrder().getOrDefault(light.id(), 0);
  }

  private String whose(String input, String group, Set<String> members) {
    if (members.isEmpty()) {
      return input;
    }
    if (!group.equals(LIGHTS)) {
      return words.say("wording.missing.of", input, words.listed(List.copyOf(members)));
    }
    List<String> inOrder =
        members.stream().map(Integer::valueOf).sorted().map(String::valueOf).toList();
    return words.count("wording.missing.ofLights", inOrder.size(), input, words.listed(inOrder));
  }
}
