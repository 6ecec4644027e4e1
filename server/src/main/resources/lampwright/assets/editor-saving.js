// Sends a document to the server and says truly how that went. Where the connection is away it tries
// again by itself, less and less often.

const PAUSES_S = [2, 5, 10, 30, 60];

export class Saving {
  /**
   * @param data of the page: studio, setup, from, csrf
   * @param tell is told each state: {state: "saving" | "saved" | "away" | "stale" | "wrong" |
   *     "out" | "refused", …}
   */
  constructor(data, tell) {
    this.data = data;
    this.tell = tell;
    this.collection = `/api/studios/${encodeURIComponent(data.studio)}/setups`;
    this.tries = 0;
    this.asked = null;
    globalThis.addEventListener?.("online", () => this.again());
  }

  get address() {
    return `${this.collection}/${encodeURIComponent(this.data.setup)}`;
  }

  /**
   * @param asked {document, revision, key}: what is saved, the revision that it is made from, the
   *     key of a new one
   */
  save(asked) {
    this.asked = asked;
    this.tries = 0;
    return this.send();
  }

  // At once, where it waits for the connection.
  again() {
    if (this.waiting) {
      clearTimeout(this.waiting);
      this.waiting = 0;
      this.send();
    }
  }

  stop() {
    clearTimeout(this.waiting);
    this.waiting = 0;
    this.asked = null;
  }

  async send() {
    const asked = this.asked;
    this.tell({ state: "saving" });
    let answer;
    let body;
    try {
      answer = await fetch(...this.request(asked));
      body = await answer.json();
    } catch {
      this.wait();
      return;
    }
    if (answer.ok) {
      this.tell({ state: "saved", asked, setup: body.id, revision: body.revision, document: body.document });
    } else if (answer.status === 412) {
      await this.compare();
    } else if (answer.status === 422 || answer.status === 400) {
      this.tell({ state: "wrong", problems: body.errors ?? [], detail: body.detail });
    } else if (answer.status === 401 || answer.status === 403) {
      this.tell({ state: "out", detail: body.detail });
    } else if (answer.status >= 500 || answer.status === 429) {
      this.wait();
    } else {
      this.tell({ state: "refused", detail: body.detail });
    }
  }

  request(asked) {
    const headers = {
      "content-type": "application/json",
      accept: "application/json",
      "x-csrf-token": this.data.csrf,
    };
    const body = JSON.stringify(asked.document);
    return this.data.setup
      ? [this.address, { method: "PUT", headers: { ...headers, "if-match": `"${asked.revision}"` }, body }]
      : [
        this.collection + this.data.from,
        { method: "POST", headers: { ...headers, "idempotency-key": `"${asked.key}"` }, body },
      ];
  }

  wait() {
    const seconds = PAUSES_S[Math.min(this.tries, PAUSES_S.length - 1)];
    this.tries += 1;
    this.waiting = setTimeout(() => {
      this.waiting = 0;
      this.send();
    }, seconds * 1000);
    this.tell({ state: "away", seconds });
  }

  // Somebody saved first: what theirs is.
  async compare() {
    try {
      const answer = await fetch(this.address, { headers: { accept: "application/json" } });
      if (!answer.ok) {
        this.tell({ state: "refused", detail: (await answer.json()).detail });
        return;
      }
      const theirs = await answer.json();
      this.tell({ state: "stale", revision: theirs.revision, by: theirs.changed_by, document: theirs.document });
    } catch {
      this.wait();
    }
  }
}
