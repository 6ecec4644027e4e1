// Keeps setups on this phone, whole: their pages, and every asset that these need. What is new is fetched
// completely before it takes the place of what was there.

import { cacheOf, leaveOnlyTo, ourCaches, PLAINLY } from "./field-caches.js";
import { all, find, KEPT, put, remove, tellNews } from "./field-store.js";

const PATIENCE_MS = 60_000;
const LOCK = "lampwright-keeping";

/** What can be kept where: without a worker (an old browser, no TLS) nothing can. */
export const canKeep = () => "serviceWorker" in navigator && "caches" in globalThis && "locks" in navigator;

export function register() {
  return navigator.serviceWorker.register("/worker.js", { type: "module", scope: "/" });
}

class NotKept extends Error {
  constructor(status) {
    super(`Status ${status}.`);
    this.status = status;
  }
}

async function get(address) {
  const answer = await fetch(address, { cache: "no-store", signal: AbortSignal.timeout(PATIENCE_MS) });
  if (!answer.ok || answer.redirected) {
    throw new NotKept(answer.status);
  }
  return answer;
}

const page = (text) => new DOMParser().parseFromString(text, "text/html");

export const dataOf = (document) => JSON.parse(document.querySelector("[data-field]").dataset.field);

// What a page names of this server's assets.
const assetsIn = (text) => [...text.matchAll(/(?:href|src)="(\/assets\/[^"]+)"/g)].map((found) => found[1]);

async function putText(cache, path, answer, text) {
  const bytes = new TextEncoder().encode(text);
  const headers = new Headers(answer.headers);
  // They told of the bytes on the line.
  ["Content-Encoding", "Content-Length"].forEach((name) => headers.delete(name));
  await cache.put(path, new Response(bytes, { headers }));
  return bytes.length;
}

class Keeping {
  constructor(tell) {
    this.tell = tell;
    this.records = [];
  }

  // The pages of one setup, and whatever they need; its record is written at the end of all.
  async take(path) {
    const answer = await get(`${path}/field`);
    const text = await answer.text();
    const data = dataOf(page(text));
    this.build ??= data.build;
    if (data.build !== this.build) {
      throw new NotKept("another build");
    }
    const cache = await caches.open(cacheOf(data.build));
    let bytes = await putText(cache, `${path}/field`, answer, text);
    const assets = new Set([...data.assets, ...assetsIn(text)]);
    bytes += await this.sheet(cache, path, assets);
    const list = await get(data.list);
    const listText = await list.text();
    await putText(cache, data.list, list, listText);
    assetsIn(listText).forEach((asset) => assets.add(asset));
    await this.assets(cache, assets);
    this.records.push({
      path, bytes, person: data.person, title: data.title, revision: data.revision, build: data.build, at: Date.now(),
    });
  }

  async sheet(cache, path, assets) {
    try {
      const answer = await get(`${path}/sheet`);
      const text = await answer.text();
      assetsIn(text).forEach((asset) => assets.add(asset));
      return await putText(cache, `${path}/sheet`, answer, text);
    } catch (failure) {
      if (failure instanceof NotKept && failure.status === 404) {
        return 0;
      }
      throw failure;
    }
  }

  async assets(cache, names) {
    const missing = [];
    for (const name of names) {
      if (!await cache.match(name, PLAINLY)) {
        missing.push(name);
      }
    }
    let done = 0;
    await Promise.all(missing.map(async (name) => {
      await cache.put(name, await get(name));
      done += 1;
      this.tell(done, missing.length);
    }));
  }

  async settle(gone) {
    for (const record of this.records) {
      await put(KEPT, record);
    }
    for (const path of gone) {
      await remove(KEPT, path);
    }
    const needed = new Set((await all(KEPT)).map((kept) => cacheOf(kept.build)));
    for (const name of await ourCaches()) {
      if (!needed.has(name)) {
        await caches.delete(name);
      }
    }
    tellNews();
  }
}

/**
 * Keeps setups, and where the server has another build than the rest is kept of, the rest anew with them.
 *
 * @param paths of the setups' pages; none for the rest alone
 * @param tell hears how many of how many assets are here
 */
export function keep(paths, person, tell = () => {}) {
  return navigator.locks.request(LOCK, async () => {
    await leaveOnlyTo(person);
    await register();
    const keeping = new Keeping(tell);
    for (const path of paths) {
      await keeping.take(path);
    }
    const build = keeping.build ?? await newestBuild();
    const gone = [];
    for (const kept of await all(KEPT)) {
      if (kept.build !== build && !paths.includes(kept.path)) {
        try {
          await keeping.take(kept.path);
        } catch (failure) {
          if (!(failure instanceof NotKept) || failure.status !== 404) {
            throw failure;
          }
          gone.push(kept.path);
        }
      }
    }
    await keeping.settle(gone);
    // The browser may refuse; then it may clear what is kept when the phone is full.
    await navigator.storage?.persist?.();
  });
}

/** The build of the server as it is now. */
export async function newestBuild() {
  const text = await (await get("/worker.js")).text();
  return /\/assets\/([0-9a-f]+)\//.exec(text)[1];
}

/** The revision that the server has now. */
export async function newestRevision(path) {
  const answer = await get(`/api${path}`);
  return (await answer.json()).revision;
}

export const keptOf = (path) => find(KEPT, path);
