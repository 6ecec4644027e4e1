package lampwright.web.pages;

/**
 * A link that was just made; its address is shown this once.
 *
 * @param title of the setup
 * @param back to the setup
 * @param address whole, to be copied
 * @param ends "It ends 18 May 2031."
 */
public record ShareMadePage(
    Layout layout, String title, String back, String address, String ends) {}
