// Holds the job schema against jobs, with a validator that is not ours.
//
//   node check.mjs SCHEMA.json GOOD_DIR_OR_FILES... --bad BAD_DIR
//
// SCHEMA.json is what `eavemark fields --schema` prints. Every good job must
// pass; every bad one must be refused, at the place and by the keyword that
// reasons.json (in this folder) names for it. Exit status 1 when one does not.
import { readFileSync, readdirSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import Ajv2020 from "ajv/dist/2020.js";

const readJson = (path) => JSON.parse(readFileSync(path, "utf8"));

function jobsIn(path) {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path).filter((name) => name.endsWith(".json")).sort()
    .map((name) => join(path, name));
}

function said(errors) {
  return errors.map((error) => `${error.instancePath || "(the job)"} ${error.message}`).join("; ");
}

function checkGood(validate, path) {
  if (validate(readJson(path))) return true;
  console.log(`WRONG  ${path}: a good job was refused: ${said(validate.errors)}`);
  return false;
}

function checkBad(validate, path, reasons) {
  const reason = reasons[basename(path)];
  if (reason === undefined) {
    console.log(`WRONG  ${path}: reasons.json does not say why it is bad`);
    return false;
  }
  if (validate(readJson(path))) {
    console.log(`WRONG  ${path}: a bad job passed (${reason})`);
    return false;
  }
  const found = validate.errors.map((error) => `${error.instancePath} ${error.keyword}`);
  if (found.includes(reason)) return true;
  console.log(`WRONG  ${path}: refused, but not by "${reason}": ${said(validate.errors)}`);
  return false;
}

function main(args) {
  const cut = args.indexOf("--bad");
  const [schemaPath, ...good] = cut < 0 ? args : args.slice(0, cut);
  const bad = cut < 0 ? [] : args.slice(cut + 1);
  if (schemaPath === undefined || good.length === 0 || bad.length !== 1) {
    console.error("usage: node check.mjs SCHEMA.json GOOD_DIR_OR_FILES... --bad BAD_DIR");
    return 2;
  }
  const reasons = readJson(new URL("reasons.json", import.meta.url));
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true, strict: true });
  const validate = ajv.compile(readJson(schemaPath));
  const goodJobs = good.flatMap(jobsIn);
  const badJobs = jobsIn(bad[0]);
  const right = goodJobs.filter((path) => checkGood(validate, path)).length
    + badJobs.filter((path) => checkBad(validate, path, reasons)).length;
  const wrong = goodJobs.length + badJobs.length - right;
  if (goodJobs.length === 0 || badJobs.length === 0) {
    console.log("WRONG  no jobs to check");
    return 1;
  }
  console.log(`${goodJobs.length} good and ${badJobs.length} bad jobs, ${wrong} of them judged wrongly`);
  return wrong === 0 ? 0 : 1;
}

process.exitCode = main(process.argv.slice(2));
