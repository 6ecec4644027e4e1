package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.building.FromHitMark;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.PowerFigures;
import lampwright.setup.packing.PackingList;
import lampwright.wording.Wording;

/** The other side of the field sheet: movement, changes, power, what to bring. */
record SheetFacts(
    SetupDocument setup,
    Figures figures,
    Map<LightId, Integer> numbers,
    Wording words,
    SheetRoom room) {

  /** "and 3 more on the page"; empty for none. */
  String more(int left) {
    return left > 0 ? words.count("sheet.more", left) : "";
  }

  SheetPage.Cut<SheetPage.Mark> movement() {
    SheetPlaces places = new SheetPlaces(setup, words);
    List<SheetPage.Mark> marks = new ArrayList<>();
    for (Subject subject : setup.subjects()) {
      String measures =
          Stream.of(
                  subject.height().map(h -> words.say("pages.setup.tall", words.length(h))),
                  subject.eyes().map(eyes -> words.say("sheet.movement.eyes", words.length(eyes))),
                  Optional.of(faces(subject)),
                  subject.speedMPerS().map(v -> words.fixed(v, 1) + " m/s"))
              .flatMap(Optional::stream)
              .collect(Collectors.joining(", "));
      marks.add(new SheetPage.Mark(subject.name(), places.whole(subject.place()), measures, true));
      for (Subject.Mark mark : subject.path()) {
        marks.add(
            new SheetPage.Mark(
                mark.name(),
                places.whole(mark.at()),
                SheetRoom.cut(mark.cue().orElse(""), room.cueLetters()),
                false));
      }
    }
    return cut(marks, room.cues());
  }

  private String faces(Subject subject) {
    return subject.facing().value() == 0
        ? words.say("sheet.movement.facesCamera")
        : words.say("sheet.movement.faces", SheetPlaces.bearing(FromHitMark.faced(subject, setup)));
  }

  /** What to change, of as many happenings as have room. */
  SheetPage.Cut<SheetPage.Change> changes(SheetView.Around around) {
    return cut(
        around.changes().stream()
            .map(
                change ->
                    new SheetPage.Change(
                        change.when(),
                        change.turns(),
                        change.turns().isEmpty()
                            ? change.then()
                            : SheetRoom.cut(change.then(), room.changeLetters())))
            .toList(),
        room.changes());
  }

  List<String> power() {
    PowerFigures power = figures.power();
    List<String> lines = new ArrayList<>();
    power
        .pace()
        .ifPresent(
            pace ->
                lines.add(
                    words.say(
                        "sheet.power.pace",
                        words.fixed(pace.betweenFrames().value(), 1),
                        name(pace.slowest()))));
    power
        .charge()
        .ifPresent(
            charge ->
                lines.add(
                    words.say(
                        "sheet.power.first", name(charge.first()), words.about(charge.frames()))));
    String each =
        power.lights().stream()
            .filter(light -> light.framesPerCharge().isPresent())
            .sorted(Comparator.comparing(light -> numbers.getOrDefault(light.light().id(), 0)))
            .map(
                light ->
                    numbers.getOrDefault(light.light().id(), 0)
                        + ": "
                        + words.about(light.framesPerCharge().orElse(0.0)))
            .collect(Collectors.joining(", "));
    if (!each.isEmpty()) {
      lines.add(words.say("sheet.power.each", each));
    }
    power
        .wish()
        .ifPresent(
            wish -> {
              wish.frames()
                  .ifPresent(frames -> lines.add(words.count("sheet.power.frames", frames)));
              wish.charges()
                  .ifPresent(charges -> lines.add(words.count("sheet.power.charges", charges)));
              wish.keepsPace()
                  .filter(keeps -> !keeps)
                  .ifPresent(_ -> lines.add(words.say("sheet.power.tooFast")));
            });
    return lines;
  }

  private String name(LightId id) {
    return words.light(numbers.getOrDefault(id, 0), figures.get(id).light());
  }

  SheetPage.Cut<SheetPage.Piece> packing() {
    return cut(
        PackingList.of(List.of(setup)).kinds().stream()
            .map(
                kind ->
                    new SheetPage.Piece(
                        kind.count(),
                        kind.name(),
                        kind.kg().map(kg -> words.notation().weight(kg)).orElse("")))
            .toList(),
        room.packing());
  }

  /** What all weighs, as far as that is known, and the ballast; perhaps empty. */
  String weight() {
    PackingList list = PackingList.of(List.of(setup));
    List<String> parts = new ArrayList<>();
    if (list.weight().kg() > 0) {
      parts.add(words.say("sheet.packing.total", words.notation().weight(list.weight().kg())));
    }
    if (list.weight().withoutWeight() > 0) {
      parts.add(words.count("sheet.packing.notWeighed", list.weight().withoutWeight()));
    }
    if (list.mostBallastKg() > 0) {
      parts.add(words.say("sheet.packing.ballast", words.notation().weight(list.mostBallastKg())));
    }
    return String.join(" ", parts);
  }

  private <T> SheetPage.Cut<T> cut(List<T> all, int most) {
    return new SheetPage.Cut<>(all.stream().limit(most).toList(), more(all.size() - most));
  }
}
