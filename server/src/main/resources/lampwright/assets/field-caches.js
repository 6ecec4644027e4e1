// The copies of kept pages on this phone: one cache for each build of the server, with the assets that its
// pages name, so that no page of one build ever meets a script of another.

import { SENT } from "./field-outbox.js";
import { add, all, clear, DAYS, ENTRIES, find, FORGOTTEN, KEPT, remove, tellNews } from "./field-store.js";

const PREFIX = "lampwright-kept-";

// Held only while copies are put in or taken out, never while something is fetched.
const LOCK = "lampwright-copies";

export const cacheOf = (build) => PREFIX + build;

// Answers vary by headers that a cache cannot see; a kept page is one person's anyway.
export const PLAINLY = { ignoreVary: true, ignoreSearch: true };

const OF_SETUP = /^(\/studios\/[^/]+\/setups\/[^/]+)\/(field|sheet)$/;
const LIST = /^\/studios\/[^/]+\/field$/;

export const isList = (path) => LIST.test(path);

export const mayBeKept = (path) => OF_SETUP.test(path) || isList(path);

export async function ourCaches() {
  return (await caches.keys()).filter((name) => name.startsWith(PREFIX));
}

export const holdingCopies = (act) => navigator.locks.request(LOCK, act);

/** The copy of a page; undefined where none is kept. */
export async function copyOf(path) {
  const [, setup] = OF_SETUP.exec(path) ?? [];
  const kept = setup ? await find(KEPT, setup) : (await all(KEPT)).find((one) => one.list === path);
  return kept && caches.match(path, { ...PLAINLY, cacheName: cacheOf(kept.build) });
}

/** Where the kept pages are listed; undefined where nothing is kept. */
export async function listPath() {
  const [first] = await all(KEPT);
  return first?.list;
}

/** The bytes of all that is kept. */
export async function room() {
  let bytes = 0;
  for (const name of await ourCaches()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      bytes += (await (await cache.match(request, PLAINLY)).blob()).size;
    }
  }
  return bytes;
}

/** Takes one setup from this phone, and everything with the last. */
export async function forget(path) {
  await holdingCopies(async () => {
    const kept = await find(KEPT, path);
    await remove(KEPT, path);
    if ((await all(KEPT)).length === 0) {
      await Promise.all((await ourCaches()).map((name) => caches.delete(name)));
    } else if (kept) {
      const cache = await caches.open(cacheOf(kept.build));
      await Promise.all(["field", "sheet"].map((page) => cache.delete(`${path}/${page}`, PLAINLY)));
    }
  });
  tellNews();
}

/**
 * Takes everything of a person from this phone but what is not sent: nobody else has that. It stays out of
 * sight until the same person signs in again.
 */
export async function forgetAll() {
  await holdingCopies(async () => {
    await add(FORGOTTEN, true);
    await Promise.all((await ourCaches()).map((name) => caches.delete(name)));
    await clear(KEPT);
    await clear(DAYS);
    for (const entry of await all(ENTRIES)) {
      if (entry.state === SENT) {
        await remove(ENTRIES, entry.place);
      }
    }
  });
  tellNews();
}

/** Leaves nothing of anybody else to whoever is signed in now. */
export async function leaveOnlyTo(person) {
  const others = (await Promise.all([KEPT, DAYS].map(all))).flat().some((one) => one.person !== person);
  if (others) {
    await forgetAll();
  }
}
