package lampwright.web.pages;

/** Words that lead to an address of ours. */
public record Link(String words, String path) {}
