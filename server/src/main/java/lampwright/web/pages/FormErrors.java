package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/** What is wrong with a form that was sent, in the order of its fields. */
public record FormErrors(List<FormError> items) {

  public FormErrors {
    items = List.copyOf(items);
  }

  /**
   * One thing that is wrong.
   *
   * @param field the id of the field to go to; empty where it is the form as a whole
   * @param message what is wrong and what to do
   */
  public record FormError(String field, String message) {}

  /** One thing. */
  static FormErrors of(String field, String message) {
    return new FormErrors(List.of(new FormError(field, message)));
  }

  public static FormErrors none() {
    return new FormErrors(List.of());
  }

  public boolean isEmpty() {
    return items.isEmpty();
  }

  /** The same of a form whose fields' names all begin so. */
  FormErrors withFieldsAfter(String beginning) {
    return new FormErrors(
        items.stream()
            .map(error -> new FormError(beginning + error.field(), error.message()))
            .toList());
  }

  /** The first message about a field. */
  public Optional<String> find(String field) {
    return items.stream().filter(e -> e.field().equals(field)).map(FormError::message).findFirst();
  }
}
