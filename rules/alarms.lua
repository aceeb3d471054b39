-- alarms.lua - smoke and carbon monoxide alarms, and gas vents, at a reroof.
--
-- The model code asks for alarms when a permit is taken out, and then lets work
-- on the outside of the house off, roofing among it. A place may not print that
-- exemption: it says alarms.exterior_exempt = false, and then either that every
-- permit counts (alarms.by_permit) or that only work over a price does
-- (alarms.by_price). Both may be on; one that bites is enough. A price exactly
-- at the figure is on whichever side alarms.at_price_counts says.

local over_price = reads({
  facts = { "scope.price_usd" },
  figures = { "alarms.at_price_counts", "alarms.price_limit" },
}, function(job, figure)
  local price, limit = job.scope.price_usd, figure "alarms.price_limit"
  if math.abs(price - limit) < 0.005 then
    return figure "alarms.at_price_counts", "the price is at the figure, not over it"
  end
  return price > limit, "the price is not over the figure"
end)

local needs_permit = reads({ facts = { "permit.status" } }, function(job)
  return job.permit.status ~= "none", "there is no permit for this job"
end)

-- Does this job bring the duty? `by_permit` and `by_price` name its switches; the
-- second is asked only where the first does not bite.
local brought = reads({
  needs_permit, over_price,
  figures = { "alarms.by_permit", "alarms.by_price", "alarms.co_by_permit",
    "alarms.co_by_price" },
}, function(job, figure, exempt, by_permit, by_price)
  if exempt then
    return false, "work on the outside of the house does not bring this duty here"
  end
  local so, why
  if figure(by_permit) then so, why = needs_permit(job) end
  if so then return true end
  if figure(by_price) then return over_price(job, figure) end
  return false, why or "the place does not ask for it at a reroof"
end)

local smoke_due = reads({ brought, figures = { "alarms.exterior_exempt" } }, function(job, figure)
  return brought(job, figure, figure "alarms.exterior_exempt", "alarms.by_permit",
    "alarms.by_price")
end)

local co_due = reads({
  brought,
  facts = { "house.co_sources", "house.kind", "house.owner_lives_there", "house.year_built" },
  figures = { "alarms.co_by_sources", "alarms.co_in_every_house", "alarms.co_sources",
    "alarms.exterior_exempt" },
  behind = { { "alarms.co_owner_exempt", "alarms.co_owner_exempt_before" } },
}, function(job, figure)
  -- What is due in every house is due though the work is outside.
  local exempt = not figure "alarms.co_in_every_house" and figure "alarms.exterior_exempt"
  local so, why = brought(job, figure, exempt, "alarms.co_by_permit", "alarms.co_by_price")
  if not so then return false, why end
  if figure "alarms.co_owner_exempt" and job.house.kind == "one_family"
    and job.house.year_built < figure "alarms.co_owner_exempt_before"
    and job.house.owner_lives_there then
    return false, "old houses that their owners live in are let off"
  end
  if not figure "alarms.co_by_sources" then return true end
  if #job.house.co_sources == 0 then
    return cannot_tell("the list of fires and garages is empty: say none, or which")
  end
  for _, source in ipairs(figure "alarms.co_sources") do
    if has(job.house.co_sources, source) then return true end
  end
  return false, "nothing in the house gives off carbon monoxide"
end)

demand "alarms.smoke" {
  title = "Smoke alarms",
  stage = "final",
  when = { smoke_due },
  fact = "alarms.smoke_at", meets = "alarms.smoke_places", shown = "working smoke alarms",
  mend = "Put up alarms where they are lacking, and test them.",
}

demand "alarms.co" {
  title = "Carbon monoxide alarms",
  stage = "final",
  when = { either { on "alarms.co_not_read", co_due } },
  open = { { when = on "alarms.co_not_read", asks_place = true,
    says = "whether a reroof brings carbon monoxide alarms: the fire code that says it was not "
      .. "read" } },
  fact = "alarms.co_at", shown = "working carbon monoxide alarms",
  meets = { "alarms.co_places", "alarms.co_bedroom_places", sense = "all_of",
    limit = function(job, figure)
      local wanted = { table.unpack(figure "alarms.co_places") }
      if figure "alarms.co_by_sources" and has(job.house.co_sources, "bedroom_appliance") then
        for _, place in ipairs(figure "alarms.co_bedroom_places") do table.insert(wanted, place) end
      end
      return wanted
    end },
  reads = { co_due },
  mend = "Put up alarms where they are lacking, and test them.",
  caution = "Tear-off can knock a flue apart: test the alarms afterwards.",
}

-- Further demands on the alarms that are due.
local any_due = reads({ smoke_due, co_due }, function(job, figure)
  local so, why = smoke_due(job, figure)
  if so then return true end
  return co_due(job, figure), why
end)

local due_and = reads({ any_due }, function(switch, off)
  return { on { switch, otherwise = off }, any_due }
end)

demand "alarms.listed" {
  title = "Alarms of a listed kind",
  stage = "final",
  when = due_and("alarms.listed_required", "no listing is asked for"),
  fact = "alarms.listed", shown = "the listing that the place asks for, on every alarm",
  mend = "Replace alarms without it.",
}

-- Where the work opens nothing inside, and no attic or the like lets wires through, a
-- place may take batteries that are changed.
local powers = reads({
  facts = { "house.wiring_access", "scope.finish_opened" },
  figures = { "alarms.closed_differs", "alarms.powers", "alarms.powers_closed",
    "alarms.wiring_access_counts" },
}, function(job, figure)
  if not figure "alarms.closed_differs" or job.scope.finish_opened then
    return "alarms.powers"
  end
  if figure "alarms.wiring_access_counts" and job.house.wiring_access then
    return "alarms.powers"
  end
  return "alarms.powers_closed"
end)

demand "alarms.power" {
  title = "What feeds the alarms",
  stage = "final",
  when = due_and("alarms.power_counts", "nothing is said about what feeds the alarms"),
  fact = "alarms.power",
  meets = { "alarms.powers", "alarms.powers_closed", which = powers },
  mend = "Use alarms with a sealed long-life battery, or wire them.",
}

demand "alarms.clearances" {
  title = "Alarms away from steam and drafts",
  stage = "final",
  when = due_and("alarms.clearances_count", "no distances are set"),
  fact = "alarms.from_bath_door_in", meets = "alarms.bath_door_least",
  also = { { fact = "alarms.from_register_in", meets = "alarms.register_least" } },
  mend = "Move the alarm.",
}

demand "alarms.cooking" {
  title = "Smoke alarms away from the stove",
  stage = "final",
  when = {
    on { "alarms.cooking_counts", otherwise = "no distance from a stove is set" },
    smoke_due,
  },
  choose = {
    { when = is { "alarms.nearest_cooking_is", "listed" },
      fact = "alarms.nearest_cooking_is", wants = { "listed" },
      shown = "an alarm listed for use near a stove" },
    { fact = "alarms.from_cooking_ft", meets = "alarms.cooking_least",
      by = "alarms.nearest_cooking_is" },
  },
  mend = "Move the alarm, or put one there that is listed for use near a stove.",
}

demand "alarms.proof" {
  title = "What shows the alarms",
  stage = "final",
  when = due_and("alarms.proof_counts", "nothing is said about how alarms are shown"),
  fact = "alarms.proof", meets = "alarms.proofs",
  mend = "Hand in the signed form, or let the inspector in.",
}

demand "alarms.form_signers" {
  title = "Who signs the alarm form",
  stage = "final",
  when = {
    due_and("alarms.form_signers_count", "nothing is said about who signs"),
    is { "alarms.proof", "signed_form", "affidavit", otherwise = "no form stands in for a look" },
  },
  fact = "alarms.form_signed_by", meets = "alarms.form_signers", shown = "signatures",
  mend = "Have the others sign too.",
}

-- Some places want only a paper on carbon monoxide alarms, whatever the house has.
demand "alarms.co_affidavit" {
  title = "Affidavit on carbon monoxide alarms",
  stage = "final",
  when = { on { "alarms.co_affidavit_required",
    otherwise = "no affidavit on carbon monoxide alarms is asked for" } },
  fact = "alarms.proof", meets = { sense = "equals", limit = function() return "affidavit" end },
  mend = "Sign the affidavit and hand it in before the final.",
}

demand "alarms.gas_vents" {
  title = "Gas vents looked at in the attic",
  stage = "final",
  when = {
    on { "alarms.gas_vents_count", otherwise = "gas vents are not looked at" },
    function(job)
      if has(job.house.co_sources, "fuel_appliance")
        or has(job.house.co_sources, "bedroom_appliance") then
        return true
      end
      if #job.house.co_sources == 0 then
        return cannot_tell("the list of fires and garages is empty: say none, or which")
      end
      return false, "no appliance in the house burns fuel"
    end,
    inspected { otherwise = "looked at at the final" },
  },
  fact = "house.gas_vents_fit", shown = "gas vent pipes that still fit together",
  reads = { facts = { "house.co_sources" } },
  mend = "Fit the pipes together again before anyone lights a burner.",
  caution = "A flue knocked apart fills the attic with carbon monoxide.",
}
