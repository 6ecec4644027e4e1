package lampwright.web.api;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.Trail;
import lampwright.learning.trail.Way;
import lampwright.tasks.KeptTrail;
import lampwright.tasks.LearningReporting;
import lampwright.tasks.SigningOff;
import lampwright.tasks.WalkedTrail;

/** Trails, ways and builds as the API tells them. */
final class TrailJson {

  private TrailJson() {}

  /** Part of the trails. */
  record All(List<Item> items, Optional<String> next) {}

  /** A trail in a list. */
  record Item(String id, int revision, String name, Instant changedAt, String changedBy) {
    static Item of(KeptTrail trail) {
      return new Item(
          trail.id().text(),
          trail.revision(),
          trail.document().name(),
          trail.changedAt(),
          trail.changedBy());
    }
  }

  /** A trail whole. */
  record One(
      String id, int revision, Instant changedAt, String changedBy, Map<String, Object> document) {
    static One of(KeptTrail trail) {
      return new One(
          trail.id().text(),
          trail.revision(),
          trail.changedAt(),
          trail.changedBy(),
          Trail.FORM.writeObject(trail.document()));
    }
  }

  /**
   * How far somebody is.
   *
   * @param clearedFor what they may do alone; absent until every stage is done
   */
  record WayJson(
      String trail,
      String name,
      int done,
      int stages,
      List<StepJson> steps,
      Optional<ClearedJson> clearedFor) {
    static WayJson of(WalkedTrail walked) {
      Way way = walked.way();
      return new WayJson(
          walked.trail().id().text(),
          walked.trail().document().name(),
          way.done(),
          way.steps().size(),
          way.steps().stream().map(step -> StepJson.of(step, walked)).toList(),
          way.clearance()
              .map(
                  cleared ->
                      new ClearedJson(
                          cleared.what(),
                          walked.names().getOrDefault(cleared.by(), ""),
                          cleared.since())));
    }
  }

  /** What somebody may do alone, who said so, and when. */
  record ClearedJson(String what, String by, Instant since) {}

  /**
   * One stage and how it stands.
   *
   * @param right how often each kind was answered rightly, as far as it counts
   */
  record StepJson(
      String stage,
      String title,
      String state,
      Map<String, Integer> right,
      Optional<JudgementJson> judgement) {
    static StepJson of(Way.Step step, WalkedTrail walked) {
      Map<String, Integer> right = new TreeMap<>();
      step.right().forEach((kind, count) -> right.put(kind.word(), count));
      return new StepJson(
          step.stage().id().text(),
          step.stage().title(),
          step.state().name().toLowerCase(Locale.ROOT),
          right,
          step.last()
              .flatMap(HandedIn::judgement)
              .map(one -> JudgementJson.of(one, walked.names().getOrDefault(one.by(), ""))));
    }
  }

  /** What somebody said of a build. */
  record JudgementJson(boolean signedOff, String by, Instant at, String words) {
    static JudgementJson of(HandedIn.Judgement judgement, String by) {
      return new JudgementJson(judgement.isSignedOff(), by, judgement.at(), judgement.words());
    }
  }

  /** Builds that wait. */
  record Builds(List<BuildJson> items) {}

  /** A build that was handed in. */
  record BuildJson(
      String id,
      String trail,
      String stage,
      String setup,
      String take,
      String by,
      Instant handedInAt,
      Optional<Boolean> signedOff,
      Optional<String> words) {
    static BuildJson of(SigningOff.Build build) {
      HandedIn handedIn = build.handedIn();
      return new BuildJson(
          build.id(),
          build.trail().id().text(),
          handedIn.stage().text(),
          build.setup().id().text(),
          build.take().text(),
          build.by(),
          handedIn.at(),
          handedIn.judgement().map(HandedIn.Judgement::isSignedOff),
          handedIn.judgement().map(HandedIn.Judgement::words));
    }
  }

  /** A build with what was metered. */
  record ShownBuild(BuildJson build, TakeJson.One take) {
    static ShownBuild of(SigningOff.Shown shown) {
      return new ShownBuild(BuildJson.of(shown.build()), TakeJson.One.of(shown.take()));
    }
  }

  /** Who can build what, and where people slip. */
  record Report(List<MemberJson> members, List<KindJson> kinds, List<SlipJson> slips) {
    static Report of(LearningReporting.Report report) {
      return new Report(
          report.members().stream().map(MemberJson::of).toList(),
          report.kinds().stream()
              .map(kind -> new KindJson(kind.kind().word(), kind.answered(), kind.right()))
              .toList(),
          report.slips().stream()
              .map(
                  slip ->
                      new SlipJson(slip.kind().word(), InEnglish.slip(slip.key()), slip.times()))
              .toList());
    }
  }

  /** One member. */
  record MemberJson(String name, String role, int answered, int right, List<WayJson> trails) {
    static MemberJson of(LearningReporting.OfMember member) {
      return new MemberJson(
          member.member().person().name(),
          member.member().role().word(),
          member.answered(),
          member.right(),
          member.trails().stream().map(WayJson::of).toList());
    }
  }

  /** One kind of drill, over everybody. */
  record KindJson(String kind, int answered, int right) {}

  /** What was likely wrong, and how often. */
  record SlipJson(String kind, String slip, int times) {}
}
