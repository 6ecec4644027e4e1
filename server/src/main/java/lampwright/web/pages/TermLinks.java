package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.learning.glossary.Term;
import lampwright.wording.Wording;

/**
 * The words of the pages' own phrases that lead to the glossary. A heading or a figure's small word
 * is linked where it is said, by its phrase, so that no figure has to carry its term about.
 */
public final class TermLinks {

  /** A phrase without parts, and the term that it speaks of. */
  record Named(String phrase, Term term) {}

  static final List<Named> NAMED =
      List.of(
          new Named("wording.key.ambient", Term.AMBIENT_OFFSET),
          new Named("wording.key.blur", Term.FREEZING),
          new Named("wording.key.greyFilter", Term.GREY_FILTER),
          new Named("wording.key.ratio", Term.LIGHTING_RATIO),
          new Named("wording.role.key", Term.KEY),
          new Named("wording.role.fill", Term.FILL),
          new Named("wording.role.back", Term.BACK),
          new Named("wording.role.rim", Term.RIM),
          new Named("wording.role.kicker", Term.KICKER),
          new Named("wording.role.hair", Term.HAIR),
          new Named("wording.role.background", Term.BACKGROUND),
          new Named("wording.role.accent", Term.ACCENT),
          new Named("pages.common.reading", Term.READING),
          new Named("pages.common.ruler", Term.STOP_RULER),
          new Named("pages.common.stops", Term.STOP),
          new Named("pages.common.power", Term.POWER_SETTING),
          new Named("pages.lights.fromExposure", Term.OFFSET),
          new Named("pages.lights.fromKey", Term.KEY),
          new Named("pages.lights.looks", Term.SOFTNESS),
          new Named("pages.lights.farSide", Term.FALL_OFF),
          new Named("pages.optics.circle", Term.CIRCLE_OF_CONFUSION),
          new Named("pages.optics.sharp", Term.DEPTH_OF_FIELD),
          new Named("pages.power.ready", Term.RECYCLE),
          new Named("pages.power.mains", Term.MAINS_LOAD),
          new Named("pages.colour.against", Term.MIRED),
          new Named("pages.colour.whiteBalance", Term.WHITE_BALANCE),
          new Named("pages.setup.build", Term.BUILD_ORDER),
          new Named("pages.signature.title", Term.SIGNATURE),
          new Named("signature.part.softness", Term.SOFTNESS),
          new Named("signature.part.ratio", Term.LIGHTING_RATIO),
          new Named("signature.part.ambient", Term.AMBIENT),
          new Named("signature.part.freezing", Term.FREEZING),
          new Named("signature.part.energy", Term.FLASH_ENERGY));

  private TermLinks() {}

  /** The term that some words of ours are about; empty where they are not in the glossary. */
  public static Optional<Term> find(Wording words, String said) {
    return NAMED.stream()
        .filter(named -> words.say(named.phrase()).equals(said))
        .map(Named::term)
        .findFirst();
  }
}
