package lampwright.search;

import java.util.Map;

/**
 * One thing that a question asks for: a word, a known phrase, or a phrase in quotes.
 *
 * @param spoken as it was typed
 * @param literal as the index keeps it
 * @param alternatives what may stand for it, with weights below 1
 * @param guesses what may have been meant where nobody in the studio uses it as typed
 * @param required whether a hit must have it, as with quotes
 * @param mayBeMisspelt whether one slip of the pen is forgiven where nobody in the studio uses it
 */
record Wish(
    String spoken,
    Phrase literal,
    Map<Phrase, Float> alternatives,
    Map<Phrase, Float> guesses,
    boolean required,
    boolean mayBeMisspelt) {}
