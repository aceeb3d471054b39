-- takeoff_sealing.lua - what seals: tape over the joints of a deck, cement, crickets.

-- What the quantities of this file ask for, beside facts of the job.
quantities_read {
  sealed_deck_is_asked_for, underlayment_is_laid,
  figures = { "drip_edge.cement_required", "flashing.cricket_over", "flashing.cricket_required",
    "flashing.cricket_skylight_exempt", "takeoff.panel_length", "takeoff.panel_width",
    "takeoff.tape_roll" },
}

-- Each joint lies between two panels, so half of what goes around them.
quantity "deck_tape" {
  title = "Tape over the joints of the deck",
  order = "Underlayment and ice barrier",
  serves = { "underlayment.sealed_deck", "underlayment.tape" },
  habit = "joints that the job tapes",
  per = "underlayments",
  applies = function(job, figure, underlayment)
    local laid, why = underlayment_is_laid(job, figure)
    if not laid then return false, why end
    if is_self_adhered(underlayment) then return false, "a self-adhered sheet needs no tape" end
    if not known(underlayment, "deck_joints_taped")
      and not sealed_deck_is_asked_for(job, figure) then
      return false, "the job does not say that the deck's joints are taped"
    end
    return underlayment.deck_joints_taped, "the deck's joints are not taped"
  end,
  amount = function(job, figure, underlayment)
    whole_planes(job)
    local length, width = figure "takeoff.panel_length" / 12, figure "takeoff.panel_width" / 12
    local area = area_of(job, function(slope)
      return gets_covering(slope) and slope.underlayment.name == underlayment.name
    end)
    local joints = area * (length + width) / (length * width)
    work(number(area, "sqft") .. " of panels of " .. number(length, "ft") .. " by "
      .. number(width, "ft") .. ", each joint of two: " .. number(joints, "ft"))
    return amount { exact = joints, unit = "ft", waste_percent = waste(job, "sheet_waste_percent"),
      each = figure "takeoff.tape_roll", buy = "rolls", one = "roll",
      item = "Tape for deck joints, " .. number(underlayment.tape_width_in, "in") .. " wide" }
  end,
}

-- How far a pail goes stands on the pail.
quantity "flange_cement" {
  title = "Roof cement over the flange of the drip edge",
  order = "Metal and flashing",
  serves = { "drip_edge.cement" },
  applies = function(job, figure)
    if not is_shingled(job) then return false, "not judged for this covering" end
    return figure "drip_edge.cement_required" and not dropped "drip_edge.cement",
      "no cement is asked for over the flange"
  end,
  amount = function(job)
    local feet = 0
    for _, edge in ipairs(job.roof.edges) do
      local at_edge = edge.kind == "eave" or edge.kind == "rake"
      if at_edge and gets_covering(edge.slope) then feet = feet + edge.length_ft end
    end
    cannot_tell("how far cement goes stands on the pail; there are " .. number(feet, "ft")
      .. " of eaves and rakes")
  end,
}

-- A chimney that the ridge meets has no upper side.
local function at_the_ridge(figure, chimney) return chimney.meets_ridge end

local function kit_does(figure, hole)
  return hole.kind == "skylight" and figure "flashing.cricket_skylight_exempt"
    and hole.per_instructions
end

local function cricket(per, rule, let_off, title)
  return {
    title = title,
    order = "Deck and lumber",
    serves = { rule },
    habit = "crickets that the job names",
    per = per,
    applies = function(job, figure, one)
      if known(one, "cricket") and one.cricket then return true end
      if not figure "flashing.cricket_required" or dropped(rule) then
        return false, "no cricket is asked for here"
      end
      if as_printed(one.width_in, "in") <= figure "flashing.cricket_over" then
        return false, "it is narrow enough to need none"
      end
      return not let_off(figure, one), "it needs none where it stands"
    end,
    amount = function()
      cannot_tell("its lumber, panels and metal are cut to what stands there: measure it")
    end,
  }
end

quantity "cricket" (cricket("roof.chimneys", "flashing.cricket", at_the_ridge,
  "Cricket behind a chimney"))
quantity "cricket_other" (cricket("roof.penetrations", "flashing.cricket_other", kit_does,
  "Cricket behind a wide skylight or curb"))
