package lampwright;

/**
 * The settings cannot be worked with. The message is one line for the person who starts the server:
 * the setting, its value where that is no secret, what is wrong, and what to do.
 */
public final class SettingRefused extends RuntimeException {

  SettingRefused(String message) {
    super(message);
  }

  static SettingRefused of(Setting setting, String value, String bound) {
    return new SettingRefused("%s (%s) %s".formatted(setting.key(), value, bound));
  }
}
