package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.ArrayList;
import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;

/**
 * How many lights there are for what. Heads that fire together from one place are one light.
 *
 * @param byRole the roles that have a light, in the roles' own order
 */
public record LightCounts(List<OfRole> byRole) implements Part {

  /**
   * The lights of one role.
   *
   * @param count at least 1
   */
  public record OfRole(Role role, int count) {

    private static final Field<OfRole, Role> ROLE =
        required("role", Forms.choice(Role.values()), OfRole::role, "What they are for.");
    private static final Field<OfRole, Integer> COUNT =
        required("count", Forms.count(1, 1_000), OfRole::count, "How many.");

    static final ObjectForm<OfRole> FORM =
        ObjectForm.of(
            "role_count",
            "The lights of one role.",
            values -> new OfRole(values.get(ROLE), values.get(COUNT)),
            List.of(ROLE, COUNT));
  }

  private static final Field<LightCounts, List<OfRole>> BY_ROLE =
      required(
          "by_role",
          Forms.list(OfRole.FORM, 1, Role.values().length),
          LightCounts::byRole,
          "The roles that have a light.");

  static final ObjectForm<LightCounts> FORM =
      ObjectForm.of(
          "light_counts",
          "How many lights there are for what.",
          values -> new LightCounts(values.get(BY_ROLE)),
          List.of(BY_ROLE));

  public LightCounts {
    byRole = List.copyOf(byRole);
  }

  static LightCounts of(SetupDocument setup) {
    List<OfRole> counts = new ArrayList<>();
    for (Role role : Role.values()) {
      int count = (int) setup.lights().stream().filter(light -> light.role() == role).count();
      if (count > 0) {
        counts.add(new OfRole(role, count));
      }
    }
    return new LightCounts(counts);
  }

  /** All lights together. */
  public int total() {
    return byRole.stream().mapToInt(OfRole::count).sum();
  }

  /** Those of one role, 0 where there is none. */
  public int of(Role role) {
    return byRole.stream().filter(of -> of.role() == role).mapToInt(OfRole::count).sum();
  }

  @Override
  public PartName part() {
    return PartName.LIGHTS;
  }

  /** "3 lights". */
  @Override
  public Said words() {
    return Said.counted("signature.lights", total());
  }

  /** "1 key, 2 rim". */
  public Said roles() {
    return Said.of(
        "signature.lights.roles",
        new Filling.Series(
            byRole.stream().map(of -> of(of.role(), of.count()).asFilling()).toList()));
  }

  /** "2 rim". */
  static Said of(Role role, int count) {
    return Said.counted("signature.role." + Numbers.key(role), count);
  }

  @Override
  public Said sentence() {
    return Said.of("signature.lights.sentence", words().asFilling(), roles().asFilling());
  }
}
