// Keeps setups on this phone, whole: their pages, and every asset that these need. All of it is fetched
// before any of it takes the place of what was there.

import { cacheOf, holdingCopies, leaveOnlyTo, ourCaches, PLAINLY } from "./field-caches.js";
import { all, count, find, FORGOTTEN, KEPT, put, remove, tellNews } from "./field-store.js";

const PATIENCE_MS = 60_000;
const LOCK = "lampwright-keeping";

/** Without a worker (an old browser, no TLS) nothing can be kept. */
export const canKeep = () => "serviceWorker" in navigator && "caches" in globalThis && "locks" in navigator;

export function register() {
  return navigator.serviceWorker.register("/worker.js", { type: "module", scope: "/" });
}

/** Something was not kept; `reason` is a phrase's key, `part` what stands in it. */
export class NotKept extends Error {
  constructor(reason, part) {
    super(`${reason} ${part ?? ""}`);
    this.reason = reason;
    this.part = part;
  }
}

async function get(address, cache) {
  let answer;
  try {
    answer = await fetch(address, { cache, signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch {
    throw new NotKept("copy.noSignal");
  }
  if (answer.redirected || answer.status === 401) {
    throw new NotKept("copy.signedOut");
  }
  if (!answer.ok) {
    throw new NotKept("copy.status", answer.status);
  }
  return answer;
}

const page = (text) => new DOMParser().parseFromString(text, "text/html");

export const dataOf = (document) => JSON.parse(document.querySelector("[data-field]").dataset.field);

// What a page names of this server's assets.
const assetsIn = (text) => [...text.matchAll(/(?:href|src)="(\/assets\/[^"]+)"/g)].map((found) => found[1]);

function copyFrom(answer, text) {
  const headers = new Headers(answer.headers);
  // They told of the bytes on the line.
  ["Content-Encoding", "Content-Length"].forEach((name) => headers.delete(name));
  return new Response(new TextEncoder().encode(text), { headers });
}

class Keeping {
  constructor(tell) {
    this.tell = tell;
    this.records = [];
    this.copies = new Map();
    this.assets = new Set();
    this.parts = { here: 0, all: 0 };
  }

  async fetched(address, cache = "no-store") {
    this.parts.all += 1;
    this.tell(this.parts.here, this.parts.all);
    const answer = await get(address, cache);
    const text = await answer.text();
    this.parts.here += 1;
    this.tell(this.parts.here, this.parts.all);
    return { answer, text };
  }

  async page(path) {
    const { answer, text } = await this.fetched(path);
    this.copies.set(path, copyFrom(answer, text));
    assetsIn(text).forEach((asset) => this.assets.add(asset));
    return text;
  }

  // The pages of one setup, and the names of whatever they need.
  async take(path) {
    const text = await this.page(`${path}/field`);
    const data = dataOf(page(text));
    this.build ??= data.build;
    if (data.build !== this.build) {
      throw new NotKept("copy.other");
    }
    data.assets.forEach((asset) => this.assets.add(asset));
    const sheet = await this.page(`${path}/sheet`);
    if (!this.copies.has(data.list)) {
      await this.page(data.list);
    }
    this.records.push({
      path, person: data.person, title: data.title, revision: data.revision, build: data.build, list: data.list,
      bytes: text.length + sheet.length, at: Date.now(),
    });
  }

  // An address of an asset never changes its bytes: what the page has loaded is not loaded again.
  async takeAssets() {
    const missing = [];
    for (const name of this.assets) {
      if (!await caches.match(name, { ...PLAINLY, cacheName: cacheOf(this.build) })) {
        missing.push(name);
      }
    }
    this.parts.all += missing.length;
    await Promise.all(missing.map(async (name) => {
      const answer = await get(name, "force-cache");
      this.copies.set(name, new Response(await answer.arrayBuffer(), { headers: answer.headers }));
      this.parts.here += 1;
      this.tell(this.parts.here, this.parts.all);
    }));
  }

  async settle(gone) {
    const cache = await caches.open(cacheOf(this.build));
    for (const [address, copy] of this.copies) {
      await cache.put(address, copy);
    }
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
  }
}

// Of another build than the server's now: one cache holds only one build's pages.
async function takeOlder(keeping, paths) {
  const gone = [];
  for (const kept of await all(KEPT)) {
    if (kept.build !== keeping.build && !paths.includes(kept.path)) {
      try {
        await keeping.take(kept.path);
      } catch (failure) {
        if (failure.part !== 404) {
          throw failure;
        }
        gone.push(kept.path);
      }
    }
  }
  return gone;
}

/**
 * Keeps setups, and where the server has another build than the rest is kept of, the rest anew with them.
 *
 * @param paths of the setups' pages
 * @param tell hears how many of how many parts are here
 * @throws NotKept and leaves everything as it was
 */
export function keep(paths, person, tell = () => {}) {
  return navigator.locks.request(LOCK, async () => {
    await leaveOnlyTo(person);
    await register();
    const forgotten = await count(FORGOTTEN);
    const keeping = new Keeping(tell);
    for (const path of paths) {
      await keeping.take(path);
    }
    const gone = await takeOlder(keeping, paths);
    await keeping.takeAssets();
    await holdingCopies(async () => {
      // Whoever signed out meanwhile leaves nothing here.
      if (await count(FORGOTTEN) !== forgotten || keeping.records.some((record) => record.person !== person)) {
        throw new NotKept("copy.signedOut");
      }
      try {
        await keeping.settle(gone);
      } catch (failure) {
        throw failure.name === "QuotaExceededError" ? new NotKept("copy.noRoom") : failure;
      }
    });
    tellNews();
    // The browser may refuse; then it may clear what is kept when the phone is full.
    await navigator.storage?.persist?.();
  });
}

/** The revision that the server has now; undefined without signal. */
export async function newestRevision(path) {
  try {
    const answer = await get(`/api${path}`, "no-store");
    return (await answer.json()).revision;
  } catch {
    return undefined;
  }
}

export const keptOf = (path) => find(KEPT, path);
