-- takeoff_coverings.lua - coverings other than shingles, and planes that get another than the
-- job's. What goes by the square is bought by it; of the rest it is said that nobody counted it.

-- Sold by the square of roof that it covers, laid as its maker prints.
local BY_THE_SQUARE = { wood_shingle = "Wood shingles", wood_shake = "Wood shakes",
  slate = "Slate", clay_tile = "Clay tiles", concrete_tile = "Concrete tiles",
  metal_panel = "Metal panels", metal_shingle = "Metal shingles" }

local CALLED = { asphalt_shingle = "asphalt shingles", roll_roofing = "roll roofing",
  coating = "a coating", built_up = "a built-up roof",
  coal_tar_built_up = "a coal tar built-up roof", modified_bitumen = "modified bitumen",
  thermoset_membrane = "a thermoset membrane", thermoplastic_membrane = "a thermoplastic membrane",
  spray_foam = "spray foam" }

local function called(kind)
  return CALLED[kind] or string.lower(BY_THE_SQUARE[kind])
end

-- Squares of a kind, or, where plies and rolls are its maker's to say, how many there are to
-- take to him.
local function squares_of(job, kind, area, planes)
  if not BY_THE_SQUARE[kind] then
    local squares = trade.squares { area_sqft = area }
    cannot_tell("how much of " .. called(kind) .. " a square takes is its maker's to say; "
      .. "there are " .. string.format("%.2f", squares) .. " squares without waste: " .. planes)
  end
  return amount { exact = area, unit = "sqft", waste_percent = waste(job), each = 100,
    buy = "squares", one = "square",
    item = BY_THE_SQUARE[kind] .. ", laid at the exposure that the maker prints", goes_on = planes }
end

local function is_no_shingle(job)
  return job.covering.kind ~= "asphalt_shingle", "shingles are counted by the bundle"
end

quantity "covering_squares" {
  title = "Covering other than shingles",
  order = "Covering",
  habit = "the covering that the job names",
  applies = is_no_shingle,
  amount = function(job)
    whole_planes(job)
    return squares_of(job, job.covering.kind, covered_area(job), covered_places(job))
  end,
}

quantity "covering_trim" {
  title = "What holds and ends the covering",
  order = "Covering",
  habit = "the covering that the job names",
  applies = is_no_shingle,
  amount = function(job)
    cannot_tell("fasteners, starters, ridges and trim of " .. called(job.covering.kind)
      .. " are not counted here: its maker lists them")
  end,
}

-- Planes of another covering --------------------------------------------------------

local function gets_other(job, figure, slope)
  if gets_covering(slope) then return false, "it gets the job's covering" end
  return slope.gets ~= "old_stays", "its old covering stays"
end

-- A job of its own orders it whole; else its covering is on this order, and what lies under it
-- and ends it is on none.
quantity "other_covering" {
  title = "Covering of another kind",
  order = "Covering",
  habit = "the covering that the plane gets",
  per = "roof.slopes",
  applies = gets_other,
  amount = function(job, figure, slope)
    if known(slope, "other_checked") and slope.other_checked then
      cannot_tell("this plane gets " .. called(slope.gets) .. ", ordered with the job of its own "
        .. "that checks it: nothing of it is on this list")
    end
    if slope.gets == "asphalt_shingle" then
      cannot_tell("this plane gets asphalt shingles, of which the job says nothing more: order "
        .. "them with a job of their own")
    end
    return squares_of(job, slope.gets, plane_sqft(slope), slope.name)
  end,
}

quantity "other_trim" {
  title = "What lies under another covering, holds and ends it",
  order = "Covering",
  habit = "the covering that the plane gets",
  per = "roof.slopes",
  applies = function(job, figure, slope)
    local other, why = gets_other(job, figure, slope)
    if not other then return false, why end
    if known(slope, "other_checked") and slope.other_checked then
      return false, "a job of its own orders it"
    end
    return slope.gets ~= "asphalt_shingle", "it is ordered with a job of its own"
  end,
  amount = function(job, figure, slope)
    cannot_tell("underlayment, deck, edges and fasteners of a plane of " .. called(slope.gets)
      .. " are not counted here: a job of its own counts them")
  end,
}

-- Stripped beside an overlay: only shingles are counted there.
quantity "stripped_beside" {
  title = "What a plane stripped beside an overlay takes more",
  order = "Underlayment and ice barrier",
  habit = "planes that the job strips",
  per = "roof.slopes",
  applies = function(job, figure, slope)
    if job.scope.method ~= "overlay" then return false, "nothing is laid over old shingles" end
    if not gets_covering(slope) then return false, "it does not get the job's covering" end
    local here, off = old_layers_on(job, slope)
    return here > 0 and off >= here, "an old layer stays on it"
  end,
  amount = function()
    cannot_tell("its underlayment, ice barrier, edges and deck are not counted with the overlay "
      .. "of the rest: a job of its own counts them")
  end,
}
