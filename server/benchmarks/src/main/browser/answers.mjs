// How long the engine takes in a browser to answer about the twelve lights, part by part.
//   node answers.mjs [folder]              runs in this node
//   node answers.mjs [folder] --serve 8377 serves a page that does the same in whatever browser opens it
// The folder has the compiled classes and resources of the server (server/target/classes).
import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';

const UNDER_THE_HAND = ['strip', 'lights', 'side'];
const WANTED = [
  undefined, ['strip'], ['strip', 'lights'], ['quick_plan'], ['plan'], ['strip', 'lights', 'quick_plan'], UNDER_THE_HAND,
];
const WARM = 100;
const COUNTED = 200;

const [folder = 'server/target/classes', mode, port] = process.argv.slice(2);
const moduleText = readFileSync(`${folder}/lampwright/assets/engine.js`, 'utf8');
const setup = readFileSync(
  new URL('../resources/lampwright/benchmarks/twelve-lights.json', import.meta.url), 'utf8');

function phrases() {
  // As the editor hands them on: neither its own words nor those of the server's pages.
  const entries = ['caution', 'drawing', 'wording']
    .flatMap(room => readFileSync(`${folder}/lampwright/language/en/${room}.properties`, 'utf8').split('\n'))
    .filter(line => line.includes('=') && !line.startsWith('#'))
    .map(line => [line.slice(0, line.indexOf('=')), line.slice(line.indexOf('=') + 1)]);
  return Object.fromEntries(entries);
}

const base = {
  document: JSON.parse(setup), language: 'en', lengths: 'metres', stops: 'tenths', phrases: phrases(),
};

// Also runs in the page, so it knows nothing but its parameters.
async function measure(answer, base, wanted, warm, counted, tell) {
  for (const want of wanted) {
    const request = JSON.stringify(want ? { ...base, want } : base);
    const began = performance.now();
    const answered = JSON.parse(answer(request));
    const first = performance.now() - began;
    if (answered.problems.length > 0) throw new Error(JSON.stringify(answered.problems));
    for (let i = 0; i < warm; i++) answer(request);
    const times = [];
    for (let i = 0; i < counted; i++) {
      const start = performance.now();
      answer(request);
      times.push(performance.now() - start);
    }
    times.sort((a, b) => a - b);
    const at = share => times[Math.floor(share * (counted - 1))].toFixed(1);
    tell(`${want ?? 'all'}: first ${first.toFixed(1)}, least ${at(0)}, median ${at(0.5)}, p95 ${at(0.95)} ms`);
    await new Promise(next => setTimeout(next));
  }
}

if (mode === '--serve') {
  const page = `<!doctype html><meta charset="utf-8"><title>Answers</title><pre></pre><script type="module">
import { answer } from '/engine.js';
const tell = line => { document.querySelector('pre').textContent += line + '\\n'; };
await (${measure})(answer, ${JSON.stringify(base).replaceAll('<', '\\u003c')}, ${JSON.stringify(WANTED.map(w => w ?? null))},
  ${WARM}, ${COUNTED}, tell);
tell('done');
</script>`;
  createServer((request, response) => {
    const isModule = request.url === '/engine.js';
    response.setHeader('Content-Type', isModule ? 'text/javascript' : 'text/html');
    response.end(isModule ? moduleText : page);
  }).listen(Number(port), '127.0.0.1');
} else {
  const { answer } = await import('data:text/javascript;base64,' + Buffer.from(moduleText).toString('base64'));
  await measure(answer, base, WANTED, WARM, COUNTED, console.log);
}
