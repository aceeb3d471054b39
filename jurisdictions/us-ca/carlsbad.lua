-- Carlsbad, California: a reroof form of February 2011 (its day not shown), and a
-- policy that from 10 June 2022 takes a licensed contractor's own report for
-- visits. The form says two rungs of ladder past the edge; a foot to the rung is
-- common practice. The city's own policy on sheathing, 97-50, could not be read.

local function seen(value, cite)
  return { value, cite = cite or "reroof form", status = "seen",
    source = "the city's form and policy" }
end

local REPORTED = { "visit", "self_certified" }

local function common(more)
  local figures = {
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A" },
    ["fire.banned"] = seen { "wood_shingle", "wood_shake" },
    ["papers.application_states"] = seen { "pitch", "old_layers", "old_covering",
      "new_covering", "fire_class", "weight", "squares", "listing_number", "structure_ok" },
    ["inspection.required.pre"] = seen(true),
    ["inspection.methods.pre"] = seen { "overlay" },
    ["inspection.required.deck"] = seen(true),
    ["inspection.required.final"] = seen(true),
    ["inspection.ladder_past_counts"] = seen(true),
    ["inspection.ladder_past_least"] = { 24, cite = "reroof form: two rungs", status = "practice",
      source = "rungs are commonly a foot apart" },
  }
  for name, entry in pairs(more) do figures[name] = entry end
  return figures
end

jurisdiction "us-ca/carlsbad" {
  title = "Carlsbad, California",
  follows = "us-ca",
  to = "2022-06-10",
  edition = "California Residential Code as amended",
  as_seen = "2011-02-01",
  read = { "visits", "papers" },
  figures = common {},
}

jurisdiction "us-ca/carlsbad" {
  title = "Carlsbad, California",
  follows = "us-ca",
  from = "2022-06-10",
  edition = "California Residential Code as amended",
  as_seen = "2022-06-10",
  read = { "visits", "papers" },
  figures = common {
    ["inspection.proofs.pre"] = seen(REPORTED, "policy of 2022-06-10"),
    ["inspection.proofs.deck"] = seen(REPORTED, "policy of 2022-06-10"),
    ["inspection.proofs.final"] = seen(REPORTED, "policy of 2022-06-10"),
  },
}
