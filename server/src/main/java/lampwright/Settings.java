package lampwright;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.store.PicturePlace;
import lampwright.tasks.Passwords;
import lampwright.web.http.CertificateFiles;

/**
 * What the person who starts the server can choose; {@link Setting} lists it.
 *
 * @param port 0 to 65535; 0 takes any free port
 * @param host the name or address to listen on
 * @param data the folder of everything that the server keeps
 * @param pictures where pictures lie, which several servers on one database share
 * @param sealingKey the file of the key that second factors are sealed under; empty for the one in
 *     the data folder
 * @param byMeaning whether searches go by what texts mean too
 * @param database a PostgreSQL to work in; empty for the server's own
 * @param databaseOwner who owns the tables in it, where that is another user
 * @param replica a streaming replica of that database to read from
 * @param demo what is done about the demo studio
 * @param demoPassword the password of its members
 * @param firstOwner who owns a server that has nobody in it
 * @param publicUrl the address that visitors type, where it is not host and port
 * @param certificate what the server speaks TLS with; empty where it speaks plain HTTP
 * @param running how it holds up and is watched
 */
public record Settings(
    int port,
    String host,
    Path data,
    PicturePlace pictures,
    Optional<Path> sealingKey,
    boolean byMeaning,
    Optional<String> database,
    Optional<String> databaseOwner,
    Optional<String> replica,
    Demo demo,
    String demoPassword,
    Optional<Owner> firstOwner,
    Optional<URI> publicUrl,
    Optional<CertificateFiles> certificate,
    Running running) {

  private static final int HIGHEST_PORT = 65_535;

  /** The first owner as the settings name them. */
  public record Owner(String name, String email, String password) {

    /** No record's text may reach a log with a password in it. */
    @Override
    public String toString() {
      return "Owner[" + name + "]";
    }
  }

  /** No record's text may reach a log with a password in it. */
  @Override
  public String toString() {
    return "Settings[" + host + ":" + port + ", " + data + "]";
  }

  /**
   * Reads them from an environment, in which other programs' keys do not matter.
   *
   * @throws SettingRefused when a key of ours is unknown or a value cannot be worked with
   */
  public static Settings read(Map<String, String> environment) {
    new TreeMap<>(environment).keySet().forEach(Settings::mustBeKnown);
    Settings settings =
        new Settings(
            port(value(environment, Setting.PORT)),
            value(environment, Setting.HOST),
            folder(Setting.DATA, value(environment, Setting.DATA)),
            pictures(environment),
            text(environment, Setting.SEALING_KEY).map(value -> file(Setting.SEALING_KEY, value)),
            yesOrNo(Setting.MEANING, value(environment, Setting.MEANING)),
            text(environment, Setting.DATABASE_URL),
            text(environment, Setting.DATABASE_OWNER_URL),
            text(environment, Setting.REPLICA_URL),
            demo(value(environment, Setting.DEMO)),
            value(environment, Setting.DEMO_PASSWORD),
            owner(environment),
            text(environment, Setting.PUBLIC_URL).map(Settings::address),
            certificate(environment),
            Running.read(environment));
    settings.mustFitTogether();
    return settings;
  }

  static String value(Map<String, String> environment, Setting setting) {
    String value = environment.getOrDefault(setting.key(), "").strip();
    return value.isEmpty() ? setting.standard() : value;
  }

  static Optional<String> text(Map<String, String> environment, Setting setting) {
    return Optional.of(value(environment, setting)).filter(value -> !value.isEmpty());
  }

  private static void mustBeKnown(String key) {
    if (!key.startsWith(Setting.PREFIX) || Setting.find(key).isPresent()) {
      return;
    }
    String nearest =
        Arrays.stream(Setting.values())
            .map(Setting::key)
            .min(Comparator.comparingInt(known -> distance(known, key)))
            .orElseThrow();
    throw new SettingRefused(
        "%s is no setting. Maybe %s? Take it away, or correct its name.".formatted(key, nearest));
  }

  /** How many letters to change, add or take away to make one word of the other (Levenshtein). */
  private static int distance(String one, String other) {
    int[] row = new int[other.length() + 1];
    Arrays.setAll(row, i -> i);
    for (int i = 1; i <= one.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int changed = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[other.length()];
  }

  private static int port(String value) {
    try {
      int port = Integer.parseInt(value);
      if (port >= 0 && port <= HIGHEST_PORT) {
        return port;
      }
    } catch (NumberFormatException e) {
      // Said below, for both.
    }
    throw SettingRefused.of(
        Setting.PORT, value, "must be a whole number from 0 to 65535. Maybe 8080?");
  }

  private static PicturePlace pictures(Map<String, String> environment) {
    Path data = folder(Setting.DATA, value(environment, Setting.DATA));
    Optional<String> wanted = text(environment, Setting.PICTURES);
    if (wanted.filter(value -> value.startsWith("s3:")).isPresent()) {
      return bucket(environment, wanted.get(), data.resolve("arriving"));
    }
    for (Setting ofBuckets : List.of(Setting.S3_ENDPOINT, Setting.S3_KEY_FILE)) {
      if (text(environment, ofBuckets).isPresent()) {
        throw new SettingRefused(
            "%s is for pictures in a bucket. Set %s to s3://bucket/prefix, or take it away."
                .formatted(ofBuckets.key(), Setting.PICTURES.key()));
      }
    }
    return new PicturePlace.Folder(
        wanted
            .map(value -> folder(Setting.PICTURES, value))
            .orElseGet(() -> data.resolve("pictures")));
  }

  private static PicturePlace bucket(Map<String, String> environment, String value, Path arriving) {
    // Names of buckets: Amazon S3 User Guide, "General purpose bucket naming rules".
    Matcher parts =
        Pattern.compile("s3://([a-z0-9][a-z0-9.-]{1,61}[a-z0-9])(?:/([A-Za-z0-9._/-]*))?")
            .matcher(value);
    if (!parts.matches()) {
      throw SettingRefused.of(
          Setting.PICTURES, value, "must be a folder or s3://bucket/prefix, the prefix at will.");
    }
    String prefix = Optional.ofNullable(parts.group(2)).orElse("").replaceAll("^/+|/+$", "");
    String region = value(environment, Setting.S3_REGION);
    if (!region.matches("[a-z0-9-]{1,60}")) {
      throw SettingRefused.of(Setting.S3_REGION, region, "must be a region. Maybe us-east-1?");
    }
    return new PicturePlace.Bucket(
        parts.group(1),
        prefix.isEmpty() ? "" : prefix + "/",
        text(environment, Setting.S3_ENDPOINT).map(Settings::endpoint),
        region,
        text(environment, Setting.S3_KEY_FILE).map(Settings::keyFile),
        arriving);
  }

  private static Path keyFile(String value) {
    Path file = file(Setting.S3_KEY_FILE, value);
    if (!Files.isReadable(file)) {
      throw SettingRefused.of(
          Setting.S3_KEY_FILE, value, "must be a file of two lines that the server can read.");
    }
    return file;
  }

  private static URI endpoint(String value) {
    return webAddress(value)
        .orElseThrow(
            () ->
                SettingRefused.of(
                    Setting.S3_ENDPOINT,
                    value,
                    "must be an address without a path. Maybe https://s3.example?"));
  }

  private static Path folder(Setting setting, String value) {
    try {
      return Path.of(value).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw SettingRefused.of(setting, value, "must be the path of a folder. Maybe ./data?");
    }
  }

  private static Optional<CertificateFiles> certificate(Map<String, String> environment) {
    Optional<String> certificate = text(environment, Setting.TLS_CERTIFICATE);
    Optional<String> key = text(environment, Setting.TLS_KEY);
    if (certificate.isPresent() != key.isPresent()) {
      throw new SettingRefused(
          "%s and %s belong together. Set both, or neither."
              .formatted(Setting.TLS_CERTIFICATE.key(), Setting.TLS_KEY.key()));
    }
    return certificate.map(
        file ->
            new CertificateFiles(
                file(Setting.TLS_CERTIFICATE, file), file(Setting.TLS_KEY, key.orElseThrow())));
  }

  static Path file(Setting setting, String value) {
    try {
      return Path.of(value).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw SettingRefused.of(setting, value, "must be the path of a file.");
    }
  }

  private static boolean yesOrNo(Setting setting, String value) {
    return switch (value) {
      case "true" -> true;
      case "false" -> false;
      default -> throw SettingRefused.of(setting, value, "must be true or false. Maybe true?");
    };
  }

  private static Demo demo(String value) {
    return Demo.find(value)
        .orElseThrow(
            () ->
                SettingRefused.of(
                    Setting.DEMO, value, "must be true, few, false or removed. Maybe true?"));
  }

  private static Optional<Owner> owner(Map<String, String> environment) {
    Optional<String> email = text(environment, Setting.OWNER_EMAIL);
    Optional<String> password = text(environment, Setting.OWNER_PASSWORD);
    if (email.isEmpty() && password.isEmpty()) {
      return Optional.empty();
    }
    if (email.isEmpty() || password.isEmpty()) {
      throw new SettingRefused(
          "%s and %s belong together. Set both, or neither."
              .formatted(Setting.OWNER_EMAIL.key(), Setting.OWNER_PASSWORD.key()));
    }
    if (!email.get().matches("[^@\\s]+@[^@\\s]+")) {
      throw SettingRefused.of(
          Setting.OWNER_EMAIL, email.get(), "must be an e-mail address, with one @ in it.");
    }
    int length = password.get().codePointCount(0, password.get().length());
    if (length < Passwords.SHORTEST) {
      throw new SettingRefused(
          "%s has %d characters and must have at least %d. A few words in a row are fine."
              .formatted(Setting.OWNER_PASSWORD.key(), length, Passwords.SHORTEST));
    }
    return Optional.of(
        new Owner(value(environment, Setting.OWNER_NAME), email.get(), password.get()));
  }

  private static URI address(String value) {
    return webAddress(value)
        .orElseThrow(
            () ->
                SettingRefused.of(
                    Setting.PUBLIC_URL,
                    value,
                    "must be an address without a path. Maybe https://light.example?"));
  }

  private static Optional<URI> webAddress(String value) {
    try {
      URI address = URI.create(value);
      boolean isWeb = "http".equals(address.getScheme()) || "https".equals(address.getScheme());
      boolean isBare = address.getPath().isEmpty() || address.getPath().equals("/");
      if (isWeb && address.getHost() != null && isBare && address.getQuery() == null) {
        return Optional.of(address);
      }
    } catch (IllegalArgumentException e) {
      // It is none.
    }
    return Optional.empty();
  }

  /** Whether visitors come over TLS, to this server or to a proxy before it. */
  public boolean isSecure() {
    return certificate.isPresent()
        || publicUrl.filter(url -> "https".equals(url.getScheme())).isPresent();
  }

  /** Whether a proxy on this machine may say for whom it asks: it stands where a name is public. */
  public boolean isBehindProxy() {
    return publicUrl.isPresent() && certificate.isEmpty();
  }

  private void mustFitTogether() {
    InetAddress address;
    try {
      address = InetAddress.getByName(host);
    } catch (UnknownHostException e) {
      throw SettingRefused.of(
          Setting.HOST, host, "must be a name or address of this machine. Maybe 127.0.0.1?");
    }
    // Its passwords are known to everybody who read the documentation.
    if (demo.isOpen() && !address.isLoopbackAddress()) {
      throw SettingRefused.of(
          Setting.HOST,
          host,
          "must be a loopback address while %s is %s. Take one of the two away."
              .formatted(Setting.DEMO.key(), demo.word()));
    }
    if (certificate.isPresent()
        && publicUrl.filter(url -> !"https".equals(url.getScheme())).isPresent()) {
      throw new SettingRefused(
          "%s (%s) must begin with https where %s is set. Visitors come over TLS then."
              .formatted(Setting.PUBLIC_URL.key(), publicUrl.get(), Setting.TLS_CERTIFICATE.key()));
    }
    if (databaseOwner.isPresent() && database.isEmpty()) {
      throw new SettingRefused(
          "%s names the owner of a database that is not named. Set %s too."
              .formatted(Setting.DATABASE_OWNER_URL.key(), Setting.DATABASE_URL.key()));
    }
    if (replica.isPresent() && database.isEmpty()) {
      throw new SettingRefused(
          "%s names a replica of a database that is not named. Set %s too."
              .formatted(Setting.REPLICA_URL.key(), Setting.DATABASE_URL.key()));
    }
  }
}
