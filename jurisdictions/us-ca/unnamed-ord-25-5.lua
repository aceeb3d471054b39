-- A California city that the page's excerpt does not name: ordinance 25-5 of 25
-- November 2025. That day lies inside the state's freeze on local changes to
-- rules for dwellings (Health and Safety Code 17958.5(c), 1 October 2025 to 1
-- June 2031): they bind only when carried over, or for home hardening.

local FREEZE = "adopted inside the state's freeze on local changes: lawful only if carried over "
  .. "or for home hardening; ask the city"

local function seen(value)
  return { value, cite = "Ord. 25-5", status = "seen", source = "the city's ordinance",
    disputed = FREEZE }
end

jurisdiction "us-ca/unnamed-ord-25-5" {
  title = "A California city, not named on the page read",
  follows = "us-ca",
  from = "2025-11-25",
  code = "Ordinance 25-5",
  edition = "California Residential Code as amended by Ord. 25-5",
  as_seen = "2026-11-25",
  figures = {
    -- A floor for all buildings: very high zones keep the state's class A.
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A", "B" },
    ["deck.solid_counts_for_all"] = seen(true),
    ["layers.not_over"] = seen { "wood_shingle", "wood_shake", "slate", "clay_tile",
      "concrete_tile", "asbestos_cement" },
    ["inspection.required.deck"] = seen(true),
    ["inspection.required.pre"] = seen(true),
    ["inspection.methods.pre"] = seen { "overlay" },
  },
}
