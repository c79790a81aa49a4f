// Cuts a font down to the letters a builder's book is written in: node subset.mjs IN OUT
import { readFile, writeFile } from "node:fs/promises";
import subset from "subset-font";

const span = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join("");
const letters =
  span(0x20, 0x7e) + span(0xa0, 0xff) + "–—‘’‚“”„•…‹›−×⅛⅜⅝⅞€™≤≥≈ŁłŚśŹźŻżĄąĘęĆćŃńŐőŰűČčŠšŽžŘřĚěŮů";

const [from, to] = process.argv.slice(2);
await writeFile(to, await subset(await readFile(from), letters, { targetFormat: "woff2" }));
