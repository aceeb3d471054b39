// Holds the schema of reports against reports, with a validator that is not ours.
//
//   node report.mjs SCHEMA.json GOLDEN.json REPORTS_DIR
//
// Every report must pass; GOLDEN, spoiled in each of the ways below, must be
// refused at the place and by the keyword named. Exit status 1 when one is not.
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import Ajv2020 from "ajv/dist/2020.js";

const readJson = (path) => JSON.parse(readFileSync(path, "utf8"));

// A finding of the golden that was compared, with a figure that a place has changed.
const FULL = "/findings/2";

const SPOILED = [
  [" required", (report) => { delete report.fingerprint; }],
  [" additionalProperties", (report) => { report.aproved = true; }],
  ["/date pattern", (report) => { report.date = "1 March 2026"; }],
  ["/caution minLength", (report) => { report.caution = ""; }],
  ["/fingerprint pattern", (report) => { report.fingerprint = "masked"; }],
  ["/jurisdiction required", (report) => { delete report.jurisdiction.invented; }],
  ["/jurisdiction/chain minItems", (report) => { report.jurisdiction.chain = []; }],
  ["/summary required", (report) => { delete report.summary.broken; }],
  ["/summary/open type", (report) => { report.summary.open = 0.5; }],
  [`${FULL} required`, (report, finding) => { delete finding.outcome; }],
  [`${FULL} additionalProperties`, (report, finding) => { finding.outcom = "pass"; }],
  [`${FULL}/rule pattern`, (report, finding) => { finding.rule = "layers"; }],
  [`${FULL}/outcome enum`, (report, finding) => { finding.outcome = "approved"; }],
  [`${FULL}/stage enum`, (report, finding) => { finding.stage = "sometime"; }],
  [`${FULL}/says type`, (report, finding) => { finding.says = null; }],
  [`${FULL}/required required`, (report, finding) => { delete finding.required.sense; }],
  [`${FULL}/required/sense enum`, (report, finding) => { finding.required.sense = "about"; }],
  [`${FULL}/found/value type`, (report, finding) => { finding.found.value = null; }],
  [`${FULL}/cite/0/status enum`, (report, finding) => { finding.cite[0].status = "sure"; }],
  [`${FULL}/amended required`, (report, finding) => { delete finding.amended.by; }],
  [`${FULL}/reads/0/at pattern`, (report, finding) => { finding.reads[0].at = "existing.layers"; }],
  [`${FULL}/why/0 enum`, (report, finding) => { finding.why = ["luck"]; }],
  [`${FULL}/met type`, (report, finding) => { finding.met = "yes"; }],
  [`${FULL}/reads/0/from enum`, (report, finding) => {
    finding.reads = [{ at: "/existing/layers", from: "hearsay" }];
  }],
];

const told = (errors) => errors.map((error) => `${error.instancePath} ${error.keyword}`);

function checkSpoiled(validate, golden, [reason, spoil]) {
  const report = structuredClone(golden);
  spoil(report, report.findings[2]);
  if (validate(report)) console.log(`WRONG  a report passed that is spoiled by: ${reason}`);
  else if (told(validate.errors).includes(reason)) return true;
  else console.log(`WRONG  not refused by "${reason}" but ${told(validate.errors).join("; ")}`);
  return false;
}

function checkGood(validate, path) {
  if (validate(readJson(path))) return true;
  console.log(`WRONG  ${path}: ${told(validate.errors).slice(0, 10).join("; ")}`);
  return false;
}

function main([schemaPath, goldenPath, folder]) {
  if (folder === undefined) {
    console.error("usage: node report.mjs SCHEMA.json GOLDEN.json REPORTS_DIR");
    return 2;
  }
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true, strict: true });
  const validate = ajv.compile(readJson(schemaPath));
  const good = readdirSync(folder).map((name) => join(folder, name));
  if (good.length < 30) console.log(`WRONG  only ${good.length} reports`);
  const wrong = [goldenPath, ...good].filter((path) => !checkGood(validate, path)).length
    + SPOILED.filter((entry) => !checkSpoiled(validate, readJson(goldenPath), entry)).length;
  console.log(`${good.length} reports hold to the schema and ${SPOILED.length} spoiled ones do not,`
    + ` ${wrong} wrong`);
  return wrong === 0 && good.length >= 30 ? 0 : 1;
}

process.exitCode = main(process.argv.slice(2));
