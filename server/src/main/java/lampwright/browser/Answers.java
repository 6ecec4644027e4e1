package lampwright.browser;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Problems;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;

/**
 * Answers a request: what is wrong with the setup, or else its figures and drawings as the server's
 * pages print them. Plain values in and out, see {@link lampwright.document.Form}; deterministic.
 *
 * <p>A request has {@code document} (the setup as REST writes it), {@code language}, {@code
 * lengths}, {@code stops}, {@code phrases} (texts by key) and, if not all is wanted, {@code want}
 * (a list of {@link Part}s). Where something happened it has {@code happening}, and may have {@code
 * keep} and {@code kit}: see {@link AskedNow}. An answer has {@code problems} (each a {@code
 * pointer} into the document and a {@code message}) and, where there are none, the parts.
 */
final class Answers {

  private Answers() {}

  /**
   * The answer to a request.
   *
   * @throws IllegalArgumentException where the request, not the document, is wrong
   */
  static Map<String, Object> to(Object plainRequest) {
    Request request = Request.read(plainRequest);
    return switch (SetupDocument.FORM.read(request.document())) {
      case Reading.Faulty<SetupDocument> faulty -> Map.of("problems", problems(faulty.problems()));
      case Reading.Sound<SetupDocument> sound -> parts(request, sound.value());
    };
  }

  private static List<Object> problems(List<Problem> problems) {
    return problems.stream().<Object>map(Answers::problem).toList();
  }

  private static Map<String, Object> problem(Problem problem) {
    return Map.of("pointer", problem.pointer(), "message", problem.message());
  }

  private static Map<String, Object> parts(Request request, SetupDocument setup) {
    Problems problems = new Problems();
    Optional<AskedNow> now = AskedNow.find(request, setup, problems);
    if (!problems.isEmpty()) {
      return Map.of("problems", problems(problems.list()));
    }
    AnswerParts parts = new AnswerParts(setup, request.notation());
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("problems", List.of());
    for (Part part : Part.values()) {
      if (!request.wanted().contains(part)) {
        continue;
      }
      if (part == Part.NOW) {
        now.ifPresent(asked -> answer.put(part.key(), asked.answer()));
      } else {
        answer.put(part.key(), parts.of(part));
      }
    }
    return answer;
  }
}
