// Writes what each engine needs, all from one table of twelve thresholds: jobs, rules in each
// engine's own words, and what comes out of the complete jobs by plain comparison.
//
// usage: node write.mjs SOURCE FOLDER COUNT
import { mkdirSync, readFileSync, writeFileSync, copyFileSync } from "node:fs";
import { join } from "node:path";

const [source, folder, count] = process.argv.slice(2);
const twelve = JSON.parse(readFileSync(join(source, "tests/benchmark/beside/twelve.json")));
const write = (name, text) => writeFileSync(join(folder, name), text);
const meets = (sense, found, limit) => sense === "at_most" ? found <= limit : found >= limit;

// Jobs: a whole house each, its twelve facts below, at or above their limits.
const house = JSON.parse(readFileSync(join(source, "tests/houses/cross-gable/job.json")));
house.jurisdiction = "model/twelve";
let seed = 20261129;
const next = (below) => (seed = (seed * 1103515245 + 12345) % 2147483648) % below;
const put = (job, path, value) => {
  const [group, fact] = path.split(".");
  (job[group] ??= {})[fact] = value;
};
const around = (limit, unit) => {
  const step = Number.isInteger(limit) && ["nails", "layers"].includes(unit) ? 1 : limit / 50;
  return Math.round((limit + (next(3) - 1) * step) * 1e6) / 1e6;
};
function job_of(number, value_of) {
  const job = structuredClone(house);
  job.job = `House ${number}, invented`;
  const bits = twelve.map(([, path, sense, limit, unit]) => {
    const value = value_of(limit, unit);
    put(job, path, value);
    return meets(sense, value, limit) ? "1" : "0";
  });
  if (job.existing.layers < 1) throw new Error("a tear-off of nothing");
  job.existing.layers_removed = job.existing.layers;
  delete job.existing.coverings;
  return [JSON.stringify(job), bits.join("")];
}
const jobs = Array.from({ length: Number(count) }, (_, i) => job_of(i + 1, around));
write("jobs", jobs.map(([job]) => job + "\n").join(""));
write("expected", jobs.map(([, bits]) => bits + "\n").join(""));
write("one", jobs[0][0] + "\n");

// All at their limits, and the fact of one rule missing: of a least and of a most.
for (const lacks of ["lap", "spacing"]) {
  const job = JSON.parse(job_of(0, (limit) => limit)[0]);
  const [, path] = twelve.find(([name]) => name === lacks);
  delete job[path.split(".")[0]][path.split(".")[1]];
  write(`lacking-${lacks}`, JSON.stringify(job) + "\n");
}

// Eavemark: the catalogue as it is, twelve rows, a law of twelve figures.
mkdirSync(join(folder, "home/rules"), { recursive: true });
mkdirSync(join(folder, "home/jurisdictions/model"), { recursive: true });
for (const file of ["common.lua", "fields.lua"])
  copyFileSync(join(source, "rules", file), join(folder, "home/rules", file));
write("home/rules/twelve.lua", twelve.map(([name, path]) => `demand "twelve.${name}" {
  title = "${name}", stage = "permit", fact = "${path}", meets = "twelve.${name}_limit",
  mend = "Mend it.",
}
`).join("\n"));
write("home/jurisdictions/model/twelve.lua", `jurisdiction "model/twelve" {
  title = "Twelve thresholds", model = true, code = "Twelve", edition = "Twelve", from = "2000-01-01",
  figures = {
${twelve.map(([name, , sense, limit, unit], i) => `    ["twelve.${name}_limit"] = { ${limit}, unit = "${unit}",
      sense = "${sense}", cite = "T${i + 1}", status = "seen", source = "a benchmark" },`).join("\n")}
  },
}
`);

// JSON Schema: a missing fact is told apart from a wrong one by its keyword.
const schema = { type: "object", properties: {} };
for (const [, path, sense, limit] of twelve) {
  const [group, fact] = path.split(".");
  const part = schema.properties[group] ??= { type: "object", properties: {}, required: [] };
  part.properties[fact] = { [sense === "at_most" ? "maximum" : "minimum"]: limit };
  part.required.push(fact);
}
write("schema.json", JSON.stringify(schema));

write("logic.json", JSON.stringify(twelve.map(([, path, sense, limit]) =>
  ({ [sense === "at_most" ? "<=" : ">="]: [{ var: path }, limit] }))));

write("twelve.jq", "[" + twelve.map(([, path, sense, limit]) =>
  `(if .${path} ${sense === "at_most" ? "<=" : ">="} ${limit} then "1" else "0" end)`).join(", ")
  + "] | add\n");

// CLIPS reads facts in its own form: written out beforehand, which costs it nothing here.
write("twelve.clp", `(deftemplate fact (slot name) (slot value))
${twelve.map(([name, , sense, limit], i) => `(defrule met-${name} (fact (name ${name})
  (value ?v&:(${sense === "at_most" ? "<=" : ">="} ?v ${limit}))) => (bind ?*bits* (replace-member$ ?*bits* 1 (sym-cat r${i}))))
(defrule unmet-${name} (fact (name ${name})
  (value ?v&:(${sense === "at_most" ? ">" : "<"} ?v ${limit}))) => (bind ?*bits* (replace-member$ ?*bits* 0 (sym-cat r${i}))))`)
    .join("\n")}
`);
const of_clips = (line) => {
  const job = JSON.parse(line);
  const facts = twelve.flatMap(([name, path]) => {
    const [group, fact] = path.split(".");
    const value = job[group]?.[fact];
    return value === undefined ? [] : [`(fact (name ${name}) (value ${value}))`];
  });
  return `(begin-job)\n(assert ${facts.join(" ")})\n(run)\n(end-job)\n`; // one to a line
};
const GLOBALS = `(defglobal ?*bits* = (create$))
(deffunction begin-job () (reset) (bind ?*bits* (create$ ${twelve.map((_, i) => `r${i}`).join(" ")})))
(deffunction end-job ()
  (progn$ (?b ?*bits*) (if (numberp ?b) then (printout t ?b) else (printout t "-")))
  (printout t crlf))
`;
write("globals.clp", GLOBALS);
for (const name of ["jobs", "one", "lacking-lap", "lacking-spacing"])
  write(`${name}.clips`, `(load* "globals.clp")\n(load* "twelve.clp")\n`
    + readFileSync(join(folder, name), "utf8").trim().split("\n").map(of_clips).join("")
    + "(exit)\n");

// Lua alone: a reader of JSON and twelve comparisons.
write("twelve.lua", readFileSync(join(source, "tests/benchmark/beside/read.lua"), "utf8") + `
for line in io.lines(arg[1]) do
  local job = read(line)
  local bits = {}
  for i, rule in ipairs {
${twelve.map(([, path, sense, limit]) =>
    `    function() return job.${path} ${sense === "at_most" ? "<=" : ">="} ${limit} end,`).join("\n")}
  } do
    local done, met = pcall(rule)
    bits[i] = not done and "e" or met and "1" or "0"
  end
  print(table.concat(bits))
end
`);
