// A client made from the API's description alone: its types are generated, its calls are checked
// by the compiler. It comes in by a token, and by a session where only a person may; it makes, reads, changes and deletes each kind of thing.
import createClient from "openapi-fetch";
import type { paths } from "./api.js";

declare const process: { argv: string[]; exitCode: number };

const [address, server, token, email, password] = process.argv.slice(2);
const headers = { Authorization: `Bearer ${token}` };
const client = createClient<paths>({ baseUrl: address, headers });

/** Past the proxy, which takes a picture's bytes for text and breaks them. */
const direct = createClient<paths>({ baseUrl: server, headers });

interface Answer<T> {
  data?: T;
  error?: unknown;
  response: Response;
}

/** What an answer holds; anything but success ends the program with what was said. */
function held<T>(what: string, answer: Answer<T>): { data: T; etag: string } {
  if (!answer.response.ok) {
    throw new Error(`${what}: ${answer.response.status} ${JSON.stringify(answer.error)}`);
  }
  console.log(`${what} ${answer.response.status}`);
  return { data: answer.data as T, etag: answer.response.headers.get("ETag") ?? "" };
}

/** A refusal that is wanted. */
function refused(what: string, status: number, answer: Answer<unknown>): void {
  if (answer.response.status !== status) {
    throw new Error(`${what}: ${answer.response.status} instead of ${status}`);
  }
  console.log(`${what} ${status}`);
}

const studio = "demo";

async function setups(): Promise<void> {
  const at = { studio };
  const list = held("list setups", await client.GET("/api/studios/{studio}/setups", {
    params: { path: at, query: { limit: 2 } },
  })).data;
  const one = { studio, setup: list.items[0].id };
  const found = held("read a setup", await client.GET("/api/studios/{studio}/setups/{setup}", {
    params: { path: one },
  })).data;
  const made = held("make a setup", await client.POST("/api/studios/{studio}/setups", {
    params: { path: at, query: { parent: found.id } },
    body: { ...found.document, title: "Made by a generated client" },
  }));
  const mine = { studio, setup: made.data.id };
  const changed = held("change a setup", await client.PUT("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine, header: { "If-Match": made.etag } },
    body: { ...made.data.document, title: "Changed by a generated client" },
  }));
  refused("change it by an old state", 412, await client.PUT("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine, header: { "If-Match": made.etag } },
    body: made.data.document,
  }));
  const patched = held("patch it", await client.PATCH("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine, header: { "If-Match": changed.etag } },
    headers: { "Content-Type": "application/merge-patch+json" },
    body: { intent: "As quiet as a harbour before the first boat." },
  }));
  held("read its figures", await client.GET("/api/studios/{studio}/setups/{setup}/figures", {
    params: { path: mine },
  }));
  held("list the children", await client.GET("/api/studios/{studio}/setups/{setup}/children", {
    params: { path: one },
  }));
  const kits = held("list kits", await client.GET("/api/studios/{studio}/kits", {
    params: { path: at },
  })).data;
  held("adapt it", await client.POST("/api/studios/{studio}/setups/{setup}/adaptations", {
    params: { path: mine },
    body: { kit: kits.items[0].id },
  }));
  await log(mine);
  const proven = held("call it proven", await client.PUT("/api/studios/{studio}/setups/{setup}/state", {
    params: { path: mine, header: { "If-Match": patched.etag }, query: { message: "Shot twice." } },
    body: { state: "proven", archived: false },
  }));
  held("read its state", await client.GET("/api/studios/{studio}/setups/{setup}/state", {
    params: { path: mine },
  }));
  held("list its revisions", await client.GET("/api/studios/{studio}/setups/{setup}/revisions", {
    params: { path: mine, query: { limit: 2 } },
  }));
  held("read its first revision", await client.GET(
    "/api/studios/{studio}/setups/{setup}/revisions/{revision}",
    { params: { path: { ...mine, revision: 1 } } },
  ));
  const restored = held("bring it back", await client.POST(
    "/api/studios/{studio}/setups/{setup}/restorations",
    { params: { path: mine, header: { "If-Match": proven.etag } }, body: { revision: 1 } },
  ));
  const wish = {
    params: { path: mine, header: { "Idempotency-Key": '"one-copy"' } },
    body: { title: "A copy by a generated client" },
  };
  const copy = held("copy it", await client.POST("/api/studios/{studio}/setups/{setup}/copies", wish));
  const again = held("ask again", await client.POST("/api/studios/{studio}/setups/{setup}/copies", wish));
  if (again.data.id !== copy.data.id) {
    throw new Error("The same request made two copies.");
  }
  held("delete the copy", await client.DELETE("/api/studios/{studio}/setups/{setup}", {
    params: { path: { studio, setup: copy.data.id }, header: { "If-Match": copy.etag } },
  }));
  held("delete a setup", await client.DELETE("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine, header: { "If-Match": restored.etag } },
  }));
  refused("read what is gone", 404, await client.GET("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine },
  }));
}

/** The smallest picture there is: one grey pixel. */
const pixel = Uint8Array.from(
  atob(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==",
  ),
  (character) => character.charCodeAt(0),
);

async function log(of: { studio: string; setup: string }): Promise<void> {
  const take = held("log a take", await client.POST("/api/studios/{studio}/setups/{setup}/takes", {
    params: { path: of },
    body: { at: "2026-03-20T18:05:00Z", setup_revision: 1, client_key: "generated-1", kept: "yes" },
  }));
  const logged = { ...of, take: take.data.id };
  held("read a take", await client.GET("/api/studios/{studio}/setups/{setup}/takes/{take}", {
    params: { path: logged },
  }));
  const kept = held("change a take", await client.PUT("/api/studios/{studio}/setups/{setup}/takes/{take}", {
    params: { path: logged, header: { "If-Match": take.etag } },
    body: { ...take.data.document, kept: "no", why: "Blinked." },
  }));
  held("list takes", await client.GET("/api/studios/{studio}/setups/{setup}/takes", {
    params: { path: of, query: { kept: "no" } },
  }));
  held("delete a take", await client.DELETE("/api/studios/{studio}/setups/{setup}/takes/{take}", {
    params: { path: logged, header: { "If-Match": kept.etag } },
  }));
  const note = held("write a note", await client.POST("/api/studios/{studio}/setups/{setup}/notes", {
    params: { path: of },
    body: { text: "Sandbag the boom." },
  }));
  const written = { ...of, note: note.data.id };
  const changed = held("change a note", await client.PUT("/api/studios/{studio}/setups/{setup}/notes/{note}", {
    params: { path: written, header: { "If-Match": note.etag } },
    body: { text: "Sandbag the boom twice." },
  }));
  held("read a note", await client.GET("/api/studios/{studio}/setups/{setup}/notes/{note}", {
    params: { path: written },
  }));
  held("list notes", await client.GET("/api/studios/{studio}/setups/{setup}/notes", {
    params: { path: of },
  }));
  held("delete a note", await client.DELETE("/api/studios/{studio}/setups/{setup}/notes/{note}", {
    params: { path: written, header: { "If-Match": changed.etag } },
  }));
  const picture = held("add a picture", await direct.POST("/api/studios/{studio}/setups/{setup}/pictures", {
    params: { path: of, query: { kind: "reference" } },
    body: pixel as never,
    bodySerializer: (bytes) => bytes as unknown as Uint8Array,
    headers: { "Content-Type": "image/png" },
  }));
  const added = { ...of, picture: picture.data.id };
  const captioned = held("change a picture", await client.PUT(
    "/api/studios/{studio}/setups/{setup}/pictures/{picture}",
    {
      params: { path: added, header: { "If-Match": picture.etag } },
      body: { kind: "reference", caption: "Grey." },
    },
  ));
  held("read a picture", await client.GET("/api/studios/{studio}/setups/{setup}/pictures/{picture}", {
    params: { path: added },
  }));
  held("list pictures", await client.GET("/api/studios/{studio}/setups/{setup}/pictures", {
    params: { path: of },
  }));
  held("delete a picture", await client.DELETE(
    "/api/studios/{studio}/setups/{setup}/pictures/{picture}",
    { params: { path: added, header: { "If-Match": captioned.etag } } },
  ));
}

async function kits(): Promise<void> {
  const made = held("make a kit", await client.POST("/api/studios/{studio}/kits", {
    params: { path: { studio } },
    body: { name: "A generated client's kit", heads: [] },
  }));
  const mine = { studio, kit: made.data.id };
  const changed = held("change a kit", await client.PUT("/api/studios/{studio}/kits/{kit}", {
    params: { path: mine, header: { "If-Match": made.etag } },
    body: { ...made.data.document, name: "The same, renamed" },
  }));
  held("read a kit", await client.GET("/api/studios/{studio}/kits/{kit}", { params: { path: mine } }));
  held("delete a kit", await client.DELETE("/api/studios/{studio}/kits/{kit}", {
    params: { path: mine, header: { "If-Match": changed.etag } },
  }));
}

async function gear(): Promise<void> {
  const at = { studio };
  const made = held("make gear", await client.POST("/api/studios/{studio}/gear", {
    params: { path: at, query: { message: "Bought." } },
    body: {
      kind: "head",
      head: {
        name: "A generated head",
        energy_ws: 400,
        output: { kind: "guide_number", guide_number_m: 76 },
      },
      count: 2,
      readings: [{ head: "A generated head", f_number: 32, distance_m: 2 }],
    },
  }));
  const mine = { studio, gear: made.data.id };
  held("list gear", await client.GET("/api/studios/{studio}/gear", {
    params: { path: at, query: { kind: "head", q: "generated" } },
  }));
  held("read gear", await client.GET("/api/studios/{studio}/gear/{gear}", {
    params: { path: mine },
  }));
  const changed = held("change gear", await client.PUT("/api/studios/{studio}/gear/{gear}", {
    params: { path: mine, header: { "If-Match": made.etag } },
    body: { ...made.data.document, out_of_order: 1 },
  }));
  const kit = held("make a kit of gear", await client.POST("/api/studios/{studio}/kits", {
    params: { path: at },
    body: { name: "Of shared gear", gear: [{ id: made.data.id, count: 2 }] },
  }));
  if (kit.data.resolved.heads?.[0].head.name !== "A generated head" || kit.data.missing.length !== 1) {
    throw new Error(`resolved: ${JSON.stringify(kit.data)}`);
  }
  held("list its kits", await client.GET("/api/studios/{studio}/gear/{gear}/kits", {
    params: { path: mine },
  }));
  refused("delete gear in use", 409, await client.DELETE("/api/studios/{studio}/gear/{gear}", {
    params: { path: mine, header: { "If-Match": changed.etag } },
  }));
  const adopted = held("adopt its calibration", await client.POST(
    "/api/studios/{studio}/gear/{gear}/calibration",
    { params: { path: mine, query: { adopt: true }, header: { "If-Match": changed.etag } } },
  ));
  held("list its revisions", await client.GET("/api/studios/{studio}/gear/{gear}/revisions", {
    params: { path: mine },
  }));
  held("read a revision", await client.GET(
    "/api/studios/{studio}/gear/{gear}/revisions/{revision}",
    { params: { path: { ...mine, revision: 1 } } },
  ));
  const file = held("export gear", await client.GET("/api/studios/{studio}/gear/export", {
    params: { path: at },
  }));
  held("try an import", await client.POST("/api/studios/{studio}/gear/import", {
    params: { path: at, query: { trial: true } },
    body: file.data as never,
  }));
  const followed = held("read the kit", await client.GET("/api/studios/{studio}/kits/{kit}", {
    params: { path: { studio, kit: kit.data.id } },
  }));
  held("delete the kit", await client.DELETE("/api/studios/{studio}/kits/{kit}", {
    params: { path: { studio, kit: kit.data.id }, header: { "If-Match": followed.etag } },
  }));
  held("delete gear", await client.DELETE("/api/studios/{studio}/gear/{gear}", {
    params: { path: mine, header: { "If-Match": adopted.etag } },
  }));
}

async function locations(): Promise<void> {
  const made = held("make a location", await client.POST("/api/studios/{studio}/locations", {
    params: { path: { studio } },
    body: { name: "A pier of nobody's", latitude_deg: 54.2, longitude_deg: -3.1 },
  }));
  const mine = { studio, location: made.data.id };
  held("list locations", await client.GET("/api/studios/{studio}/locations", {
    params: { path: { studio } },
  }));
  held("read its sun", await client.GET("/api/studios/{studio}/locations/{location}/sun", {
    params: { path: mine, query: { date: "2026-03-20" } },
  }));
  held("list the setups there", await client.GET("/api/studios/{studio}/locations/{location}/setups", {
    params: { path: mine },
  }));
  const changed = held("change a location", await client.PUT("/api/studios/{studio}/locations/{location}", {
    params: { path: mine, header: { "If-Match": made.etag } },
    body: { ...made.data.document, hazards: ["Wet boards."] },
  }));
  held("read a location", await client.GET("/api/studios/{studio}/locations/{location}", {
    params: { path: mine },
  }));
  held("delete a location", await client.DELETE("/api/studios/{studio}/locations/{location}", {
    params: { path: mine, header: { "If-Match": changed.etag } },
  }));
}

/** Only a person makes tokens: by a session, and with its proof. */
async function tokens(): Promise<void> {
  const stranger = createClient<paths>({ baseUrl: address });
  const entered = await stranger.POST("/api/session", { body: { email, password } });
  const session = held("sign in", entered).data;
  const person = createClient<paths>({
    baseUrl: address,
    headers: {
      Cookie: (entered.response.headers.get("Set-Cookie") ?? "").split(";")[0],
      "X-CSRF-Token": session.csrf_token,
    },
  });
  const made = held("make a token", await person.POST("/api/tokens", {
    body: { name: "generated", at_most: "reader", days: 7 },
  })).data;
  held("list tokens", await person.GET("/api/tokens"));
  held("delete a token", await person.DELETE("/api/tokens/{token}", {
    params: { path: { token: made.id } },
  }));
}

try {
  held("list studios", await client.GET("/api/studios"));
  await setups();
  await kits();
  await gear();
  await locations();
  await tokens();
  console.log("done");
} catch (trouble) {
  console.log(`${trouble}`);
  process.exitCode = 1;
}
