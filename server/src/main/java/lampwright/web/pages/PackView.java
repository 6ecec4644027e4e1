package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lampwright.drawing.DaySheet;
import lampwright.place.LocationPermission;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.packing.BatteryPlan;
import lampwright.setup.packing.DayCautions;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.MainsNeed;
import lampwright.setup.packing.PackedKind;
import lampwright.setup.packing.PackingList;
import lampwright.tasks.DayPacking;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** Puts into words what a day takes. */
final class PackView {

  private final DayPacking.Packed packed;
  private final Wording words;
  private final List<SetupDocument> setups;

  PackView(DayPacking.Packed packed, Wording words) {
    this.packed = packed;
    this.words = words;
    this.setups = packed.setups().stream().map(DayPacking.OfDay::made).toList();
  }

  PackPage.Day day() {
    DaySheet sheet =
        new DaySheet(
            packed.plan(),
            setups,
            packed.setups().stream().map(DayPacking.OfDay::wanted).toList(),
            packed.sun(),
            packed.offset(),
            words.notation());
    return new PackPage.Day(
        lead(sheet),
        problems(),
        Arrays.stream(PackedKind.Section.values())
            .map(this::section)
            .filter(section -> !section.pieces().isEmpty())
            .toList(),
        weight(),
        batteries(),
        packed.batteries().onMains().stream().map(this::mains).toList(),
        unknown(),
        new DrawingView(
            sheet.svg(),
            words.say(
                packed.plan().isShortest() ? "packing.sheet.shortest" : "packing.sheet.nearly"),
            sheet.table()),
        sheet.sunInWords(),
        DayCautions.ALL.stream().map(words::say).toList());
  }

  /** "12 December 2025: begin at 14:05, all struck at 18:20." */
  private String lead(DaySheet sheet) {
    DayPlan plan = packed.plan();
    String day = new DayWords(words).day(packed.day());
    int minutes = plan.stages().getLast().to();
    return plan.at(0)
        .flatMap(
            from ->
                plan.at(minutes)
                    .map(to -> words.say("packing.lead", day, sheet.clock(from), sheet.clock(to))))
        .orElseGet(
            () ->
                words.say(
                    "packing.leadWithout",
                    words.say("packing.hoursMinutes", minutes / 60, minutes % 60)));
  }

  private List<String> problems() {
    List<String> problems = new ArrayList<>();
    for (DayPlan.Shortfall late : packed.plan().shortfalls()) {
      String title = setups.get(late.setup()).title();
      problems.add(
          late.enoughHands()
              .map(hands -> words.say("packing.late.hands", title, late.minutes(), hands))
              .orElseGet(() -> words.say("packing.late.sooner", title, late.minutes())));
    }
    packed.setups().stream()
        .filter(DayPacking.OfDay::isShort)
        .forEach(one -> problems.add(words.say("packing.short", one.made().title())));
    int lacking = packed.list().lacking().stream().mapToInt(PackedKind::lacking).sum();
    if (lacking > 0) {
      problems.add(words.count("packing.lacking", lacking));
    }
    packed.leaveIsOver().stream()
        .map(LocationPermission::text)
        .forEach(leave -> problems.add(words.say("packing.leaveIsOver", leave)));
    return problems;
  }

  private PackPage.Section section(PackedKind.Section section) {
    return new PackPage.Section(
        words.say("packing.section." + Wording.key(section)),
        packed.list().in(section).stream().map(this::piece).toList());
  }

  private PackPage.Piece piece(PackedKind kind) {
    return new PackPage.Piece(
        Wording.key(kind.section()) + " " + kind.name(),
        kind.count(),
        kind.name(),
        setups.size() == 1
            ? ""
            : kind.needs().stream()
                .map(need -> words.say("packing.need", need.count(), need.setup() + 1))
                .collect(Collectors.joining(", ")),
        kind.kg().map(kg -> words.notation().weight(kg)).orElse(""),
        kind.lacking() > 0 ? words.count("packing.lackingOne", kind.lacking()) : "");
  }

  private String weight() {
    PackingList list = packed.list();
    List<String> parts = new ArrayList<>();
    if (list.weight().kg() > 0) {
      parts.add(words.say("packing.weight", words.notation().weight(list.weight().kg())));
    }
    if (list.weight().withoutWeight() > 0) {
      parts.add(words.count("packing.notWeighed", list.weight().withoutWeight()));
    }
    if (list.mostBallastKg() > 0) {
      parts.add(words.say("packing.ballast", words.notation().weight(list.mostBallastKg())));
    }
    return String.join(" ", parts);
  }

  /** Heads of a kind that take one battery each stand in one line; who needs more has its own. */
  private List<PackPage.Battery> batteries() {
    List<PackPage.Battery> lines = new ArrayList<>();
    Map<String, List<BatteryPlan.Feed>> byName =
        packed.batteries().feeds().stream()
            .collect(
                Collectors.groupingBy(BatteryPlan.Feed::name, TreeMap::new, Collectors.toList()));
    byName.forEach(
        (name, feeds) -> {
          long plain = feeds.stream().filter(PackView::isPlain).count();
          if (plain > 0) {
            lines.add(
                new PackPage.Battery(
                    "charged " + name, name, words.count("packing.batteries", plain), ""));
          }
          feeds.stream()
              .filter(feed -> !isPlain(feed))
              .forEach(feed -> lines.add(battery(feed, feeds.size() > 1)));
        });
    return lines;
  }

  private static boolean isPlain(BatteryPlan.Feed feed) {
    return feed.batteries() == 1 && feed.lacking() == 0;
  }

  private PackPage.Battery battery(BatteryPlan.Feed feed, boolean isOneOfSeveral) {
    String name = isOneOfSeveral ? feed.name() + " " + feed.number() : feed.name();
    String lacks =
        feed.lacking() > 0 ? ", " + words.count("packing.batteryLacking", feed.lacking()) : "";
    return new PackPage.Battery(
        "charged " + name,
        name,
        words.count("packing.batteries", feed.batteries()) + lacks,
        feed.changes().stream().map(this::change).collect(Collectors.joining(" ")));
  }

  private String change(BatteryPlan.Change change) {
    String of = setups.size() == 1 ? "" : words.say("packing.ofSetup", change.setup() + 1);
    return change.afterFrame() == 0
        ? words.say("packing.change.before", of).strip()
        : words.say("packing.change.after", change.afterFrame(), of).strip();
  }

  private String mains(MainsNeed need) {
    String load =
        words.say(
            "packing.mains",
            setups.get(need.setup()).title(),
            words.fixed(need.figures().total().value(), 0),
            words.fixed(need.figures().current().value(), 1),
            words.fixed(need.figures().generator().value(), 0));
    return need.circuits()
        .map(circuits -> load + " " + words.count("packing.circuits", circuits))
        .orElse(load);
  }

  private List<String> unknown() {
    List<String> unknown = new ArrayList<>();
    if (!packed.batteries().unknown().isEmpty()) {
      unknown.add(
          words.say(
              "packing.unknown.batteries",
              packed.batteries().unknown().stream()
                  .map(of -> light(of.setup(), of.light()))
                  .collect(Collectors.joining(", "))));
    }
    if (!packed.list().windUnknown().isEmpty()) {
      unknown.add(
          words.say(
              "packing.unknown.wind",
              packed.list().windUnknown().stream()
                  .map(i -> setups.get(i).title())
                  .collect(Collectors.joining("; "))));
    }
    Optional.of(packed.setups())
        .filter(all -> all.stream().allMatch(one -> one.wanted().isEmpty()))
        .ifPresent(_ -> unknown.add(words.say("packing.unknown.light")));
    return unknown;
  }

  private String light(int setup, LightId id) {
    SetupDocument document = setups.get(setup);
    return new LightNames(document, words).in("“" + id + "”");
  }
}
