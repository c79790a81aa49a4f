// A judge from outside: Lighthouse, as a phone opens each screen for the first time.
//
//   node judge.mjs DIST --floor 90 --timed '#/' … -- '#/' '#/limits' …
//
// Every screen must have 100 in accessibility and best practices. Performance is measured on the timed ones,
// the median of three, for other work on the machine makes a run worse; below the floor it fails as well.
// The demo engine is opened first, so that the screens have something to show; what is stored stays. Before
// each timed run the service worker and every cache are cleared.

import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import { parseArgs } from "node:util";
import { brotliCompressSync, constants } from "node:zlib";
import { launch } from "chrome-launcher";
import lighthouse from "lighthouse";
import puppeteer from "puppeteer-core";

const KINDS = {
  ".html": "text/html; charset=utf-8", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml",
  ".wasm": "application/wasm", ".png": "image/png", ".woff2": "font/woff2", ".txt": "text/plain",
  ".webmanifest": "application/manifest+json",
};
// Bytes in a twentieth of a second: 800 kB/s. From loopback all would be there at once, before the page is
// painted first, and Lighthouse would take the module for something the painting waited for.
const PACE = 40_000;
const PACKED_ALREADY = [".png", ".woff2"];
const TIMES = 3;
const TIMED = {
  LCP: "largest-contentful-paint", FCP: "first-contentful-paint", SI: "speed-index",
  TBT: "total-blocking-time", CLS: "cumulative-layout-shift",
};

const { values: { floor, timed }, positionals: [dist, ...screens] } = parseArgs({
  allowPositionals: true,
  options: { floor: { type: "string" }, timed: { type: "string", multiple: true, default: [] } },
});

/** Sends a body no quicker than a good network does. */
const send = (response, body, from = 0) => {
  const end = from + PACE;
  if (end >= body.length) response.end(body.subarray(from));
  else {
    response.write(body.subarray(from, end));
    setTimeout(send, 50, response, body, end);
  }
};

/** The folder's files on 127.0.0.1 as a host sends them: packed by brotli beforehand. */
const serve = async (folder) => {
  const names = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isFile());
  const files = new Map(names.map(({ name }) => {
    const kind = extname(name);
    const bytes = readFileSync(join(folder, name));
    const quality = { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
    const packed = PACKED_ALREADY.includes(kind) ? null : brotliCompressSync(bytes, { params: quality });
    const headers = { "Content-Type": KINDS[kind] ?? "application/octet-stream", "Cache-Control": "no-cache" };
    if (packed) headers["Content-Encoding"] = "br";
    return [`/${name}`, { headers, body: packed ?? bytes }];
  }));
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://localhost");
    const file = files.get(pathname === "/" ? "/index.html" : pathname);
    response.writeHead(file ? 200 : 404, { ...file?.headers, "Content-Length": file?.body.length ?? 0 });
    if (file) send(response, file.body);
    else response.end();
  });
  await new Promise((listening) => server.listen(0, "127.0.0.1", listening));
  return { url: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
};

const openDemo = async (port, url) => {
  const browser = await puppeteer.connect({ browserURL: `http://127.0.0.1:${port}` });
  const page = await browser.newPage();
  await page.goto(url);
  await page.locator("::-p-text(Look at the demo engine)").click();
  await page.waitForFunction(() => document.body.innerText.includes("invented figures"));
  await page.close();
  await browser.disconnect();
};

// Where nothing is timed, the phone has the app already, and nothing waits for it to be quiet.
const UNTIMED = {
  disableStorageReset: true,
  pauseAfterFcpMs: 100, pauseAfterLoadMs: 300, networkQuietThresholdMs: 100, cpuQuietThresholdMs: 100,
};

const measure = async (port, url, categories, settings) => {
  const { lhr } = await lighthouse(url, {
    port, logLevel: "error", onlyCategories: categories, disableFullPageScreenshot: true, ...settings,
  });
  if (lhr.runtimeError) throw new Error(`${url}: ${lhr.runtimeError.message}`);
  return lhr;
};

/** Every audit that costs a category a point. */
const losses = ({ categories, audits }) => Object.values(categories).flatMap(({ auditRefs }) =>
  auditRefs.filter(({ id, weight }) => weight > 0 && (audits[id].score ?? 1) < 0.995)
    .map(({ id }) => `${id} ${audits[id].score.toFixed(2)}`));

const score = ({ categories }, name) => Math.round(100 * categories[name].score);
const told = ({ audits }) => Object.entries(TIMED).map(([name, id]) =>
  `${name} ${name === "CLS" ? audits[id].numericValue.toFixed(3) : Math.round(audits[id].numericValue)}`);

const server = await serve(dist);
const chrome = await launch({
  chromePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  chromeFlags: ["--headless", "--no-sandbox", "--disable-gpu"],
});
let failed = 0;
try {
  await openDemo(chrome.port, server.url);
  for (const screen of timed) {
    const runs = [];
    while (runs.length < TIMES) runs.push(await measure(chrome.port, server.url + screen, ["performance"]));
    runs.sort((one, other) => score(one, "performance") - score(other, "performance"));
    const median = runs[Math.floor(TIMES / 2)];
    const performance = runs.map((run) => score(run, "performance"));
    const below = score(median, "performance") < Number(floor);
    failed += below;
    console.log([below ? "BELOW" : "ok   ", screen, `performance ${performance.join(" ")}`, ...told(median)].join("  "));
  }
  for (const screen of screens) {
    const lhr = await measure(chrome.port, server.url + screen, ["accessibility", "best-practices"], UNTIMED);
    const scores = ["accessibility", "best-practices"].map((name) => score(lhr, name));
    if (scores.every((points) => points === 100)) continue;
    failed += 1;
    console.log(["BELOW", screen, scores.join("/"), ...losses(lhr)].join("  "));
  }
  console.log(`${screens.length} screens for accessibility and best practices, ${timed.length} for performance; ${failed} below`);
} finally {
  chrome.kill();
  server.close();
}
process.exit(failed ? 1 : 0);
