package lampwright.archive;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What a ZIP's files are called, if they are to be a bag, and how much they may unpack to. */
final class BagNames {

  private BagNames() {}

  static void mustBeBounded(List<ZipDirectory.Entry> entries, long size, Limits limits)
      throws Unsound {
    long most = limits.unpackedOf(size);
    long all = 0;
    for (ZipDirectory.Entry entry : entries) {
      all += Math.min(entry.bytes(), most + 1);
      if (all > most) {
        throw new Unsound(
            Fault.ofArchive(
                "The archive (%d bytes) must unpack to at most %d bytes.".formatted(size, most)));
      }
    }
  }

  /** The names within the bag, with those in the ZIP. */
  static Map<String, String> of(List<ZipDirectory.Entry> entries) throws Unsound {
    Map<String, String> names = new LinkedHashMap<>();
    Set<String> whateverCase = new HashSet<>();
    String base = "";
    for (ZipDirectory.Entry entry : entries) {
      String name = entry.name();
      if (!whateverCase.add(name.toLowerCase(Locale.ROOT))) {
        throw new Unsound(Fault.ofFile(name, "The file is there twice, in whatever case."));
      }
      int slash = name.indexOf('/');
      String top = slash < 0 ? "" : name.substring(0, slash);
      if (top.isEmpty() || (!base.isEmpty() && !base.equals(top))) {
        throw new Unsound(
            Fault.ofFile(name, "All files of an archive must lie in one folder (RFC 8493)."));
      }
      base = top;
      if (!entry.isFolder()) {
        names.put(name.substring(slash + 1), name);
      }
    }
    return names;
  }
}
