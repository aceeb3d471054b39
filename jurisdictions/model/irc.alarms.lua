-- Alarms: the model code brings existing houses up to date when a permit is
-- taken out, and lets work on the outside off, roofing named. A place that does
-- not print that exemption says so, and says whether any permit counts or only
-- work over a price. What is asked of alarms that are due is read in sheets of
-- California departments, which print the same sections.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite)
  return { false, sense = "equals", cite = cite, status = "seen", source = NO_LINE,
    read_in = BOOKS }
end

-- The code has such a line, for every building or every permit; whether it is looked at
-- in a reroof is the place's to say.
local function by_choice(cite, what)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = TEXTS .. ": " .. what, read_in = BOOKS }
end

local function figure_of(value, unit, sense, cite, source)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = source }
end

-- A limit, and the figure that says whether a job exactly at it counts.
local function at_said_by(at, limit)
  limit.at_figure = at
  return limit
end

figures {
  ["alarms.exterior_exempt"] = { true, sense = "equals", cite = "R314.2.2 exc. 1, R315.2.2 exc. 1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  -- Without the exemption, any permit counts.
  ["alarms.by_permit"] = { true, sense = "equals", cite = "R314.2.2", status = "seen",
    source = "a California city's alarm sheet printing R314.2.2" },
  ["alarms.co_by_permit"] = { true, sense = "equals", cite = "R315.2.2", status = "seen",
    source = "a California city's alarm sheet printing R315.2.2" },
  ["alarms.by_price"] = off "R314.2.2",
  ["alarms.co_by_price"] = off "R315.2.2",
  ["alarms.price_limit"] = at_said_by("alarms.at_price_counts",
    figure_of(1000, "usd", "over", "R314.2.2",
    "a California statute and alarm sheets: over 1,000")),
  ["alarms.at_price_counts"] = { false, sense = "equals", cite = "R314.2.2", status = "seen",
    source = "the same statute: over 1,000" },

  ["alarms.smoke_places"] = figure_of({ "each_bedroom", "outside_bedrooms", "each_story" }, nil,
    "all_of", "R314.3", "two California alarm sheets"),
  -- What burns fuel, and an attached garage that opens into the house.
  ["alarms.co_sources"] = { { "fuel_appliance", "bedroom_appliance", "attached_garage" },
    sense = "one_of", cite = "R315.2", status = "seen", source = TEXTS, read_in = BOOKS },
  -- Beside those, in a bedroom that holds what burns fuel.
  ["alarms.co_bedroom_places"] = { { "fuel_bedroom" }, sense = "one_of", cite = "R315.3",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["alarms.co_places"] = { { "outside_bedrooms" }, sense = "all_of", cite = "R315.3",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["alarms.listed_required"] = by_choice("R314.1.1",
    "asked of alarms that are due; off while roofing is let off"),
  ["alarms.power_counts"] = by_choice("R314.6",
    "asked of alarms that are due; off while roofing is let off"),
  ["alarms.powers"] = figure_of({ "wired", "sealed_battery" }, nil, "one_of", "R314.6",
    "a California city's sheet: sealed ten-year batteries since 1 July 2014"),
  ["alarms.closed_differs"] = by_choice("R314.6 exc.",
    "batteries where no finish comes down and no attic lets wires through; off until a place "
      .. "says so"),
  ["alarms.wiring_access_counts"] = { true, sense = "equals", cite = "R314.6 exc.",
    status = "seen", source = "a California city's sheet printing R314.6" },
  ["alarms.powers_closed"] = figure_of({ "wired", "sealed_battery", "battery" }, nil, "one_of",
    "R314.6 exc.", "a California city's sheet printing R314.6"),
  ["alarms.clearances_count"] = by_choice("R314.3 item 4",
    "asked of alarms that are due; off while roofing is let off"),
  ["alarms.bath_door_least"] = figure_of(36, "in", "at_least", "R314.3",
    "a California city's sheet: 3 ft"),
  ["alarms.register_least"] = figure_of(36, "in", "at_least", "R314.3",
    "a California city's sheet: 36 in from registers and fan blades"),
  ["alarms.proof_counts"] = off "R314.2.2",
  ["alarms.proofs"] = figure_of({ "seen", "signed_form", "affidavit" }, nil, "one_of", "R314.2.2",
    "California self-certification sheets for permits without a look inside"),
  ["alarms.form_signers_count"] = off "R314.2.2",
  ["alarms.form_signers"] = figure_of({ "owner", "contractor" }, nil, "all_of", "R314.2.2",
    "a California sheet that both sign; another has owner and tenant"),
  ["alarms.co_affidavit_required"] = off "R315.2.2",
  ["alarms.gas_vents_count"] = off "R109.1.6",
}
