field "sheets" { type = "list", range = { 0, 5 }, stage = "permit", ask = "Each sheet" }
field "sheets[].name" { type = "text", range = { 1, 60 }, stage = "permit", ask = "Name?" }
rule "fuzz.slope" {
  title = "Slope", stage = "permit", per = "roof.slopes",
  reads = { facts = { "roof.slopes[].name", "roof.slopes[].pitch" },
    figures = { "test.pitch_least" } },
  applies = function(job, figure, slope) return slope.pitch > 1, "flat" end,
  judge = function(job, figure, slope)
    work("looked at " .. number(slope.pitch, "rise_in_12"))
    return at_least(slope.pitch, figure "test.pitch_least", "rise_in_12"):warn("steep")
  end,
  mend = function(job, figure, slope) return "Not below " .. slope.name end,
  caution = "Mind the edge.",
}
rule "fuzz.nails" {
  title = "Nails", stage = "deck", per = "decks", mend = "Nail closer.",
  reads = { facts = { "decks[].spacing_in", "decks[].measured_spacing_in",
    "existing.condition" }, figures = { "test.nails_most", "test.conditions" } },
  judge = function(job, figure, deck)
    if inspecting() then
      return spacings_at_most(deck.measured_spacing_in, figure "test.nails_most", "in",
        { share = 10, over = 1 })
    end
    return all_of(at_most(deck.spacing_in, figure "test.nails_most", "in"),
      one_of(job.existing.condition, figure "test.conditions"))
  end,
}
local counted = reads({ facts = { "attics[].vents[].count" } }, function(vent)
  return known(vent, "count")
end)
rule "fuzz.vents" {
  title = "Vents", stage = "final", per = "attics[].vents", mend = "Add some.",
  reads = { counted, facts = { "attics[].name", "existing.kinds" },
    figures = { "test.*" }, behind = { { "test.required", "test.most" } },
    facts_of_some_places = { "existing.zone" } },
  judge = function(job, figure, vent, attic)
    if not counted(vent) then cannot_tell("nobody counted") end
    return any_of(at_least(vent.count, figure "test.most", "layers"),
      none_of(job.existing.kinds, figure "test.kinds")):say("of " .. attic.name)
  end,
}
quantity "sheets" { title = "Sheets", 
  amount = function(job) return amount { exact = 3, unit = "sheets" } end }
impossible "many layers" { at = "existing.layers",
  when = function(job) if job.existing.layers > 5 then return "too many" end end }
field "as_meant" { type = "list", range = { 0, 9 }, stage = "permit", ask = "?" }
field "as_meant[].at" { type = "text", range = { 1, 200 }, stage = "permit", ask = "?" }
impossible "steep" { at = "pitch", per = "roof.slopes", ask_back = true,
  when = function(job, slope) if slope.pitch > 23 then return as_written(slope, "pitch") end end }
caution "edge" { stages = { "permit", "deck" }, reads = { facts = { "existing.slippery" } },
  when = function(job) return job.existing.slippery end,
  says = "Mind the edge.", cite = { code = "a", section = "b", status = "practice", source = "c" } }
