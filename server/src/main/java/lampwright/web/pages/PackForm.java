package lampwright.web.pages;

import java.util.List;

/**
 * What is asked of a day. It is sent as an address, which is the day.
 *
 * @param setups in the order of the day
 * @param isAdapted whether the setups are made with the kits
 * @param asked what was looked for, to be added
 * @param times how long each sort of work takes, in minutes
 */
public record PackForm(
    String action,
    List<Chosen> setups,
    String asked,
    int hands,
    int mostHands,
    List<Kit> kits,
    boolean isAdapted,
    String day,
    String notBefore,
    boolean isCold,
    List<Time> times) {

  /** A time that was typed for the light of a setup. */
  public static final String AT = "at";

  /** The place of a setup that is taken out. */
  public static final String OUT = "out";

  /** The place of a setup that is built one sooner. */
  public static final String SOONER = "sooner";

  public static final String WORDS = "q";

  public PackForm {
    setups = List.copyOf(setups);
    kits = List.copyOf(kits);
    times = List.copyOf(times);
  }

  /**
   * A setup of the day.
   *
   * @param lights that it may wait for
   * @param time that was typed instead; may be empty
   */
  public record Chosen(
      String id, int number, String title, String path, List<Option> lights, String time) {
    public Chosen {
      lights = List.copyOf(lights);
    }
  }

  /** One of several. */
  public record Option(String key, String words, boolean isChosen) {}

  /** A kit that may come along. */
  public record Kit(String id, String name, boolean comes) {}

  /** How long one sort of work takes. */
  public record Time(String field, String label, String value, int usual) {}
}
