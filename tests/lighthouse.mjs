// A judge from outside: Lighthouse on every screen, as on a phone. Prints the scores, and fails below 100.
//
//   node lighthouse.mjs URL PLACE...
import { launch } from "chrome-launcher";
import lighthouse from "lighthouse";

const [url, ...places] = process.argv.slice(2);
const CATEGORIES = ["performance", "accessibility", "best-practices"];
const chrome = await launch({
  chromePath: "/usr/bin/chromium",
  chromeFlags: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
let failed = false;
try {
  for (const place of places) {
    const { lhr } = await lighthouse(url + place, {
      port: chrome.port, onlyCategories: CATEGORIES, formFactor: "mobile", logLevel: "error",
    });
    const scores = CATEGORIES.map((category) => Math.round(lhr.categories[category].score * 100));
    console.log(`${place}: ${scores.join(" ")}`);
    if (lhr.runtimeError) console.log(`  ${lhr.runtimeError.message}`);
    for (const audit of Object.values(lhr.audits)) {
      const counts = audit.score !== null && audit.score < 1 && audit.scoreDisplayMode !== "informative";
      if (counts) console.log(`  ${audit.id}: ${audit.displayValue ?? audit.title}`);
    }
    failed ||= scores.some((score) => score < 100);
  }
} finally {
  chrome.kill();
}
process.exit(failed ? 1 : 0);
