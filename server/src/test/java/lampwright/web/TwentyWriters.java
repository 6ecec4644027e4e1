package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampwright.Told;
import lampwright.Visitor;

/**
 * Twenty people who write one setup at once: each reads, adds a note, sends it with If-Match, and
 * begins again where somebody was quicker.
 */
public final class TwentyWriters {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final int WRITERS = 20;
  private static final int CHANGES_EACH = 2;

  private TwentyWriters() {}

  /**
   * Lets them write, and checks what is there afterwards.
   *
   * @param doors the same author at each server of one database; the writers take turns in choosing
   */
  public static void mustLoseNothing(List<Visitor> doors) throws Exception {
    Visitor author = doors.getFirst();
    String path =
        author
            .post(SETUPS, Documents.json(Documents.setup("Written by twenty")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    List<Integer> acknowledged = new ArrayList<>();
    try (ExecutorService writers = Executors.newVirtualThreadPerTaskExecutor()) {
      List<Callable<List<Integer>>> work =
          IntStream.range(0, WRITERS)
              .<Callable<List<Integer>>>mapToObj(
                  writer -> () -> written(doors.get(writer % doors.size()), path, writer))
              .toList();
      for (Future<List<Integer>> done : writers.invokeAll(work)) {
        acknowledged.addAll(done.get());
      }
    }
    int changes = WRITERS * CHANGES_EACH;
    assertEquals(
        IntStream.rangeClosed(2, changes + 1).boxed().toList(),
        acknowledged.stream().sorted().toList());
    Set<String> all =
        IntStream.range(0, WRITERS)
            .boxed()
            .flatMap(
                writer -> IntStream.range(0, CHANGES_EACH).mapToObj(turn -> note(writer, turn)))
            .collect(Collectors.toSet());
    assertEquals(all, new HashSet<>(notes(Visitor.object(author.get(path)))));
    for (int revision : acknowledged) {
      HttpResponse<String> then = author.get(path + "/revisions/" + revision);
      assertEquals(200, then.statusCode());
      assertEquals(revision - 1, notes(Visitor.object(then)).size());
    }
    assertEquals(changes + 1, Visitor.items(author.get(path + "/revisions?limit=100")).size());
  }

  /** The revisions that were acknowledged to one writer, who adds a note with each. */
  private static List<Integer> written(Visitor author, String path, int writer) {
    List<Integer> revisions = new ArrayList<>();
    for (int turn = 0; turn < CHANGES_EACH; turn++) {
      revisions.add(added(author, path, note(writer, turn)));
    }
    return revisions;
  }

  /** Reads, adds, sends with If-Match, and begins again where somebody was quicker. */
  private static int added(Visitor author, String path, String note) {
    while (true) {
      HttpResponse<String> read = author.get(path);
      List<String> more = new ArrayList<>(notes(Visitor.object(read)));
      more.add(note);
      Map<String, Object> changed =
          Documents.with(Documents.setup("Written by twenty"), "retouch_notes", more);
      HttpResponse<String> answer =
          author
              .with("If-Match", read.headers().firstValue("ETag").orElseThrow())
              .put(path, Documents.json(changed));
      if (answer.statusCode() == 200) {
        return (int) Told.number(Visitor.object(answer), "revision");
      }
      assertEquals(412, answer.statusCode(), answer.body());
    }
  }

  private static String note(int writer, int turn) {
    return "Writer " + writer + ", change " + turn;
  }

  private static List<String> notes(Map<?, ?> setup) {
    return setup.get("document") instanceof Map<?, ?> document
            && document.get("retouch_notes") instanceof List<?> notes
        ? notes.stream().map(String::valueOf).toList()
        : List.of();
  }
}
