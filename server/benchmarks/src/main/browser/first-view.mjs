// How soon a phone sees a page, and what the page weighs.
//   MEMBER_EMAIL=… MEMBER_PASSWORD=… node first-view.mjs http://127.0.0.1:8080 path [path …]
// Needs chromedriver and Chromium. Each page is opened with an empty cache, five times, on a phone's screen whose line has 150 ms of
// latency and 1.6 Mbit/s and whose processor is four times slower than this machine's (the mobile profile that is usual for such
// measurements: "slow 4G"). Prints the median and worst first and largest contentful paint (W3C Paint Timing, Largest Contentful Paint)
// and the bytes that came over the line, pictures apart. Without throttling in the same run, for the ratio.
import { spawn } from 'node:child_process';

const RUNS = 5;
const PHONE = { width: 360, height: 740, deviceScaleFactor: 2, mobile: true };
const SLOW = { name: 'throttled', latency: 150, down: 1_600_000 / 8, up: 750_000 / 8, slower: 4 };
const FREE = { name: 'free', latency: 0, down: -1, up: -1, slower: 1 };

const [base, ...paths] = process.argv.slice(2);
const { MEMBER_EMAIL: email, MEMBER_PASSWORD: password } = process.env;
if (!base || paths.length === 0 || !email || !password) {
  console.error('MEMBER_EMAIL=… MEMBER_PASSWORD=… node first-view.mjs http://127.0.0.1:8080 path [path …]');
  process.exit(2);
}

const driverPort = 9515 + Math.floor(Math.random() * 400);
const driver = spawn('chromedriver', [`--port=${driverPort}`], { stdio: 'ignore' });

async function ask(method, path, body) {
  const answer = await fetch(`http://127.0.0.1:${driverPort}${path}`, {
    method, body: body === undefined ? undefined : JSON.stringify(body),
  });
  const { value } = await answer.json();
  if (!answer.ok) throw new Error(`${path}: ${value.message}`);
  return value;
}

async function started() {
  for (let i = 0; i < 100; i++) {
    try { await ask('GET', '/status'); return; } catch { await new Promise(done => setTimeout(done, 100)); }
  }
  throw new Error('chromedriver did not start.');
}

async function signedIn() {
  const answer = await fetch(`${base}/api/session`, {
    method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify({ email, password }),
  });
  if (!answer.ok) throw new Error(`Signing in was answered ${answer.status}.`);
  const [name, value] = answer.headers.getSetCookie()[0].split(';')[0].split('=');
  return { name, value, path: '/' };
}

// Runs in the page.
const SEEN = `const done = arguments[0];
const wait = () => {
  const paint = performance.getEntriesByName('first-contentful-paint')[0];
  if (!paint || document.readyState !== 'complete') { requestAnimationFrame(wait); return; }
  let largest = 0;
  new PerformanceObserver(list => { for (const entry of list.getEntries()) largest = entry.startTime; })
    .observe({ type: 'largest-contentful-paint', buffered: true });
  setTimeout(() => {
    const parts = [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')];
    const isPicture = part => /\\/pictures\\//.test(part.name);
    done({
      first: paint.startTime, largest,
      answered: parts[0].responseStart, whole: parts[0].responseEnd,
      bytes: parts.filter(part => !isPicture(part)).reduce((sum, part) => sum + part.transferSize, 0),
      requests: parts.length,
    });
  }, 300);
};
wait();`;

const median = numbers => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
const ms = number => `${Math.round(number)} ms`;

try {
  await started();
  const { sessionId } = await ask('POST', '/session', { capabilities: { alwaysMatch: {
    browserName: 'chrome',
    'goog:chromeOptions': { binary: process.env.CHROMIUM ?? '/usr/bin/chromium', args: [
      '--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking',
      '--disable-component-update', '--disable-sync', '--hide-scrollbars'] },
  } } });
  const session = `/session/${sessionId}`;
  const tell = (cmd, params = {}) => ask('POST', `${session}/goog/cdp/execute`, { cmd, params });
  await ask('POST', `${session}/url`, { url: `${base}/sign-in` });
  await ask('POST', `${session}/cookie`, { cookie: await signedIn() });
  await tell('Emulation.setDeviceMetricsOverride', PHONE);
  for (const path of paths) {
    for (const line of [FREE, SLOW]) {
      const runs = [];
      for (let i = 0; i <= RUNS; i++) {
        await ask('POST', `${session}/url`, { url: 'about:blank' });
        await tell('Network.enable');
        await tell('Network.clearBrowserCache');
        await tell('Network.emulateNetworkConditions', {
          offline: false, latency: line.latency, downloadThroughput: line.down, uploadThroughput: line.up,
        });
        await tell('Emulation.setCPUThrottlingRate', { rate: line.slower });
        await ask('POST', `${session}/url`, { url: base + path });
        const seen = await ask('POST', `${session}/execute/async`, { script: SEEN, args: [] });
        if (i > 0) runs.push(seen); // The first warms the server.
      }
      const of = name => runs.map(run => run[name]);
      console.log(`${path}  ${line.name}: answered ${ms(median(of('answered')))}, whole ${ms(median(of('whole')))}, `
        + `first paint ${ms(median(of('first')))} (worst ${ms(Math.max(...of('first')))}), largest ${ms(median(of('largest')))} `
        + `(worst ${ms(Math.max(...of('largest')))}), ${(median(of('bytes')) / 1000).toFixed(1)} kB without pictures in ${runs[0].requests} requests`);
    }
  }
  await ask('DELETE', session);
} finally {
  driver.kill();
}
