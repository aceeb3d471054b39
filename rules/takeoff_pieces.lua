-- takeoff_pieces.lua - small goods and lumber: what is bought by the piece for a wall, a
-- pipe, a vent or a rotted board. After takeoff.lua, as on the order.

-- What the quantities of this file ask for, beside facts of the job.
quantities_read {
  vent_area,
  figures = { "flashing.kickout_required", "takeoff.flashing_piece", "takeoff.lumber_lengths",
    "takeoff.ridge_vent_piece", "takeoff.strip_piece", "ventilation.ratio_reduced" },
}

-- Flashing ------------------------------------------------------------------------

-- Of old flashing that is used again nothing is bought; nor where there is none, unless a
-- rule asks for it: then the check fails, and the piece is ordered.
local function is_new(one)
  return one.flashing_is ~= "reused", "its old flashing is used again"
end

local function flashing_pieces(job, figure, feet, item, edge)
  local long = figure "takeoff.flashing_piece"
  return amount { exact = feet, unit = "ft", waste_percent = waste(job, "metal_waste_percent"),
    each = long, buy = "pieces", one = "piece", item = item .. ", " .. number(long, "ft")
      .. " pieces", goes_on = edge }
end

-- One to each course, and one more at the end.
quantity "step_flashing" {
  title = "Step flashing",
  order = "Metal and flashing",
  serves = { "flashing.walls", "flashing.sidewall_size" },
  per = "roof.walls",
  applies = function(job, figure, wall)
    if wall.kind ~= "sidewall" then return false, "the wall does not stand beside the plane" end
    local new, why = is_new(wall)
    if not new then return false, why end
    return wall.flashing == "step", "it is not flashed in steps"
  end,
  amount = function(job, figure, wall)
    local shown = job.covering.exposure_printed_in
    local courses = wall.length_ft * 12 / shown
    local pieces = math.ceil(courses - 1e-9) + 1
    work(number(wall.length_ft, "ft") .. " x 12 / " .. number(shown, "in") .. " of exposure = "
      .. string.format("%.1f", courses) .. " courses, and one piece more: "
      .. number(pieces, "count"))
    return amount { exact = pieces, unit = "count",
      waste_percent = waste(job, "metal_waste_percent"), buy = "pieces", one = "piece",
      item = "Step flashing", goes_on = wall.name }
  end,
}

local WALL_METAL = { headwall = "Apron flashing, bent to the slope",
  slope_change = "Flashing for a change of slope, bent to it", sidewall = "Sidewall flashing" }

quantity "wall_flashing" {
  title = "Flashing in long pieces",
  order = "Metal and flashing",
  serves = { "flashing.walls" },
  per = "roof.walls",
  applies = function(job, figure, wall)
    local new, why = is_new(wall)
    if not new then return false, why end
    return wall.kind ~= "sidewall" or wall.flashing ~= "step", "it is flashed in steps"
  end,
  amount = function(job, figure, wall)
    return flashing_pieces(job, figure, wall.length_ft, WALL_METAL[wall.kind], wall.name)
  end,
}

quantity "kickout" {
  title = "Kick-out flashing",
  order = "Metal and flashing",
  serves = { "flashing.kickout" },
  habit = "kick-outs that the job names",
  per = "roof.walls",
  applies = function(job, figure, wall)
    if wall.kind ~= "sidewall" then return false, "this is no sidewall" end
    if not wall.eave_ends_here then return false, "no eave ends against this wall" end
    local new, why = is_new(wall)
    if not new then return false, why end
    if figure "flashing.kickout_required" and not dropped "flashing.kickout" then return true end
    return wall.kickout, "no kick-out is asked for here"
  end,
  amount = function(job, figure, wall)
    return amount { exact = 1, unit = "count", buy = "pieces", one = "piece",
      item = "Kick-out flashing", goes_on = wall.name }
  end,
}

quantity "chimney_flashing" {
  title = "Flashing of a chimney",
  order = "Metal and flashing",
  serves = { "flashing.chimneys", "flashing.counterflashing" },
  per = "roof.chimneys",
  applies = function(job, figure, chimney) return is_new(chimney) end,
  amount = function(job, figure, chimney)
    local item = "Chimney flashing: base, steps and counterflashing"
    if known(chimney, "width_in") then
      item = item .. ", chimney " .. number(chimney.width_in, "in") .. " wide"
    end
    return amount { exact = 1, unit = "count", buy = "sets", one = "set", item = item,
      goes_on = chimney.name }
  end,
}

local HOLES = { pipe = "Pipe flashing, for a pipe of ", vent = "Vent flashing, for a vent of ",
  skylight = "Skylight flashing kit, for a width of ", other = "Flashing, for a width of " }

quantity "pipe_flashing" {
  title = "Flashing of pipes, vents and skylights",
  order = "Metal and flashing",
  serves = { "flashing.penetrations" },
  per = "roof.penetrations",
  applies = function(job, figure, hole) return is_new(hole) end,
  amount = function(job, figure, hole)
    return amount { exact = 1, unit = "count", buy = "pieces", one = "piece",
      item = HOLES[hole.kind] .. number(hole.width_in, "in"), goes_on = hole.name }
  end,
}

-- Vents -----------------------------------------------------------------------------

-- Ridge vents come off with the caps. Of others the job says whether they stay; low ones
-- stay unless it says that they do not.
local function is_renewed(job, vent)
  if known(vent, "left_as_is") then
    return not vent.left_as_is, "it was there before, and stays"
  end
  if job.scope.method == "overlay" and vent.kind ~= "ridge" then
    return false, "an overlay leaves it where it is"
  end
  return vent.place == "high", "low vents stay, unless /attics says they do not (left_as_is)"
end

quantity "ridge_vent" {
  title = "Ridge vent",
  order = "Vents",
  serves = { "ventilation.net_free_area" },
  per = "attics[].vents",
  applies = function(job, figure, vent)
    if vent.kind ~= "ridge" then return false, "it is no ridge vent" end
    return is_renewed(job, vent)
  end,
  amount = function(job, figure, vent)
    local piece = figure "takeoff.ridge_vent_piece"
    local item = "Ridge vent, " .. number(piece, "ft") .. " pieces"
    if known(vent, "nfa_sqin_per_ft") then
      item = item .. ", " .. number(vent.nfa_sqin_per_ft, "sqin_per_ft") .. " free or more"
    end
    return amount { exact = vent.length_ft, unit = "ft", each = piece, buy = "pieces",
      one = "piece", item = item, goes_on = "ridge" }
  end,
}

local VENTS = { soffit_unit = "Soffit vents", eave_block = "Eave vents", box = "Roof vents",
  turbine = "Turbine vents", gable = "Gable vents", powered = "Powered vents",
  soffit_strip = "Soffit strip vent" }

quantity "vents" {
  title = "Vents",
  order = "Vents",
  serves = { "ventilation.net_free_area" },
  per = "attics[].vents",
  applies = function(job, figure, vent)
    if vent.kind == "ridge" then return false, "a ridge vent is a line of its own" end
    return is_renewed(job, vent)
  end,
  amount = function(job, figure, vent)
    local item = VENTS[vent.kind]
    if sold_by_foot(vent) then
      return amount { exact = vent.length_ft, unit = "ft", buy = "feet", one = "foot", item = item,
        goes_on = vent.name }
    end
    if known(vent, "nfa_each_sqin") then
      item = item .. ", " .. number(vent.nfa_each_sqin, "sqin") .. " free or more each"
    end
    return amount { exact = vent.count, unit = "count", buy = "pieces", one = "piece", item = item,
      goes_on = vent.name }
  end,
}

-- Short even of the smaller area that the code may let do: somebody has to choose.
quantity "vents_to_choose" {
  title = "More vents, to be chosen",
  order = "Vents",
  serves = { "ventilation.net_free_area" },
  per = "attics",
  applies = function(job, figure, attic)
    if not attic.vented then return false, "an unvented attic takes none" end
    local given = 0
    for _, vent in ipairs(attic.vents) do
      if vent.kind ~= "powered" then given = given + vent_area(figure, vent) end
    end
    local needed = trade.vent_area_needed_sqin {
      area_sqft = attic.area_sqft, ratio = figure "ventilation.ratio_reduced" }
    return given < needed, "the vents listed do, or may do: see the check"
  end,
  amount = function()
    cannot_tell("The vents listed are short even of the smaller area; the sums (--work) say how "
      .. "much of each kind would do.")
  end,
}

-- Deck ------------------------------------------------------------------------------

quantity "deck_boards" {
  title = "Deck boards",
  order = "Deck and lumber",
  serves = { "deck.sound" },
  habit = "the deck that the job renews",
  per = "decks",
  applies = function(job, figure, deck)
    if deck.kind == "panel" or deck.work == "paneled_over" then
      return false, "panels are bought, not boards"
    end
    local covered, why = deck_is_covered(job, deck)
    if not covered then return false, why end
    if deck.work == "replaced" then
      cannot_tell("How much board a whole new deck takes is not reckoned: say replaced_sqft.")
    end
    return deck.replaced_sqft > 0, "no board is replaced"
  end,
  amount = function(job, figure, deck)
    local feet = deck.replaced_sqft * 12 / deck.board_width_in
    work(number(deck.replaced_sqft, "sqft") .. " x 12 / " .. number(deck.board_width_in, "in")
      .. " wide = " .. number(feet, "ft"))
    return amount { exact = feet, unit = "ft", waste_percent = waste(job, "sheet_waste_percent"),
      buy = "feet", one = "foot", item = "Deck boards, "
        .. number(deck.thickness_in, "in") .. " by " .. number(deck.board_width_in, "in") }
  end,
}

quantity "ridge_slot_fill" {
  title = "Filling of the old slot along the ridge",
  order = "Deck and lumber",
  serves = { "deck.ridge_slot" },
  applies = function(job)
    if job.roof.ridge_ft == 0 then return false, "the roof has no ridge" end
    if not known(job.roof, "ridge_slot") then return false, "no slot is told of" end
    return job.roof.ridge_slot == "closed", "no slot is closed"
  end,
  amount = function(job, figure)
    return amount { exact = job.roof.ridge_slot_ft, unit = "ft",
      waste_percent = waste(job, "sheet_waste_percent"), each = figure "takeoff.strip_piece",
      buy = "pieces", one = "piece", item = "Strips ripped from panel as thick as the deck, "
        .. number(job.roof.ridge_slot_in, "in") .. " wide in all", goes_on = "ridge" }
  end,
}

-- Lumber ----------------------------------------------------------------------------

-- Framing is cut in one piece; boards may be spliced.
local FRAMING = { rafter_tail = true, rafter = true }
local MEMBERS = { rafter_tail = "rafter tails", rafter = "rafters", fascia = "fascia",
  rake_board = "rake boards", starter_board = "starter boards", deck_edge = "deck edge",
  soffit = "soffit" }

-- With what runs on along sound wood.
local function piece_ft(piece)
  if piece.repair == "sistered" then return piece.length_ft + piece.sister_past_ft end
  return piece.length_ft
end

-- The shortest stocked length that holds the longest piece, else the longest stocked.
local function stock_ft(figure, longest)
  local lengths = figure "takeoff.lumber_lengths"
  for _, length in ipairs(lengths) do
    if tonumber(length) >= longest then return tonumber(length) end
  end
  return tonumber(lengths[#lengths])
end

-- The pieces of one member and stock that get new wood.
local function pieces_of(job, member, stock)
  local pieces = {}
  for _, piece in ipairs(job.rot) do
    local size = known(piece, "stock") and piece.stock or ""
    if piece.member == member and size == stock and piece.repair ~= "filled"
      and piece.repair ~= "left" then
      table.insert(pieces, piece)
    end
  end
  return pieces
end

-- Each piece of wood stands once: with the first of its kind.
local function is_first(job, one, pieces)
  for _, piece in ipairs(pieces) do
    return piece.name == one.name
  end
  return false
end

quantity "lumber" {
  title = "Lumber in place of rotted wood",
  order = "Deck and lumber",
  serves = { "wood.replaced", "wood.matched", "wood.sister_cut" },
  per = "rot",
  applies = function(job, figure, piece)
    if piece.repair == "filled" or piece.repair == "left" then
      return false, "no new wood goes in"
    end
    local stock = known(piece, "stock") and piece.stock or ""
    return is_first(job, piece, pieces_of(job, piece.member, stock)),
      "it is counted with others of its kind"
  end,
  amount = function(job, figure, first)
    if first.member == "truss" then
      cannot_tell("A truss is repaired by its maker's or an engineer's drawing, which says the "
        .. "lumber.")
    end
    local stock = known(first, "stock") and first.stock or ""
    local pieces, longest, sum = pieces_of(job, first.member, stock), 0, { unit = "ft" }
    local names = {}
    for i, piece in ipairs(pieces) do
      longest = math.max(longest, piece_ft(piece))
      sum[i] = { piece.name, piece_ft(piece) }
      names[i] = piece.name
    end
    local feet, long = trade.sum(sum), stock_ft(figure, longest)
    local bought = { exact = feet, unit = "ft", waste_percent = waste(job, "sheet_waste_percent"),
      each = long }
    if FRAMING[first.member] then
      if longest > long then
        cannot_tell("No stocked length holds " .. number(longest, "ft") .. " in one piece.")
      end
      bought = { exact = #pieces, unit = "count", each = math.floor(long / longest) }
      work("each of " .. number(long, "ft") .. " gives " .. number(bought.each, "count") .. " of "
        .. number(longest, "ft"))
    end
    bought.buy, bought.one = "pieces", "piece"
    bought.item = (stock == "" and "Lumber" or stock) .. " for " .. MEMBERS[first.member] .. ", "
      .. number(long, "ft") .. " long"
    bought.goes_on = table.concat(names, ", ")
    return amount(bought)
  end,
}
