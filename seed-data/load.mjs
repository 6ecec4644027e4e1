// Loads the demo's files into a studio of one's own through the public API, as any program would.
//
//   LAMPWRIGHT_TOKEN=… node seed-data/load.mjs http://127.0.0.1:8080 [studio [few]]
//
// With few, only the setups and kits that LAMPWRIGHT_DEMO=few brings too come in, with all gear and locations.
// The token is an owner's or an author's; README.md says how to make one. Sent again after a break it
// goes on: each thing has an Idempotency-Key of its own, so nothing is made twice. Everything is made
// by whoever holds the token, and today: the years and the other hands come only with an archive.

import { readFile } from 'node:fs/promises';

const [address, wanted, part] = process.argv.slice(2);
const token = process.env.LAMPWRIGHT_TOKEN;
if (!address || !token) {
  console.error('LAMPWRIGHT_TOKEN=… node load.mjs ADDRESS [STUDIO [few]]');
  process.exit(2);
}
const folder = new URL('studio/', import.meta.url);
const json = async (name) => JSON.parse(await readFile(new URL(name, folder), 'utf8'));

/** Sends one request; ends the program with the server's own words where it is refused. */
async function call(method, path, { body, key, type = 'application/json', etag } = {}) {
  const headers = { Authorization: `Bearer ${token}` };
  if (body) headers['Content-Type'] = type;
  if (key) headers['Idempotency-Key'] = `quernhouse-${key}`;
  if (etag) headers['If-Match'] = etag;
  const sent = body && type === 'application/json' ? JSON.stringify(body) : body;
  const answer = await fetch(address + path, { method, headers, body: sent });
  if (!answer.ok) {
    console.error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    process.exit(1);
  }
  const told = answer.status === 204 ? {} : await answer.json();
  return { ...told, etag: answer.headers.get('ETag') };
}

const studio = wanted ?? (await call('GET', '/api/studios')).items[0].id;
const at = `/api/studios/${studio}`;
const all = await json('studio.json');
const contents = part === 'few' ? { ...all, ...all.few } : all;

const gear = {};
for (const name of contents.gear) {
  const body = await json(`gear/${name}.json`);
  gear[name] = (await call('POST', `${at}/gear`, { body, key: name })).id;
}
console.log(`${contents.gear.length} pieces of gear`);

for (const name of contents.kits) {
  const body = await json(`kits/${name}.json`);
  body.gear = body.gear.map((use) => ({ ...use, id: gear[use.id] }));
  await call('POST', `${at}/kits`, { body, key: name });
}
console.log(`${contents.kits.length} kits`);

const locations = {};
for (const name of contents.locations) {
  const body = await json(`locations/${name}.json`);
  locations[name] = (await call('POST', `${at}/locations`, { body, key: name })).id;
}
console.log(`${contents.locations.length} locations`);

let done = 0;
for (const name of contents.setups) {
  await load(name, await json(`setups/${name}.json`), await json(`histories/${name}.json`));
  console.log(`${++done} of ${contents.setups.length} setups: ${name}`);
}

async function load(name, document, history) {
  const place = document.occasion?.place;
  if (place?.location) place.location = locations[place.location];
  const setup = await call('POST', `${at}/setups`, { body: document, key: name });
  const of = `${at}/setups/${setup.id}`;

  const state = await call('GET', `${of}/state`);
  if (state.state !== history.state) {
    await call('PUT', `${of}/state`, {
      body: { state: history.state, archived: false },
      etag: state.etag,
    });
  }
  let picture;
  if (history.picture) {
    const caption = encodeURIComponent(history.picture.caption);
    picture = await call('POST', `${of}/pictures?kind=final&caption=${caption}`, {
      body: await readFile(new URL(`pictures/${name}.jpg`, folder)),
      type: 'image/jpeg',
      key: `${name}-picture`,
    });
  }
  for (const take of history.takes) {
    await call('POST', `${of}/takes`, { body: { ...take.document, setup_revision: 1 } });
  }
  for (const [number, note] of history.notes.entries()) {
    const body = note.document;
    if (body.about?.kind === 'picture') body.about.picture = picture.id;
    await call('POST', `${of}/notes`, { body, key: `${name}-note-${number}` });
  }
}
