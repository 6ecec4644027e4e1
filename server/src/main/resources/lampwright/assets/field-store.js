// What a phone keeps on location, in IndexedDB: entries that wait to be sent, which setups are kept, how
// far each day is. Pages and the service worker share it.

const NAME = "lampwright-field";
const VERSION = 1;

export const ENTRIES = "entries";
export const KEPT = "kept";
export const DAYS = "days";

// Counts how often everything was forgotten, so that what is still being fetched knows.
export const FORGOTTEN = "forgotten";

// Tells every tab and the worker that something here is another.
export const NEWS = "lampwright-field";

let opened;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, VERSION);
    request.onupgradeneeded = () => {
      const entries = request.result.createObjectStore(ENTRIES, { keyPath: "place", autoIncrement: true });
      entries.createIndex("key", "take.client_key", { unique: true });
      request.result.createObjectStore(KEPT, { keyPath: "path" });
      request.result.createObjectStore(DAYS, { keyPath: "path" });
      request.result.createObjectStore(FORGOTTEN, { autoIncrement: true });
    };
    request.onsuccess = () => {
      // Another version of the page wants to change the shape: let it.
      request.result.onversionchange = () => request.result.close();
      request.result.onclose = () => {
        opened = undefined;
      };
      resolve(request.result);
    };
    request.onerror = () => {
      opened = undefined;
      reject(request.error);
    };
  });
  return opened;
}

// Runs an act on one store and gives its result once the whole transaction is on the disk, not before: what
// a page says is logged stays logged when the browser is killed in the next instant.
async function within(store, mode, act) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(store, mode, { durability: "strict" });
    const request = act(transaction.objectStore(store));
    transaction.oncomplete = () => resolve(request.result);
    transaction.onabort = () => reject(transaction.error ?? new Error("The transaction was broken off."));
  });
}

export const add = (store, value) => within(store, "readwrite", (of) => of.add(value));

export const put = (store, value) => within(store, "readwrite", (of) => of.put(value));

export const remove = (store, key) => within(store, "readwrite", (of) => of.delete(key));

export const clear = (store) => within(store, "readwrite", (of) => of.clear());

export const find = (store, key) => within(store, "readonly", (of) => of.get(key));

export const count = (store) => within(store, "readonly", (of) => of.count());

// In the order of their keys.
export const all = (store) => within(store, "readonly", (of) => of.getAll());

export function tellNews() {
  const channel = new BroadcastChannel(NEWS);
  channel.postMessage("changed");
  channel.close();
}

export function onNews(act) {
  new BroadcastChannel(NEWS).addEventListener("message", act);
}
