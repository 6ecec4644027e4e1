package lampwright.learning.trail;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.setup.SetupId;

/**
 * A course of stages, one after the other.
 *
 * @param about what one can do at its end, and for whom it is
 * @param clearsFor what who has walked it may do alone; absent where it clears for nothing
 */
public record Trail(
    String name, Optional<String> about, List<Stage> stages, Optional<String> clearsFor) {

  private static final int MOST_STAGES = 60;

  public Trail {
    stages = List.copyOf(stages);
  }

  private static final Field<Trail, String> NAME =
      required("name", Forms.text(120), Trail::name, "What it is called.");
  private static final Field<Trail, Optional<String>> ABOUT =
      optional(
          "about", Forms.text(2_000), Trail::about, "What one can do at its end, and for whom.");
  private static final Field<Trail, List<Stage>> STAGES =
      required(
          "stages",
          Forms.list(Stage.FORM, 1, MOST_STAGES),
          Trail::stages,
          "Its stages, in the order in which they are walked.");
  private static final Field<Trail, Optional<String>> CLEARS_FOR =
      optional(
          "clears_for",
          Forms.text(400),
          Trail::clearsFor,
          "What who has walked it may do alone, such as \"build two heads indoors\". It needs a"
              + " build that is signed off.");

  public static final ObjectForm<Trail> FORM =
      ObjectForm.<Trail>of(
              "trail",
              "A course of stages. Each stage's id is its own; what it clears for needs a stage"
                  + " that is built and signed off.",
              values ->
                  new Trail(
                      values.get(NAME),
                      values.get(ABOUT),
                      values.get(STAGES),
                      values.get(CLEARS_FOR)),
              List.of(NAME, ABOUT, STAGES, CLEARS_FOR))
          .checked(Trail::check);

  private static void check(Trail trail, Pointer at, Problems problems) {
    Set<StageId> ids = new HashSet<>();
    for (int i = 0; i < trail.stages.size(); i++) {
      StageId id = trail.stages.get(i).id();
      if (!ids.add(id)) {
        problems.add(
            at.field("stages").item(i).field("id"),
            "Id (\"" + id + "\") is another stage's already. Maybe \"" + id + "-2\"?");
      }
    }
    if (trail.clearsFor.isPresent()
        && trail.stages.stream().noneMatch(stage -> stage instanceof Stage.ToBuild)) {
      problems.add(
          at.field("clears_for"),
          "Nobody is cleared by reading alone: add a stage that is built, or leave it out.");
    }
  }

  /** The stage of an id; empty where there is none. */
  public Optional<Stage> find(StageId id) {
    return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
  }

  /** The setups that it leads to. */
  public Set<SetupId> setups() {
    Set<SetupId> setups = new LinkedHashSet<>();
    for (Stage stage : stages) {
      switch (stage) {
        case Stage.ToStudy study -> setups.add(study.setup());
        case Stage.ToBuild build -> setups.add(build.setup());
        case Stage.ToRead _, Stage.ToAnswer _ -> {}
      }
    }
    return setups;
  }
}
