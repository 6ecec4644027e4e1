package lampwright.web.pages;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The style sheet, fonts and scripts of the pages, read once from the class path. They share one
 * hash over all their content, so that an address never changes its bytes (it may be cached for
 * ever) and the style sheet can name its fonts relative to itself.
 */
public final class Assets {

  private static final String FOLDER = "/lampwright/assets/";

  /** The one style sheet that every page links: {@link #STYLE_PARTS} in their order. */
  public static final String STYLE = "style.css";

  /** How the field sheet looks, on the page and in the file. */
  static final String PAPER = "field-sheet.css";

  /** How its drawings look. */
  static final String PAPER_PLAN = "plan-paper.css";

  /**
   * What the style sheet is made of. A phone waits for every style sheet before it shows anything,
   * and on a slow line for one no longer than for ten.
   */
  static final List<String> STYLE_PARTS =
      List.of(
          "lampwright.css",
          "sheet.css",
          "find.css",
          "setup.css",
          "figures.css",
          "adapted.css",
          "plan.css",
          "day.css",
          "pictures.css",
          "suggest.css",
          "saved.css",
          "studio.css",
          "members.css",
          "now.css",
          "without.css",
          "field.css",
          "pack.css",
          "learning.css",
          "leaving.css",
          "glossary.css",
          "account.css",
          "audit.css",
          "share.css",
          PAPER,
          PAPER_PLAN);

  /** Every other asset there is; nothing else is served. */
  static final List<String> NAMES =
      List.of(
          "editor-carrying.js",
          "editor-desk.js",
          "editor-differences.js",
          "editor-document.js",
          "editor-draft.js",
          "editor-drawings.js",
          "editor-fields.js",
          "editor-figures.js",
          "editor-geometry.js",
          "editor-history.js",
          "editor-keeping.js",
          "editor-keys.js",
          "editor-light-fields.js",
          "editor-lights.js",
          "editor-making.js",
          "editor-merge.js",
          "editor-panel.js",
          "editor-record-shown.js",
          "editor-record.js",
          "editor-saving.js",
          "editor-shown.js",
          "editor-snapping.js",
          "editor-units.js",
          "editor-windows.js",
          "editor-words.js",
          "editor.css",
          "editor.js",
          "elements.js",
          "engine.js",
          "favicon.svg",
          "field-caches.js",
          "field-copy.js",
          "field-day.js",
          "field-engine.js",
          "field-keeping.js",
          "field-list.js",
          "field-now.js",
          "field-outbox.js",
          "field-page.js",
          "field-parts.js",
          "field-steps.js",
          "field-store.js",
          "field-takes.js",
          "field-waiting.js",
          "field-walk.js",
          "field-words.js",
          "field-worker.js",
          "fonts/LICENSE-atkinson-hyperlegible-mono.txt",
          "fonts/LICENSE-atkinson-hyperlegible-next.txt",
          "fonts/atkinson-hyperlegible-mono-latin-400-normal.woff2",
          "fonts/atkinson-hyperlegible-mono-latin-600-normal.woff2",
          "fonts/atkinson-hyperlegible-mono-latin-ext-400-normal.woff2",
          "fonts/atkinson-hyperlegible-mono-latin-ext-600-normal.woff2",
          "fonts/atkinson-hyperlegible-next-latin-400-normal.woff2",
          "fonts/atkinson-hyperlegible-next-latin-600-normal.woff2",
          "fonts/atkinson-hyperlegible-next-latin-ext-400-normal.woff2",
          "fonts/atkinson-hyperlegible-next-latin-ext-600-normal.woff2",
          "glossary.js",
          "pack-ticks.js",
          "progress.js",
          "suggest.js",
          "takes.js",
          "theme.js",
          "without.js");

  private static final Map<String, String> MEDIA_TYPES =
      Map.of(
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml",
          "txt", "text/plain; charset=utf-8",
          "woff2", "font/woff2");

  private final Map<String, Asset> assets;
  private final String hash;

  private Assets(Map<String, Asset> assets, String hash) {
    this.assets = assets;
    this.hash = hash;
  }

  /** One file: its media type and its bytes, which callers must not change. */
  public static final class Asset {

    private final String mediaType;
    private final byte[] bytes;

    private Asset(String mediaType, byte[] bytes) {
      this.mediaType = mediaType;
      this.bytes = bytes;
    }

    public String mediaType() {
      return mediaType;
    }

    /** A fresh stream over the content. */
    public InputStream open() {
      return new ByteArrayInputStream(bytes);
    }

    /** How many bytes {@link #open} gives. */
    public int length() {
      return bytes.length;
    }
  }

  /**
   * Reads them all.
   *
   * @throws IllegalStateException where the program was packed without one of them
   */
  public static Assets fromClassPath() {
    Map<String, Asset> assets = new TreeMap<>();
    MessageDigest digest = sha256();
    for (String name : NAMES) {
      assets.put(name, new Asset(mediaType(name), read(name)));
    }
    assets.put(STYLE, new Asset(mediaType(STYLE), style()));
    assets.forEach(
        (name, asset) -> {
          digest.update(name.getBytes(StandardCharsets.UTF_8));
          digest.update(asset.bytes);
        });
    String hash = HexFormat.of().formatHex(digest.digest(), 0, 8);
    return new Assets(Map.copyOf(assets), hash);
  }

  /**
   * The address of an asset, such as {@code /assets/1f0c…/style.css}.
   *
   * @throws IllegalArgumentException where there is no such asset
   */
  public String path(String name) {
    if (!assets.containsKey(name)) {
      throw new IllegalArgumentException("Asset (" + name + ") must be one of " + NAMES + ".");
    }
    return "/assets/" + hash + "/" + name;
  }

  /** The hash in every address: 16 hexadecimal digits. */
  public String hash() {
    return hash;
  }

  /** The asset at {@code /assets/hash/name}; empty for another build's hash and unknown names. */
  public Optional<Asset> find(String askedHash, String name) {
    return askedHash.equals(hash) ? Optional.ofNullable(assets.get(name)) : Optional.empty();
  }

  private static byte[] style() {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    STYLE_PARTS.forEach(part -> whole.writeBytes(read(part)));
    return whole.toByteArray();
  }

  private static byte[] read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("Asset missing from the class path: " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("Asset cannot be read: " + name, e);
    }
  }

  private static String mediaType(String name) {
    String mediaType = MEDIA_TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    if (mediaType == null) {
      throw new IllegalStateException("No media type for asset " + name);
    }
    return mediaType;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }
}
