package lampwright.setup.comparing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Pointer;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import org.jspecify.annotations.Nullable;

/**
 * Compares two setups: every difference once, in the order of the document. Lights are matched by
 * id; the parts of camera, exposure, ambient, occasion and plan are told one by one where both
 * documents have them, as are subjects where there are as many; everything else is told whole.
 */
public final class Comparison {

  private static final Map<String, About.Kind> PARTS =
      Map.of(
          "exposure", About.Kind.EXPOSURE,
          "camera", About.Kind.CAMERA,
          "ambient", About.Kind.AMBIENT,
          "subjects", About.Kind.SUBJECT,
          "surfaces", About.Kind.SURFACE,
          "occasion", About.Kind.OCCASION,
          "plan", About.Kind.PLAN,
          "build_order", About.Kind.BUILD_ORDER,
          "lights", About.Kind.LIGHTS);

  private final SetupDocument from;
  private final SetupDocument to;
  private final List<Change> changes = new ArrayList<>();

  private Comparison(SetupDocument from, SetupDocument to) {
    this.from = from;
    this.to = to;
  }

  /** The changes that lead from one document to the other; empty where they say the same. */
  public static List<Change> of(SetupDocument from, SetupDocument to) {
    Comparison comparison = new Comparison(from, to);
    comparison.compare();
    return List.copyOf(comparison.changes);
  }

  private void compare() {
    Map<String, Object> before = SetupDocument.FORM.writeObject(from);
    Map<String, Object> after = SetupDocument.FORM.writeObject(to);
    for (String field : SetupDocument.FORM.fieldNames()) {
      About about = About.part(PARTS.getOrDefault(field, About.Kind.TEXT));
      Pointer at = Pointer.root().field(field);
      if (field.equals("lights")) {
        compareLights();
      } else if (before.get(field) instanceof Map<?, ?> was
          && after.get(field) instanceof Map<?, ?> is) {
        compareFields(about, at, was, is);
      } else if (field.equals("subjects")
          && before.get(field) instanceof List<?> was
          && after.get(field) instanceof List<?> is
          && was.size() == is.size()) {
        for (int i = 0; i < was.size(); i++) {
          compareFields(about, at.item(i), (Map<?, ?>) was.get(i), (Map<?, ?>) is.get(i));
        }
      } else {
        add(about, at, field, before.get(field), after.get(field));
      }
    }
  }

  private void compareFields(About about, Pointer at, Map<?, ?> before, Map<?, ?> after) {
    Set<Object> fields = new LinkedHashSet<>(before.keySet());
    fields.addAll(after.keySet());
    for (Object field : fields) {
      String name = field.toString();
      add(about, at.field(name), name, before.get(field), after.get(field));
    }
  }

  private void add(
      About about, Pointer at, String field, @Nullable Object before, @Nullable Object after) {
    Optional<Object> was = Optional.ofNullable(before);
    Optional<Object> is = Optional.ofNullable(after);
    if (!was.equals(is)) {
      changes.add(
          new Change(
              at.text(),
              about,
              was,
              is,
              Phrases.unit(field),
              Sentences.of(about.kind(), field, was, is, from, to)));
    }
  }

  private void compareLights() {
    List<Object> order = new ArrayList<>();
    for (int i = 0; i < from.lights().size(); i++) {
      Light was = from.lights().get(i);
      Pointer at = Pointer.root().field("lights").item(i);
      Optional<Light> is = find(to, was);
      if (is.isPresent()) {
        order.add(was.id().text());
        changes.addAll(new LightChanges(from, to, was, is.get(), at).list());
      } else {
        changes.add(
            whole(at, was, Optional.of(plain(was)), Optional.empty(), "comparing.takenOut"));
      }
    }
    for (int i = 0; i < to.lights().size(); i++) {
      Light is = to.lights().get(i);
      if (find(from, is).isEmpty()) {
        order.add(is.id().text());
        Pointer at = Pointer.root().field("lights").item(i);
        changes.add(whole(at, is, Optional.empty(), Optional.of(plain(is)), "comparing.putIn"));
      }
    }
    List<Object> wanted = new ArrayList<>();
    to.lights().forEach(light -> wanted.add(light.id().text()));
    if (!order.equals(wanted)) {
      changes.add(
          new Change(
              "/lights",
              About.part(About.Kind.LIGHTS),
              Optional.of(order),
              Optional.of(wanted),
              "",
              Said.of(
                  "comparing.order", Phrases.value(wanted, "").orElseGet(() -> Filling.text("")))));
    }
  }

  private Change whole(
      Pointer at, Light light, Optional<Object> before, Optional<Object> after, String key) {
    return new Change(
        at.text(),
        About.light(light),
        before,
        after,
        "",
        Said.of(key, Phrases.name(light, from, to)));
  }

  static Map<String, Object> plain(Light light) {
    return Light.FORM.writeObject(light);
  }

  private static Optional<Light> find(SetupDocument in, Light like) {
    return in.lights().stream().filter(light -> light.id().equals(like.id())).findFirst();
  }
}
