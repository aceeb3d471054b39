-- us-or.rules.lua - a roof on land zoned as forest, and which reroofs need a permit.
--
-- The text names no fire class for it, so the job says whether the covering is
-- fire-retardant, as its listing has it.

field "site.forest_zoned" { type = "yes_no", stage = "permit",
  ask = "Is the lot zoned as forest land?" }
field "covering.fire_retardant" { type = "yes_no", stage = "permit",
  ask = "Is the covering listed as fire-retardant?" }

rule "fire.forest_roof" {
  title = "Roof of a house on forest land",
  stage = "permit",
  applies = function(job, figure)
    if not figure "fire.forest_counts" then return false, "forest land asks for nothing here" end
    return job.site.forest_zoned, "the lot is not zoned as forest land"
  end,
  judge = function(job)
    return shown(job.covering.fire_retardant, "a covering listed as fire-retardant")
  end,
  mend = "Choose a covering that is listed as fire-retardant.",
}

-- Free reroofs, and what is not free ------------------------------------------------

field "site.wildfire_hazard_zone" { type = "yes_no", stage = "permit",
  ask = "Has the city or county mapped the lot as a wildfire hazard zone (R327)?" }
field "covering.integrated_solar" { type = "yes_no", stage = "permit",
  ask = "Are solar panels built into the new covering?" }

local function permit_shown(job, why)
  local status = job.permit.status
  if job.stage == "permit" then return shown(status ~= "none", "a permit, " .. why) end
  return shown(status == "issued", "an issued permit, " .. why)
end

-- What the table says a roof carries beside its own weight, by slope.
local function live_load(figure, pitch)
  local rise = as_printed(pitch, "rise_in_12")
  if rise >= figure "permit.live_load.steep_from" then return figure "permit.live_load.steep" end
  if rise >= figure "permit.live_load.pitched_from" then
    return figure "permit.live_load.pitched"
  end
  return figure "permit.live_load.flat"
end

-- New roofing and new sheathing, pounds to the level square foot.
local function new_weight(job, figure, slope)
  local sheet, deck, ply = slope.underlayment, slope.deck, figure "weight.underlayment_ply"
  if known(sheet, "weight_lb_per_square") then ply = sheet.weight_lb_per_square end
  local parts = { unit = "psf",
    { "new covering", trade.layer_psf { lb_per_square = job.covering.weight_lb_per_square } },
    { "underlayment", trade.layer_psf { lb_per_square = sheet.plies * ply } } }
  local inch = figure(deck.kind == "panel" and "weight.panel_inch" or "weight.board_inch")
  if deck.work == "replaced" or deck.work == "partly_replaced" then
    table.insert(parts, { "new deck", trade.deck_psf { thickness_in = deck.thickness_in,
      psf_per_in = inch } })
  elseif deck.work == "paneled_over" then
    table.insert(parts, { "panels over it", trade.deck_psf {
      thickness_in = deck.over_panel_thickness_in, psf_per_in = figure "weight.panel_inch" } })
  end
  return trade.plan_load_psf { slope_psf = trade.sum(parts), pitch = slope.pitch }
end

rule "permit.by_load_share" {
  title = "A permit by the weight of the new roof",
  stage = "permit",
  per = "roof.slopes",
  applies = function(job, figure)
    if figure "permit.every" then return false, "every reroof needs a permit here" end
    return figure "permit.load_share_counts", "the new roof's weight calls for no permit here"
  end,
  judge = function(job, figure, slope)
    local weight = new_weight(job, figure, slope)
    local share = trade.share_percent { part = weight, whole = live_load(figure, slope.pitch),
      unit = "psf" }
    local limit = figure "permit.load_share_limit"
    if as_printed(share, "percent") <= limit then
      return at_most(share, limit, "percent")
        :say("So its weight calls for no permit. Where framing members carry over 200 sq ft "
          .. "each, or the snow load is higher, the department reckons with another load.")
    end
    return permit_shown(job, "because the new roof weighs " .. number(share, "percent")
      .. " of the live load, over the " .. number(limit, "percent") .. " that are free")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_house_kind" {
  title = "A permit by the kind of house",
  stage = "permit",
  applies = function(job, figure)
    if figure "permit.every" then return false, "every reroof needs a permit here" end
    return has(figure "permit.house_kinds_counted", job.house.kind),
      "this kind of house calls for no permit by itself"
  end,
  judge = function(job, figure)
    local kinds = figure "permit.house_kinds_counted"
    return permit_shown(job, "because it is a " .. kinds[1])
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_wildfire_zone" {
  title = "A permit in a wildfire hazard zone",
  stage = "permit",
  applies = function(job, figure)
    if figure "permit.every" then return false, "every reroof needs a permit here" end
    if not figure "permit.wildfire_zone_counts" then return false, "no such zone counts here" end
    return job.site.wildfire_hazard_zone, "the lot is in no wildfire hazard zone"
  end,
  judge = function(job) return permit_shown(job, "because the lot is in such a zone") end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_solar_roof" {
  title = "A permit for a solar roof",
  stage = "permit",
  applies = function(job, figure)
    if figure "permit.every" then return false, "every reroof needs a permit here" end
    if not figure "permit.solar_roof_counts" then return false, "no solar roof counts here" end
    return job.covering.integrated_solar, "no solar panels are built into the covering"
  end,
  judge = function(job) return permit_shown(job, "because solar panels are built in") end,
  mend = "Apply for the permit before any work.",
}
