-- Pikes Peak region, Colorado: El Paso County and its cities under one regional
-- code. Permits and calls were read on its own page; the change of 1 June 2018,
-- which brought drip edge and new felt rules, only second-hand: what it says of
-- felt was not read. A roof without drip edge passes by variance or by the form
-- for another method.

local function seen(value, cite)
  return { value, cite = cite, status = "seen", source = "the regional department's page" }
end

local function told(value)
  return { value, cite = "change of 1 June 2018", status = "memory",
    source = "read second-hand: an avionics site's copy of a news item" }
end

local function common(edge, more)
  local figures = {
    ["permit.open_counts"] = seen(true, "storm damage page: 180 days from issue"),
    ["permit.open_days_most"] = seen(180, "storm damage page: 180 days from issue"),
    ["permit.open_excuses"] = seen({ "extended" }, "storm damage page: one extension, free"),
    ["permit.extension_days"] = seen(180, "storm damage page: one extension, free"),
    ["inspection.only_holder_calls"] = seen(true, "storm damage page"),
    ["drip_edge.eave_required"] = told(edge),
    ["drip_edge.rake_required"] = told(edge),
  }
  for name, entry in pairs(more) do figures[name] = entry end
  return figures
end

local UNSURE = "the page names no edition: IRC 2012 is taken"
local MOVED = UNSURE .. "; the region is said to have moved to IRC 2021 since: ask"

jurisdiction "us-co/pikes-peak-region" {
  title = "Pikes Peak region, Colorado",
  follows = "model/irc-2012",
  to = "2018-06-01",
  edition = "regional code (IRC 2012 taken)",
  unsure = UNSURE,
  as_seen = "2026-11-25",
  read = { "notice" },
  figures = common(false, {}),
}

jurisdiction "us-co/pikes-peak-region" {
  title = "Pikes Peak region, Colorado",
  follows = "model/irc-2012",
  from = "2018-06-01",
  edition = "regional code of 2018 (IRC 2012 taken)",
  unsure = MOVED,
  as_seen = "2026-11-25",
  read = { "notice" },
  figures = common(true, { ["drip_edge.variance_allowed"] = told(true) }),
}
