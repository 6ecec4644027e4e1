package lampwright.benchmarks.crash;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ThreadLocalRandom;
import lampwright.benchmarks.load.Run;

/** The owner's way into a server. */
record Entry(Api api, String token, String studio) {

  private static final int SEARCHES = 6;

  static Entry of(Run server) throws IOException {
    String token = Crash.token(new Api(server.address(), ""), Map.of("name", "troubles"));
    Api api = new Api(server.address(), token);
    return new Entry(api, token, Crash.firstStudio(api));
  }

  Entry at(Run server) {
    return new Entry(new Api(server.address(), token), token, studio);
  }

  Api.Answer write(String title) throws IOException {
    return api.post(studio + "/setups", Writer.document(title), Map.of());
  }

  String mustWrite(String title) throws IOException {
    return write(title).location().orElseThrow();
  }

  boolean finds(String words, int many) throws IOException {
    return total(words) == many;
  }

  /** Adds a picture that nobody has yet; what that is answered by. */
  String addPicture(String setup) throws IOException {
    Api.Answer answer =
        api.send(
            "POST",
            setup + "/pictures?kind=behind_the_scenes",
            Writer.photograph(ThreadLocalRandom.current()),
            Map.of("Content-Type", "image/jpeg"));
    return Integer.toString(answer.status());
  }

  /** What the server says of itself. */
  String readiness() throws IOException {
    Api.Answer answer = api.get("/health/ready");
    return answer.status() + " " + answer.at("reasons");
  }

  /** How many a search finds; -1 where it is refused. */
  int total(String words) throws IOException {
    return api.get(studio + "/setups?facets=none&q=" + words).number("total");
  }

  Map<String, Integer> search(String words) throws IOException {
    Map<String, Integer> seen = new TreeMap<>();
    for (int i = 0; i < SEARCHES; i++) {
      Api.Answer answer = api.get(studio + "/setups?q=" + words + "&limit=" + (i + 1));
      seen.merge(answer.status() + " with " + answer.number("total"), 1, Integer::sum);
    }
    return seen;
  }
}
