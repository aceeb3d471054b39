-- takeoff_deck.lua - panels, and what holds them.

-- What the quantities of this file ask for, beside facts of the job.
quantities_read {
  figures = { "takeoff.deck_nails_to_the_pound.*", "takeoff.panel_length",
    "takeoff.panel_width" },
}

local function panel_sqft(figure)
  return figure "takeoff.panel_length" * figure "takeoff.panel_width" / 144
end

-- Panels lie where the deck is panels, and where new ones go over boards.
local function new_panels(job, deck)
  local under, why = deck_is_covered(job, deck)
  if not under then return false, why end
  if deck.work == "paneled_over" then return true end
  return deck.kind == "panel", "boards are bought by the foot"
end

-- What of it this order is for.
local function order_sqft(job, deck)
  whole_planes(job)
  local area = area_of(job, function(slope)
    return gets_covering(slope) and slope.deck.name == deck.name
  end)
  return math.max(0, area + strips_sqft(job, deck, gets_covering))
end

-- New panels, in square feet: over or in place of the whole deck, or as the job says.
local function panels_laid(job, deck)
  if deck.work == "paneled_over" or deck.work == "replaced" then return order_sqft(job, deck) end
  return deck.replaced_sqft
end

local WOODS = { osb = "OSB", plywood = "plywood", plywood_structural_1 = "plywood, Structural I" }

local function panel_called(deck)
  local over = deck.work == "paneled_over" and "over_panel_thickness_in" or "thickness_in"
  local item = "Deck panels, 4 by 8 ft"
  if known(deck, over) then item = item .. ", " .. number(deck[over], "in") end
  if known(deck, "panel_wood") then item = item .. " " .. WOODS[deck.panel_wood] end
  if deck.work ~= "paneled_over" and known(deck, "span_rating") then
    item = item .. ", " .. deck.span_rating
  end
  if known(deck, "seen_from_below") and deck.seen_from_below then
    item = item .. ", Exposure 1 or Exterior where seen from below"
  end
  return item
end

quantity "deck_panels" {
  title = "Deck panels",
  order = "Deck and lumber",
  serves = { "deck.sound", "deck.solid" },
  habit = "the deck that the job renews",
  per = "decks",
  applies = function(job, figure, deck) return new_panels(job, deck) end,
  amount = function(job, figure, deck)
    return amount { exact = panels_laid(job, deck), unit = "sqft",
      waste_percent = waste(job, "sheet_waste_percent"), each = panel_sqft(figure),
      buy = "panels", one = "panel", item = panel_called(deck) }
  end,
}

local DECK_NAILS = { common_8d = "8d common nails", common_10d = "10d common nails",
  deformed_8d = "8d ring or screw shank nails", box_8d = "8d box nails",
  common_6d = "6d common nails", sinker_8d = "8d sinkers", RSRS_01 = "RSRS-01 ring shank nails",
  RSRS_02 = "RSRS-02 ring shank nails", RSRS_03 = "RSRS-03 ring shank nails",
  RSRS_04 = "RSRS-04 ring shank nails", RSRS_05 = "RSRS-05 ring shank nails",
  staple = "Staples for the deck" }

-- Loose nails are sold by the pound, where it is known how many go to it; else they are
-- counted.
local function deck_nails_bought(job, figure, deck, nails, note)
  local kind = deck.nails.kind
  local all = { exact = nails, unit = "nails", note = note, item = DECK_NAILS[kind],
    waste_percent = waste(job, "sheet_waste_percent"), buy = "nails", one = "nail" }
  if known(deck.nails, "nails_to_the_pound") then
    all.each = deck.nails.nails_to_the_pound
  elseif has(figure "takeoff.deck_nails_to_the_pound.kinds", kind) then
    all.each = figure("takeoff.deck_nails_to_the_pound." .. kind)
  end
  if all.each then all.buy, all.one = "pounds", "pound" end
  return amount(all)
end

quantity "deck_nails" {
  title = "Nails of the deck",
  order = "Deck and lumber",
  serves = { "deck.nail_kind", "deck.nail_edges", "deck.nail_field" },
  per = "decks",
  applies = function(job, figure, deck)
    if job.scope.method == "overlay" then return false, "an overlay does not open the deck" end
    local panels, why = new_panels(job, deck)
    if not panels then return false, why end
    if deck.work == "paneled_over" or deck.work == "replaced" or deck.renailed then return true end
    return deck.replaced_sqft > 0, "no panel is replaced and the kept ones are not nailed again"
  end,
  amount = function(job, figure, deck)
    local area
    if deck.work ~= "paneled_over" and deck.work ~= "replaced" and deck.renailed then
      area = order_sqft(job, deck)
      work("the kept panels are nailed again: all of it")
    else
      area = panels_laid(job, deck)
    end
    local each = trade.panel_nails {
      length_in = figure "takeoff.panel_length", width_in = figure "takeoff.panel_width",
      support_in = support_spacing(deck),
      edge_in = deck.nails.edge_spacing_in, field_in = deck.nails.field_spacing_in,
    }
    local panels = area / panel_sqft(figure)
    work(number(area, "sqft") .. " / " .. number(panel_sqft(figure), "sqft") .. " = "
      .. string.format("%.1f", panels) .. " panels x " .. number(each, "nails"))
    return deck_nails_bought(job, figure, deck, panels * each,
      "At the spacings planned, closer nailing at gables and eaves not counted.")
  end,
}

-- One in the middle of each span that an edge crosses.
quantity "panel_clips" {
  title = "Clips between panels",
  order = "Deck and lumber",
  serves = { "deck.panel_span", "deck.panel_edges" },
  habit = "edges that the job clips",
  per = "decks",
  applies = function(job, figure, deck)
    if job.scope.method == "overlay" then return false, "an overlay does not open the deck" end
    local panels, why = new_panels(job, deck)
    if not panels then return false, why end
    if panels_laid(job, deck) == 0 then return false, "no panel is replaced" end
    if not known(deck, "edge_support") then
      return false, "the job does not say that its edges are held by clips"
    end
    return deck.edge_support == "clips", "its edges are not held by clips"
  end,
  amount = function(job, figure, deck)
    local spans = figure "takeoff.panel_length" / support_spacing(deck)
    local panels = panels_laid(job, deck) / panel_sqft(figure)
    work(string.format("%.1f", panels) .. " panels x " .. number(spans, "count")
      .. " spans of " .. number(support_spacing(deck), "in"))
    return amount { exact = panels * spans, unit = "count",
      waste_percent = waste(job, "sheet_waste_percent"), buy = "clips", one = "clip",
      item = "Panel clips, for panels of " .. number(deck.work == "paneled_over"
        and deck.over_panel_thickness_in or deck.thickness_in, "in") }
  end,
}
