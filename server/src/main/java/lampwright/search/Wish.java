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
 * @param everyday whether the model of sentences knows what it is: words of the trade mean other
 *     things to everybody else, and figures mean nothing
 * @param times how often it was said: what is said twice counts twice
 */
record Wish(
    String spoken,
    Phrase literal,
    Map<Phrase, Float> alternatives,
    Map<Phrase, Float> guesses,
    boolean required,
    boolean mayBeMisspelt,
    boolean everyday,
    int times) {

  boolean isPlainWord() {
    return literal.isOneWord() && !required;
  }

  Wish again() {
    return new Wish(
        spoken, literal, alternatives, guesses, required, mayBeMisspelt, everyday, times + 1);
  }
}
