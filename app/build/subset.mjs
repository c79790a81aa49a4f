// Cuts a font down to the letters a builder's book is written in: node subset.mjs IN OUT
import { readFile, writeFile } from "node:fs/promises";
import subset from "subset-font";

const span = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join("");
const signs = "–—‘’‚“”„•…‹›−×⅛⅜⅝⅞€™≤≥≈";
const letters =
  span(0x20, 0x7e) + span(0xa0, 0xff) + signs + "ŁłŚśŹźŻżĄąĘęĆćŃńŐőŰűČčŠšŽžŘřĚěŮů";
// What figures, their units and “at least” are written with: German’s letters, no other accents.
const figures = span(0x20, 0x7e) + span(0xa0, 0xbf) + "×÷äöüÄÖÜß" + signs;

const [from, to] = process.argv.slice(2);
const used = from.includes("-mono") ? figures : letters;
await writeFile(to, await subset(await readFile(from), used, { targetFormat: "woff2" }));
