package lampwright.gear.stock;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Pack;
import lampwright.gear.Piece;
import lampwright.gear.Stand;

/** What a piece of gear is. */
public enum GearKind {
  HEAD,
  PACK,
  MODIFIER,
  BODY,
  LENS,
  GEL,
  NEUTRAL_DENSITY,
  STAND;

  /** A kind by its word. */
  public static final Form<GearKind> FORM = Forms.choice(values());

  /** The kind that a piece is of. */
  public static GearKind of(Piece piece) {
    return switch (piece) {
      case Head head -> HEAD;
      case Pack pack -> PACK;
      case Modifier modifier -> MODIFIER;
      case Body body -> BODY;
      case Lens lens -> LENS;
      case Gel gel -> GEL;
      case NeutralDensity filter -> NEUTRAL_DENSITY;
      case Stand stand -> STAND;
    };
  }

  /** The kind of a word; empty where it is none. */
  public static Optional<GearKind> find(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }

  /** As documents and tables write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** As a sentence begins with it. */
  String title() {
    String words = word().replace('_', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
