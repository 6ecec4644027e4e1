package lampwright.web.pages;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;

/** Draws a page's record with its template; every text in it is escaped on the way. */
public final class Templates {

  private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

  /**
   * The page as HTML.
   *
   * @param template the template's name without its ending, such as {@code signIn}
   */
  public String render(String template, Record page) {
    StringOutput output = new StringOutput();
    engine.render(template + ".jte", page, output);
    return output.toString();
  }

  /** Answers with a page. */
  public void show(Context context, String template, Record page) {
    context.html(render(template, page));
  }
}
