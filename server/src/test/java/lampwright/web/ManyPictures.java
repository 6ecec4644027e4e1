package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.picture.Drawn;

/** Pictures that take long enough to read that one can come in between. */
public final class ManyPictures {

  private ManyPictures() {}

  /** Adds so many to a setup; their addresses. */
  public static List<String> add(Visitor author, String setup, int count) {
    List<String> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Random grain = new Random(i);
      byte[] file = Drawn.jpeg(Drawn.image(1800, 1200, (x, y) -> grain.nextInt(1 << 24)), 0.9);
      HttpResponse<String> made =
          author
              .with("Content-Type", "image/jpeg")
              .send("POST", setup + "/pictures?kind=final", BodyPublishers.ofByteArray(file));
      assertEquals(201, made.statusCode(), made.body());
      places.add(made.headers().firstValue("Location").orElseThrow());
    }
    return places;
  }

  /** Waits until an import has done so many of its steps. */
  public static void untilDone(Visitor author, String place, int steps) {
    long end = System.nanoTime() + 60_000_000_000L;
    Map<?, ?> told = Visitor.object(author.get(place));
    while (Told.number(told, "steps", "done") < steps) {
      assertTrue(System.nanoTime() < end, told.toString());
      told = Visitor.object(author.get(place));
    }
    assertEquals("running", told.get("state"), told.toString());
  }
}
