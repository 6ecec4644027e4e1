package lampwright.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import lampwright.LongProgram;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.outside.NodeTools.Said;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Who has only the API's description gets on with the server. The tools come from the npm registry
 * and none is ours: the linter @redocly/cli, the proxy @stoplight/prism-cli, which holds every
 * request and reply against the description, and openapi-typescript with openapi-fetch, from which
 * {@code src/test/npm/client.ts} is made.
 */
@LongProgram
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.MethodName.class)
class GeneratedClientTest {

  private static final String DESCRIPTION = "openapi.json";
  private static final String PLANTED = "planted.json";
  private static final String WARNINGS = "You have ";
  private static final String STUDIOS =
      "\"StudioList\":{\"type\":\"object\",\"additionalProperties\":false,\"required\":[";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private NodeTools tools;
  private String description;
  private String token;

  @BeforeAll
  void theToolsAreThere() throws Exception {
    tools = NodeTools.installed();
    description = house.visitor().get("/api/openapi.json").body();
    Files.writeString(tools.folder().resolve(DESCRIPTION), description);
    HttpResponse<String> made =
        house
            .signedIn("author@demo.example")
            .post("/api/tokens", "{\"name\":\"a generated client\"}");
    token = String.valueOf(Visitor.object(made).get("token"));
  }

  @Test
  void aLinterFindsNeitherErrorNorWarning() throws Exception {
    Said said = lint(DESCRIPTION);
    assertEquals(0, said.code(), said.text());
    assertTrue(said.text().contains("Your API description is valid"), said.text());
    assertFalse(said.text().contains(WARNINGS), said.text());
    plant(description.replaceFirst("\"operationId\":\"live\"", "\"operationId\":\"ready\""));
    assertEquals(1, lint(PLANTED).code(), "the linter checks nothing");
    plant(description.replaceFirst("\"license\":", "\"x-license\":"));
    assertTrue(lint(PLANTED).text().contains(WARNINGS), "the linter warns of nothing");
  }

  private void plant(String faulty) throws Exception {
    Files.writeString(tools.folder().resolve(PLANTED), faulty);
  }

  private Said lint(String file) throws Exception {
    return tools.node(
        "node_modules/@redocly/cli/bin/cli.js", "lint", file, "--config=redocly.yaml");
  }

  @Test
  void aGeneratedClientDoesEverythingThroughAValidatingProxy() throws Exception {
    Said generated =
        tools.node("node_modules/openapi-typescript/bin/cli.js", DESCRIPTION, "-o", "api.d.ts");
    assertEquals(0, generated.code(), generated.text());
    Said compiled = tools.node("node_modules/typescript/bin/tsc", "-p", ".");
    assertEquals(0, compiled.code(), compiled.text());
    try (ValidatingProxy proxy = ValidatingProxy.start(tools, DESCRIPTION, house.port())) {
      String server = "http://127.0.0.1:" + house.port();
      Said said =
          tools.node(
              "client.js",
              proxy.address().toString(),
              server,
              token,
              "author@demo.example",
              TestHouse.PASSWORD);
      assertEquals(0, said.code(), said.text());
      assertTrue(said.text().endsWith("done\n"), said.text());
    }
  }

  @Test
  void theProxySeesAReplyThatIsNotAsDescribed() throws Exception {
    assertTrue(description.contains(STUDIOS), "the description is written otherwise now");
    plant(description.replace(STUDIOS, STUDIOS + "\"weather\","));
    try (ValidatingProxy proxy = ValidatingProxy.start(tools, PLANTED, house.port())) {
      HttpResponse<String> answer =
          new Visitor(proxy.address()).with("Authorization", "Bearer " + token).get("/api/studios");
      assertEquals(500, answer.statusCode(), answer.body());
      assertTrue(answer.body().contains("weather"), answer.body());
    }
  }
}
