// The findings of a JSON report that apply, one a line, as the example houses
// keep them; then how many of each topic do not apply.
//
//   eavemark check --all --form json JOB.json | node findings.mjs
//
//   rule | where | outcome (why; whom to ask) | found | demanded (what a rival source demands) | section
import { readFileSync } from "node:fs";

const VERBS = { at_least: "at least", at_most: "at most", equals: "", one_of: "one of",
  none_of: "none of", all_of: "all of" };

function valueWords(value) {
  if (Array.isArray(value)) return value.length === 0 ? "(none)" : value.join(", ");
  if (typeof value === "boolean") return value ? "yes" : "no";
  return String(value);
}

function figureWords(figure) {
  if (figure === null) return "-";
  const verb = figure.sense === undefined ? "" : VERBS[figure.sense];
  if (verb === undefined) throw new Error(`a sense without words: ${figure.sense}`);
  return [verb, valueWords(figure.value), figure.unit ?? ""].filter((word) => word !== "").join(" ");
}

const inBrackets = (words) => (words.length === 0 ? "" : ` (${words.join("; ")})`);

function demanded({ required, also, rival }) {
  const both = also === null ? "" : `, ${figureWords(also)}`;
  return figureWords(required) + both + inBrackets(rival === null ? [] : [figureWords(rival)]);
}

function line(finding) {
  const { rule, where, outcome, why, ask, found, cite } = finding;
  const doubts = [...why, ...(ask === null ? [] : [`ask: ${ask}`])];
  const sections = [...new Set(cite.map(({ section, code }) => section ?? code))];
  return [rule, where ?? "-", outcome + inBrackets(doubts), figureWords(found), demanded(finding),
    sections.join("; ") || "-"].join(" | ");
}

function notApplicable(findings) {
  const counts = {};
  for (const { rule, outcome } of findings) {
    const topic = rule.split(".")[0];
    if (outcome === "not_applicable") counts[topic] = (counts[topic] ?? 0) + 1;
  }
  return counts;
}

const report = JSON.parse(readFileSync(0, "utf8"));
const lines = report.findings.filter((finding) => finding.outcome !== "not_applicable").map(line);
const counts = Object.entries(notApplicable(report.findings));
console.log(["rule | where | outcome | found | demanded | section", ...lines, "", "not applicable:",
  ...counts.map(([topic, count]) => `${topic} ${count}`)].join("\n"));
