package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Output;
import lampwright.gear.Pack;
import lampwright.gear.Piece;
import lampwright.gear.Stand;
import lampwright.language.Notation;

/** What is known of a piece of gear, in a line: "400 W·s · f/8 at 2.0 m, ISO 100, metered · …". */
record PieceWords(Notation notation) {

  String facts(Piece piece) {
    List<String> facts =
        switch (piece) {
          case Head head -> head(head);
          case Pack pack -> pack(pack);
          case Modifier modifier -> modifier(modifier);
          case Body body -> body(body);
          case Lens lens -> lens(lens);
          case Gel gel ->
              List.of(
                  say("shift", signed(gel.shift().value())),
                  say("takes", notation.size(gel.loss().value())));
          case NeutralDensity filter -> List.of(say("takes", notation.size(filter.loss().value())));
          case Stand stand -> stand(stand);
        };
    return String.join(" · ", facts);
  }

  /** What a head gives, and who says so. */
  String output(Output output) {
    return switch (output) {
      case Output.ByGuideNumber(var guideNumber) ->
          say("guide_number", notation.length(guideNumber.metresAtIso100()));
      case Output.ByReading reading ->
          say(
              "reading",
              notation.written(reading.fNumber().tenthsText()),
              notation.length(reading.distance()),
              reading.iso());
    };
  }

  private List<String> head(Head head) {
    List<String> facts = new ArrayList<>();
    facts.add(say("energy", notation.rounded(head.energy().value(), 0)));
    facts.add(output(head.output()));
    facts.add(
        say(
            "range",
            head.scale().show(Stops.ZERO, head.energy()),
            head.scale().show(head.range(), head.energy())));
    head.recycle().ifPresent(time -> facts.add(recycle(time.value())));
    if (head.feed() == Head.Feed.MAINS) {
      facts.add(say("mains"));
    }
    head.flashesPerCharge().ifPresent(flashes -> facts.add(say("charges", flashes)));
    head.pack().ifPresent(pack -> facts.add(say("pack", pack)));
    weight(head.weightKg(), facts);
    return facts;
  }

  private List<String> pack(Pack pack) {
    List<String> facts = new ArrayList<>();
    facts.add(say("energy", notation.rounded(pack.energy().value(), 0)));
    facts.add(notation.count("studio.piece.outlets", pack.outlets()));
    pack.recycle().ifPresent(time -> facts.add(recycle(time.value())));
    pack.flashesPerCharge().ifPresent(flashes -> facts.add(say("charges", flashes)));
    weight(pack.weightKg(), facts);
    return facts;
  }

  private List<String> modifier(Modifier modifier) {
    List<String> facts = new ArrayList<>();
    face(modifier.face()).ifPresent(facts::add);
    facts.add(
        modifier
            .loss()
            .map(
                loss ->
                    say("loss", notation.size(loss.value()), notation.length(modifier.lossAt())))
            .orElseGet(() -> say("loss_unknown")));
    modifier
        .spread()
        .ifPresent(angle -> facts.add(say("spread", notation.rounded(angle.value(), 0) + "°")));
    if (modifier.grid()) {
      facts.add(say("grid"));
    }
    modifier.mount().ifPresent(mount -> facts.add(say("mount", mount)));
    weight(modifier.weightKg(), facts);
    return facts;
  }

  private Optional<String> face(EmittingFace face) {
    return switch (face) {
      case EmittingFace.PointSource _ -> Optional.empty();
      case EmittingFace.Disc(var radius) ->
          Optional.of(say("disc", notation.tape(2 * radius.value())));
      case EmittingFace.Octagon(var acrossFlats) ->
          Optional.of(say("octagon", notation.tape(acrossFlats)));
      case EmittingFace.Rectangle(var width, var height) ->
          Optional.of(say("rectangle", notation.tape(width), notation.tape(height)));
    };
  }

  private List<String> body(Body body) {
    List<String> facts = new ArrayList<>();
    facts.add(
        say(
            "format",
            notation.rounded(body.width().value(), 1),
            notation.rounded(body.height().value(), 1)));
    facts.add(say("sync", body.sync()));
    facts.add(say("iso", body.lowestIso(), body.highestIso()));
    weight(body.weightKg(), facts);
    return facts;
  }

  private List<String> lens(Lens lens) {
    List<String> facts = new ArrayList<>();
    facts.add(
        say(
            "lens",
            notation.rounded(lens.focalLength().value(), 0),
            notation.written(lens.widest().markText(MarkedScale.APERTURE_THIRD)),
            notation.written(lens.smallest().markText(MarkedScale.APERTURE_THIRD))));
    weight(lens.weightKg(), facts);
    return facts;
  }

  private List<String> stand(Stand stand) {
    List<String> facts = new ArrayList<>();
    facts.add(say("stand", notation.length(stand.highest())));
    if (stand.ballastKg() > 0) {
      facts.add(say("ballast", notation.rounded(stand.ballastKg(), 1)));
    }
    weight(stand.weightKg(), facts);
    return facts;
  }

  private String recycle(double seconds) {
    return say("recycle", notation.fixed(seconds, 1));
  }

  private void weight(Optional<Double> weightKg, List<String> facts) {
    weightKg.ifPresent(kilograms -> facts.add(say("weight", notation.rounded(kilograms, 1))));
  }

  private String signed(double mired) {
    return (mired > 0 ? "+" : "") + notation.rounded(mired, 0);
  }

  private String say(String key, Object... parts) {
    return notation.say("studio.piece." + key, parts);
  }
}
