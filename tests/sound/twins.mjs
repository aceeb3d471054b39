// What spoils a sound house: one fault each, and the rule that names it.

// Each spoils one thing, as planned or as built.
const deck = (facts) => (job) => Object.assign(job.decks[0], facts);
const nails = (facts) => (job) => Object.assign(job.decks[0].nails, facts);
const sheet = (facts) => (job) => Object.assign(job.underlayments[0], facts);
const group = (name, facts) => (job) => Object.assign(job[name], facts);
const eaves = (facts) => (job) => Object.assign(job.roof.footprint.eaves, facts);
const vents = (job) => { for (const vent of job.attics[0].vents) vent.nfa_sqin_per_ft /= 4; };
export const TWINS = {
  "us-ca": [
    ["dark shingles in a zone of cool roofs", "energy.cool_roof",
      group("covering", { aged_reflectance: 0.1, aged_SRI: 8 })],
    ["no permit", "permit.every", group("permit", { status: "none" })],
    ["2:12 with one ply", "slope.double_underlayment", (job) => { job.roof.footprint.pitch = "2:12"; }],
    ["no smoke alarms", "alarms.smoke", (job) => { job.alarms.smoke_at = ["none"]; }, "final"],
  ],
  "us-fl": [
    ["RSRS-01 in new panels of 19/32", "deck.nail_kind",
      nails({ kind: "RSRS_01", length_in: 2.375, shank_in: 0.113 })],
    ["deck nails at 12 in", "deck.nail_field", nails({ field_spacing_in: 12 })],
    ["metal under the felt at the eaves", "drip_edge.order_eave",
      eaves({ underlayment_lies: "over_metal" })],
    ["one ply over open joints", "underlayment.sealed_deck", sheet({ deck_joints_taped: false })],
    ["class A of D3161 alone", "shingle.wind_class",
      group("covering", { D7158_class: "none", D3161_class: "A" })],
    ["work begun without leave", "permit.early_start",
      group("permit", { status: "applied", begun_before: true, early_start_allowed: false })],
    ["blisters left under an overlay", "layers.blisters", (job) => {
      Object.assign(job.scope, { method: "overlay" });
      Object.assign(job.existing, { layers_removed: 0, blisters: "left" });
      job.existing.coverings[0].removed = false; }],
    ["panels for 16 in on 24 in", "deck.panel_span", deck({ span_rating: "20/0", thickness_in: 0.375 })],
  ],
  "us-tx": [
    ["three nails", "fasteners.count", group("fasteners", { per_shingle: 3 })],
    ["staples", "fasteners.kind", group("fasteners", { kind: "staple" })],
    ["no drip edge", "drip_edge.eave", eaves({ drip_edge: false })],
    ["vents a quarter of what is due", "ventilation.net_free_area", vents],
    ["three nails counted", "fasteners.count", (job) => {
      job.fasteners.measured_per_shingle = [4, 3, 4]; }, "final"],
  ],
  "us-ny": [
    ["ice barrier of two courses short", "ice_barrier.reach", eaves({ ice_barrier_reach_in: 30 })],
    ["no cricket", "flashing.cricket", (job) => { job.roof.chimneys[0].cricket = false; }],
    ["a narrow valley", "valley.width", (job) => { job.roof.valleys[0].width_in = 18; }],
    ["ice barrier measured short", "ice_barrier.reach", (job) => {
      job.roof.edges[0].measured_ice_barrier_reach_in = [66, 30]; }, "dry-in"],
  ],
  "us-mn": [
    ["no ice barrier", "ice_barrier.kind", group("ice_barrier", { kind: "none" })],
    ["a second layer over two", "layers.total", (job) => {
      Object.assign(job.scope, { method: "overlay" });
      Object.assign(job.existing, { layers: 2, layers_removed: 0 });
      job.existing.coverings = [false, false].map((removed) =>
        ({ ...job.existing.coverings[0], removed })); }],
    ["a second layer over two, on one of the two planes", "layers.total", (job) => {
      Object.assign(job.scope, { method: "overlay" });
      Object.assign(job.existing, { layers: 2, layers_removed: 0 });
      job.existing.coverings = [false, false].map((removed) =>
        ({ ...job.existing.coverings[0], removed }));
      job.roof.slopes = [{ name: "front", old_layers: 1 }]; }],
    ["vents a quarter of what is due", "ventilation.net_free_area", vents],
    ["corrections at the final", "inspection.final_passed", (job) => {
      job.inspection.final.result = "corrections"; }, "final"],
  ],
  "us-co": [
    ["deck nails at 8 in", "deck.nail_edges", nails({ edge_spacing_in: 8 })],
    ["no drip edge at the rakes", "drip_edge.rake", (job) => {
      job.roof.footprint.rakes.drip_edge = false; }],
    ["3/4 in nails", "fasteners.penetration", group("fasteners", { length_in: 0.75 })],
    ["deck nails measured at 9 in", "deck.nail_edges", (job) => {
      job.decks[0].nails.measured_edge_spacing_in = [9, 9, 9]; }, "deck"],
  ],
};
