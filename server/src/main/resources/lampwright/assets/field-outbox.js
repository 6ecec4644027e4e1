// Entries of the day on their way to the server: each is on the disk before anybody is told that it is
// logged, has one key for ever, and is sent in its order, by one sender at a time, until the server says
// that it holds it. Pages and the service worker run the same.

import { add, all, ENTRIES, put, remove, tellNews } from "./field-store.js";

export const WAITING = "waiting";
export const SENT = "sent";
export const REFUSED = "refused";

const PATIENCE_MS = 20_000;
const FIRST_PAUSE_MS = 2_000;
const LONGEST_PAUSE_MS = 60_000;

// So many that are sent stay to be looked at without signal.
const REMEMBERED = 200;

const LOCK = "lampwright-sending";
export const SYNC_TAG = "lampwright-send";

// Refusals that a later try may not get: they say something of the moment, not of the entry.
const PASSING = new Set([408, 425, 429]);

function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

// By the clocks of the place, to the millisecond, so that a list by time is in the order of the taps.
function atThere(now, offset) {
  const [, sign, hours, minutes] = /^([+-])(\d\d):(\d\d)$/.exec(offset);
  const ahead = (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
  return new Date(now + ahead * 60_000).toISOString().replace("Z", offset);
}

/**
 * Puts a take on the disk of this phone.
 *
 * @param of whose it is and where it goes: person, path of the setup's page, title, offset of its clocks
 * @param take without time and key
 */
export async function log(of, take, now = Date.now()) {
  const last = (await all(ENTRIES)).reduce((latest, entry) => Math.max(latest, entry.at), 0);
  // No two of one phone at the same instant, also where its clock was put back by a little.
  const at = now <= last && last - now < 60_000 ? last + 1 : now;
  const entry = {
    person: of.person, path: of.path, title: of.title, at, state: WAITING,
    take: { ...take, at: atThere(at, of.offset), client_key: newKey() },
  };
  const place = await add(ENTRIES, entry);
  tellNews();
  return { ...entry, place };
}

export async function entriesOf(person) {
  return (await all(ENTRIES)).filter((entry) => entry.person === person);
}

export async function throwAway(place) {
  await remove(ENTRIES, place);
  tellNews();
}

// What was set aside goes to its place in the order again.
export async function tryAgain(entry) {
  await put(ENTRIES, { ...entry, state: WAITING, problem: undefined });
  tellNews();
}

class NoAnswer extends Error {}

async function ask(address, request) {
  let answer;
  try {
    answer = await fetch(address, { ...request, cache: "no-store", signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch (failure) {
    throw new NoAnswer(failure.message);
  }
  // Somebody on the way, such as the sign-in of a public network, answered in the server's place.
  if (answer.redirected) {
    throw new NoAnswer("Answered by somebody else.");
  }
  return answer;
}

async function jsonOf(answer) {
  try {
    return await answer.json();
  } catch {
    throw new NoAnswer("No JSON.");
  }
}

/** Who is signed in, with the token of that session; undefined where nobody is. */
export async function session() {
  const answer = await ask("/api/session", { headers: { Accept: "application/json" } });
  if (answer.status === 401) {
    return undefined;
  }
  if (!answer.ok) {
    throw new NoAnswer(`Status ${answer.status}.`);
  }
  const { person, csrf_token: csrfToken } = await jsonOf(answer);
  return { person: person.id, csrfToken };
}

function pauseAfter(answer) {
  const seconds = Number(answer.headers.get("Retry-After"));
  return seconds > 0 ? seconds * 1000 : undefined;
}

const send = (entry, csrfToken) => ask(`/api${entry.path}/takes`, {
  method: "POST",
  headers: { "Content-Type": "application/json", Accept: "application/json", "X-CSRF-Token": csrfToken },
  body: JSON.stringify(entry.take),
});

// What became of one entry: "sent", "refused", "again" with a fresh token, "signed-out", or a NoAnswer.
async function outcome(entry, csrfToken) {
  const answer = await send(entry, csrfToken);
  if (answer.status === 200 || answer.status === 201) {
    const { number, document } = await jsonOf(answer);
    if (document?.client_key !== entry.take.client_key) {
      throw new NoAnswer("Not the answer to this.");
    }
    await put(ENTRIES, { ...entry, state: SENT, number, problem: undefined });
    return SENT;
  }
  if (answer.status === 401) {
    return "signed-out";
  }
  if (answer.status >= 500 || PASSING.has(answer.status)) {
    throw Object.assign(new NoAnswer(`Status ${answer.status}.`), { pauseMs: pauseAfter(answer) });
  }
  const problem = await jsonOf(answer);
  if (answer.status === 403 && String(problem.type).endsWith("/not-proven")) {
    return "again";
  }
  const reasons = (problem.errors ?? []).map((error) => error.message);
  await put(ENTRIES, {
    ...entry, state: REFUSED, problem: reasons.length > 0 ? reasons.join(" ") : problem.detail ?? problem.title,
  });
  return REFUSED;
}

async function forgetOldest() {
  const sent = (await all(ENTRIES)).filter((entry) => entry.state === SENT);
  for (const entry of sent.slice(0, Math.max(0, sent.length - REMEMBERED))) {
    await remove(ENTRIES, entry.place);
  }
}

// Sends what waits, the oldest first, and looks again after each: another tab may have logged one.
async function sendAll(tell) {
  let who;
  let provenAgain = false;
  for (;;) {
    const waiting = (await all(ENTRIES)).filter((entry) => entry.state === WAITING);
    if (waiting.length === 0) {
      await forgetOldest();
      return { state: "done" };
    }
    who ??= await session();
    if (who === undefined) {
      return { state: "signed-out" };
    }
    const entry = waiting.find((one) => one.person === who.person);
    if (entry === undefined) {
      return { state: "of-another" };
    }
    const left = waiting.filter((one) => one.person === who.person).length;
    tell({ state: "sending", left });
    const came = await outcome(entry, who.csrfToken);
    if (came === "signed-out" || (came === "again" && provenAgain)) {
      return { state: "signed-out" };
    }
    if (came === "again") {
      who = undefined;
    }
    provenAgain = came === "again";
    tellNews();
  }
}

/** One sender of this tab or worker; the lock holds back those of others. */
export class Sender {
  /**
   * @param tell hears {state}: "sending" with what is left, "away" with the pause in ms, "signed-out",
   *     "of-another", "done"
   */
  constructor(tell = () => {}) {
    this.tell = tell;
    this.failures = 0;
  }

  // Whoever asks while it is at work has it look once more when it is through.
  go() {
    clearTimeout(this.timer);
    if (this.work) {
      this.isAsked = true;
      return this.work;
    }
    this.work = this.run().finally(() => {
      this.work = undefined;
      if (this.isAsked) {
        this.isAsked = false;
        this.go();
      }
    });
    return this.work;
  }

  async run() {
    try {
      const end = await navigator.locks.request(LOCK, () => sendAll(this.tell));
      this.failures = 0;
      this.tell(end);
      return end;
    } catch (failure) {
      if (!(failure instanceof NoAnswer)) {
        throw failure;
      }
      return this.pause(failure.pauseMs);
    }
  }

  pause(askedMs) {
    this.failures += 1;
    const pauseMs = askedMs ?? Math.min(LONGEST_PAUSE_MS, FIRST_PAUSE_MS * 2 ** (this.failures - 1));
    // Two phones that lost the server at the same moment do not come back at the same moment.
    this.timer = setTimeout(() => this.go(), pauseMs * (0.75 + Math.random() / 2));
    const end = { state: "away", pauseMs };
    this.tell(end);
    return end;
  }
}
