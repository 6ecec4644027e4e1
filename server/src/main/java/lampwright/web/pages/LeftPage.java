package lampwright.web.pages;

/**
 * Said to who has just left for good.
 *
 * @param startPath where the server's door is
 */
public record LeftPage(Layout layout, String startPath) {}
