package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class MarkedTextTest {

  @Test
  void thePiecesAreTheTextInTurnPlainAndMarked() {
    MarkedText text = new MarkedText("intent", "Alone at dusk.", List.of(mark(9, 13), mark(0, 5)));
    assertEquals(
        List.of(
            new MarkedText.Piece("Alone", true),
            new MarkedText.Piece(" at ", false),
            new MarkedText.Piece("dusk", true),
            new MarkedText.Piece(".", false)),
        text.pieces());
  }

  @Test
  void marksThatTouchAreOne() {
    MarkedText text = new MarkedText("notes", "f/5.6 is set", List.of(mark(0, 5), mark(2, 5)));
    assertEquals(List.of(mark(0, 5)), text.marks());
  }

  @Test
  void aMarkBeyondTheTextIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new MarkedText("notes", "short", List.of(mark(3, 9))));
  }

  @Test
  void aPassageIsAPieceOfTheTextCutBetweenWordsAroundTheFirstMark() {
    String written =
        "The tide was out and the mole lay bare, so we carried the lamp over the stones.";
    MarkedText passage =
        new MarkedText("notes", written, List.of(mark(25, 29), mark(58, 62))).passage(30);
    assertEquals("…out and the mole lay bare, so…", passage.text());
    assertEquals(
        List.of("mole"), marked(passage), "What lies outside of the passage is not marked in it");
  }

  @Test
  void everyPassageOfAnyTextIsNoLongerThanAskedAndMarksTheSameWords() {
    Random random = new Random(7);
    String letters = "ab c déf, \uD83C\uDF0A gh. i";
    for (int round = 0; round < 2_000; round++) {
      StringBuilder written = new StringBuilder();
      for (int i = random.nextInt(30); i >= 0; i--) {
        written.append(letters);
      }
      String text = written.toString();
      int at = text.indexOf("gh", random.nextInt(text.length()));
      if (at >= 0) {
        MarkedText passage = new MarkedText("notes", text, List.of(mark(at, at + 2))).passage(40);
        String bare = passage.text().replace("…", "");
        assertTrue(text.contains(bare), passage.text());
        assertTrue(bare.length() <= 40, passage.text());
        assertEquals(List.of("gh"), marked(passage), passage.text());
      }
    }
  }

  private static List<String> marked(MarkedText text) {
    List<String> words = new ArrayList<>();
    for (MarkedText.Piece piece : text.pieces()) {
      if (piece.marked()) {
        words.add(piece.text());
      }
    }
    assertEquals(
        text.text(),
        text.pieces().stream().map(MarkedText.Piece::text).collect(Collectors.joining()));
    return words;
  }

  private static MarkedText.Mark mark(int from, int to) {
    return new MarkedText.Mark(from, to);
  }
}
