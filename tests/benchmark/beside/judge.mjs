// Twelve thresholds by an engine of the npm registry: ajv (JSON Schema) or json-logic-js.
//
// usage: node judge.mjs ajv|json-logic MODULES FOLDER JOBS
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

const [engine, modules, folder, jobs] = process.argv.slice(2);
const require = createRequire(join(modules, "package.json"));
const twelve = JSON.parse(readFileSync(new URL("twelve.json", import.meta.url)));
const read = (name) => JSON.parse(readFileSync(join(folder, name)));

function by_schema() {
  const { default: Ajv } = require("ajv");
  const validate = new Ajv({ allErrors: true, strict: false }).compile(read("schema.json"));
  const at = new Map(twelve.map(([, path], i) => [`/${path.replace(".", "/")}`, i]));
  return (job) => {
    const bits = new Array(twelve.length).fill("1");
    if (!validate(job))
      for (const error of validate.errors)
        if (error.keyword === "required")
          bits[at.get(`${error.instancePath}/${error.params.missingProperty}`)] = "?";
        else bits[at.get(error.instancePath)] = "0";
    return bits.join("");
  };
}

function by_logic() {
  const logic = require("json-logic-js"), rules = read("logic.json");
  return (job) => rules.map((rule) => logic.apply(rule, job) ? "1" : "0").join("");
}

const judge = engine === "ajv" ? by_schema() : by_logic();
const out = [];
for (const line of readFileSync(jobs, "utf8").trim().split("\n")) out.push(judge(JSON.parse(line)));
process.stdout.write(out.join("\n") + "\n");
