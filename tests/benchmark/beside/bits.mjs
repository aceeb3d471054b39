// What Eavemark's lines say of the twelve rules, a character each: 1 met, 0 not, ? open.
import { createInterface } from "node:readline";
import { readFileSync } from "node:fs";

const twelve = JSON.parse(readFileSync(new URL("twelve.json", import.meta.url)));
const at = new Map(twelve.map(([name], i) => [`twelve.${name}`, i]));
for await (const line of createInterface({ input: process.stdin })) {
  const bits = new Array(twelve.length).fill("-");
  const said = JSON.parse(line);
  for (const finding of said.findings ?? [])
    bits[at.get(finding.rule)] = finding.met === true ? "1" : finding.met === false ? "0" : "?";
  console.log(said.error ? `error ${said.error}` : bits.join(""));
}
