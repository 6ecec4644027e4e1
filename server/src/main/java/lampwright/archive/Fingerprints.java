package lampwright.archive;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;

/**
 * What tells whether two things are the same: a hash over the thing and its whole history. What a
 * setup was made from is left out, since one setup's archive may come in without that.
 */
public final class Fingerprints {

  private final ArchiveKind kind;
  private final Map<String, MessageDigest> digests = new HashMap<>();

  public Fingerprints(ArchiveKind kind) {
    this.kind = kind;
  }

  /** Begins a thing. */
  public void add(Thing thing) {
    MessageDigest digest = Bag.sha256();
    Thing bare = thing.renamed(thing.id(), Optional.empty(), thing.setup());
    digest.update(bytes(kind.things().write(bare)));
    digests.put(thing.id(), digest);
  }

  /** Adds a revision, in the order of their numbers. */
  public void add(Version version) {
    MessageDigest digest = digests.get(version.id());
    if (digest != null) {
      digest.update(bytes(kind.versions().write(version)));
    }
  }

  private static byte[] bytes(Object json) {
    return Json.print(json).getBytes(StandardCharsets.UTF_8);
  }

  /** All of them, by the things' ids. */
  public Map<String, String> byId() {
    Map<String, String> byId = new HashMap<>();
    digests.forEach((id, digest) -> byId.put(id, HexFormat.of().formatHex(digest.digest())));
    return byId;
  }
}
