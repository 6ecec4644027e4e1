package lampwright.web.pages;

/**
 * Sets a new password by a link.
 *
 * @param action where the form posts to; the link's secret is part of it
 * @param name whose account it is
 * @param isDone whether it is set
 * @param shortestPassword the least number of characters
 */
public record NewPasswordPage(
    Layout layout,
    String action,
    String name,
    boolean isDone,
    int shortestPassword,
    FormErrors errors) {}
