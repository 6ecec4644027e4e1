package lampwright;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import lampwright.tasks.DemoStudio;

/** What a server does about the demo studio; its setting names one of these in small letters. */
public enum Demo {
  /** It brings all of it. */
  TRUE(Optional.of(DemoStudio.Part.WHOLE)),
  /** It brings a few setups and kits, at once. */
  FEW(Optional.of(DemoStudio.Part.FEW)),
  /** It brings none, and lets nobody of it in who is there from before. */
  FALSE(Optional.empty()),
  /** It takes away what is there. */
  REMOVED(Optional.empty());

  private final Optional<DemoStudio.Part> part;

  Demo(Optional<DemoStudio.Part> part) {
    this.part = part;
  }

  /** How much of it is brought. */
  public Optional<DemoStudio.Part> part() {
    return part;
  }

  /** Whether its members can come in. */
  public boolean isOpen() {
    return part.isPresent();
  }

  /** How the setting writes it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<Demo> find(String word) {
    return Arrays.stream(values()).filter(demo -> demo.word().equals(word)).findFirst();
  }
}
