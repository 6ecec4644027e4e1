// A client made from the API's description alone: its types are generated, its calls are checked
// by the compiler. It comes in by a token, and makes, reads, changes and deletes each kind of thing.
import createClient from "openapi-fetch";
import type { paths } from "./api.js";

declare const process: { argv: string[]; exitCode: number };

const [address, token] = process.argv.slice(2);
const client = createClient<paths>({
  baseUrl: address,
  headers: { Authorization: `Bearer ${token}` },
});

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
  held("delete a setup", await client.DELETE("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine, header: { "If-Match": changed.etag } },
  }));
  refused("read what is gone", 404, await client.GET("/api/studios/{studio}/setups/{setup}", {
    params: { path: mine },
  }));
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

async function tokens(): Promise<void> {
  const made = held("make a token", await client.POST("/api/tokens", {
    body: { name: "generated" },
  })).data;
  held("list tokens", await client.GET("/api/tokens"));
  held("delete a token", await client.DELETE("/api/tokens/{token}", {
    params: { path: { token: made.id } },
  }));
}

try {
  held("list studios", await client.GET("/api/studios"));
  await setups();
  await kits();
  await tokens();
  console.log("done");
} catch (trouble) {
  console.log(`${trouble}`);
  process.exitCode = 1;
}
