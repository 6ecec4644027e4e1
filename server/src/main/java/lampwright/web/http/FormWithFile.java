package lampwright.web.http;

import io.javalin.http.Context;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lampwright.tasks.Refused;

/**
 * A form with one file in it. The fields before the file are read when it is opened, in bounded
 * memory, so that the door finds its proof there before a byte of the file is taken in; pages put
 * that field first.
 */
public final class FormWithFile {

  private static final String OPENED = "lampwright.form-with-file";

  private final Multipart parts;
  private final Map<String, String> fields = new LinkedHashMap<>();
  private Optional<Multipart.Part> file = Optional.empty();

  private FormWithFile(Multipart parts) {
    this.parts = parts;
    file = readFields();
  }

  /** Whether a request says that its body is such a form. */
  public static boolean is(Context context) {
    return Multipart.is(type(context));
  }

  /**
   * Opens a request's form, once: the door looks into it before the handler does.
   *
   * @throws Refused NotReadable where the form is broken
   */
  public static FormWithFile of(Context context) {
    FormWithFile before = context.attribute(OPENED);
    if (before != null) {
      return before;
    }
    FormWithFile form = new FormWithFile(Multipart.of(type(context), Body.stream(context)));
    context.attribute(OPENED, form);
    return form;
  }

  private static String type(Context context) {
    return Optional.ofNullable(context.contentType()).orElse("").strip();
  }

  /** Reads fields up to the next file. */
  private Optional<Multipart.Part> readFields() {
    for (Optional<Multipart.Part> part = parts.next(); part.isPresent(); part = parts.next()) {
      if (part.get().isFile()) {
        return part;
      }
      fields.putIfAbsent(part.get().name(), part.get().text());
    }
    return Optional.empty();
  }

  /** What stands in a field; empty where the form, as far as it is read, has no such field. */
  public String get(String field) {
    return fields.getOrDefault(field, "");
  }

  /** What people filled in so far: every field but the door's proof. */
  public Map<String, String> filled() {
    Map<String, String> filled = new LinkedHashMap<>(fields);
    filled.remove(Door.CSRF_FIELD);
    filled.values().removeIf(String::isBlank);
    return filled;
  }

  /**
   * The file's bytes as they arrive.
   *
   * @throws Refused Invalid where the form holds none
   */
  public InputStream file() {
    return file.orElseThrow(() -> Refused.invalid("", "The form must hold a file.")).content();
  }

  /**
   * Reads what stands behind the file, which must have been read.
   *
   * @throws Refused Invalid where that is another file, NotReadable where the form has no end
   */
  public void finish() {
    if (file.isPresent() && readFields().isPresent()) {
      throw Refused.invalid("", "The form must hold one file. Send the others one by one.");
    }
  }
}
