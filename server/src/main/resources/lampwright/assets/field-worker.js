// Stands between the pages and the network: gives the copies that are kept on this phone, sends what waits
// when the browser says that there is signal, and forgets with whoever signs out.

import { copyOf, forgetAll, isList, leaveOnlyTo, listPath, mayBeKept, PLAINLY } from "./field-caches.js";
import { Sender, session, SYNC_TAG } from "./field-outbox.js";

// With one bar of signal a list is not waited for.
const PATIENCE_MS = 1_500;

// It keeps no state between builds, so the newest serves at once.
self.addEventListener("install", () => self.skipWaiting());

self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (origin !== self.location.origin) {
    return;
  }
  if (request.method === "GET" && pathname.startsWith("/assets/")) {
    event.respondWith(asset(request));
  } else if (request.method === "GET" && request.mode === "navigate") {
    event.respondWith(page(request, pathname));
  } else if (request.method === "POST" && ["/sign-out", "/sign-in"].includes(pathname)) {
    event.respondWith(changeOfPerson(request, pathname));
  }
});

self.addEventListener("sync", (event) => {
  if (event.tag === SYNC_TAG) {
    event.waitUntil(sendOnce());
  }
});

// The browser tries again by itself where this fails.
async function sendOnce() {
  const end = await new Sender().go();
  if (end.state === "away") {
    throw new Error("No signal.");
  }
}

// An address of an asset never changes its bytes.
async function asset(request) {
  return await caches.match(request, PLAINLY) ?? fetch(request);
}

async function page(request, path) {
  const copy = mayBeKept(path) ? await copyOf(path) : undefined;
  if (copy && !isList(path)) {
    return copy;
  }
  try {
    return await fetchFor(request, copy ? PATIENCE_MS : undefined);
  } catch {
    return copy ?? away("page");
  }
}

function fetchFor(request, patienceMs) {
  const answer = fetch(request);
  return patienceMs === undefined ? answer : Promise.race([answer, new Promise((_, reject) => {
    setTimeout(() => reject(new Error("Too slow.")), patienceMs);
  })]);
}

// Leads to what is kept; where nothing is, the browser says that there is no connection.
async function away(what) {
  const list = await listPath();
  return list ? Response.redirect(`${list}?away=${what}`, 303) : Response.error();
}

async function changeOfPerson(request, path) {
  let answer;
  try {
    answer = await fetch(request);
  } catch {
    return away(path.slice(1));
  }
  if (path === "/sign-out") {
    await forgetAll();
  } else if (answer.type === "opaqueredirect") {
    // Without an answer the page that comes next looks.
    const who = await session().catch(() => undefined);
    if (who) {
      await leaveOnlyTo(who.person);
    }
  }
  return answer;
}
