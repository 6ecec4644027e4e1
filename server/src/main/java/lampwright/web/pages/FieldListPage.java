package lampwright.web.pages;

/**
 * The setups that are kept on a phone; only the phone knows which.
 *
 * @param data what the page's script begins with, as JSON
 */
public record FieldListPage(Layout layout, String data, String findPath) {}
