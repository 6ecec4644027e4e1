package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Leave;
import lampwright.tasks.PictureAdding;
import lampwright.tasks.PictureShowing;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.web.http.FormWithFile;

/** Takes a picture that is shown on the find page, and leads to the setups that look like it. */
public final class ShownPicturePages {

  static final String FILE = "file";

  private final Door door;
  private final PictureAdding adding;
  private final PictureShowing showing;

  public ShownPicturePages(Door door, PictureAdding adding, PictureShowing showing) {
    this.door = door;
    this.adding = adding;
    this.showing = showing;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/shown-pictures";
  }

  /** A form with a file to {@code /studios/{studio}/shown-pictures}. */
  public void show(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    showing.askToShow(caller, studio);
    if (!FormWithFile.is(context)) {
      throw new Refused(new Refusal.WrongContentType("multipart/form-data"));
    }
    FormWithFile form = FormWithFile.of(context);
    try (PictureAdding.Received received = adding.receive(form.file())) {
      form.finish();
      context.redirect(
          Address.of(SetupPages.findPath(studio))
              .with(AskedLike.TONES, showing.show(received).tones())
              .toString(),
          HttpStatus.SEE_OTHER);
    }
  }
}
